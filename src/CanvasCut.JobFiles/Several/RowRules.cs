using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.JobFiles;

/// <summary>Which panels of a list share a carrier, and what must hold between those.</summary>
internal sealed class RowRules(IReadOnlyList<PanelView> views, string fileName, ProblemLog log)
{
    /// <summary>Fields that only a panel on another's carrier has.</summary>
    public static string[] Fields { get; } = ["on", "beside", "gap"];

    /// <summary>Whether a panel lies on the carrier of another.</summary>
    public static bool LiesOnAnother(PanelView view) => view.Entry["on"] is not null;

    /// <summary>The panel that has the carrier: itself, or what its on leads to; null where that leads nowhere or in a circle.</summary>
    public PanelView? HostOf(PanelView view)
    {
        HashSet<PanelView> met = [];
        for (var at = view; at is not null && met.Add(at); at = Named(at.TextOf("on")))
        {
            if (!LiesOnAnother(at))
            {
                return IsTwin(at) ? null : at;
            }
        }

        return null;
    }

    /// <summary>The panels that lie on the carrier of another, in the order of the file.</summary>
    public IEnumerable<PanelView> On(PanelView host) => views.Where(view => view != host && LiesOnAnother(view) && !IsTwin(view) && HostOf(view) == host);

    /// <summary>Which way the row on a carrier runs: as the first says that says it, else to starboard.</summary>
    public RowAxis AxisOn(PanelView host) => On(host).Select(view => view.TextOf("beside")).FirstOrDefault(word => word is not null) == "aft" ? RowAxis.ForeAft : RowAxis.Athwart;

    /// <summary>What the mirror images of the panels on others' carriers are called.</summary>
    public IEnumerable<string> NamesInTwins =>
        from twin in views.Where(IsTwin)
        where Named(twin.TextOf("mirrors")) is { } host && !LiesOnAnother(host) && !IsTwin(host)
        from panel in On(Named(twin.TextOf("mirrors"))!)
        select NameInTwin(panel, twin).Text;

    /// <summary>Checks the list.</summary>
    public void Check()
    {
        foreach (var view in views)
        {
            if (LiesOnAnother(view) && !IsTwin(view))
            {
                CheckOn(view);
                CheckBeside(view);
                CheckOwn(view);
            }
            else if (!IsTwin(view))
            {
                foreach (var field in Fields.Where(field => view.Entry[field] is not null))
                {
                    Report(ProblemCode.On, view, field, Say.Of("is for a panel on the carrier of another: add on = \"its name\", or take this out."));
                }
            }
            else
            {
                CheckNames(view);
            }
        }
    }

    private void CheckOn(PanelView view)
    {
        var name = view.TextOf("on");
        if (Named(name) is not { } other)
        {
            Report(ProblemCode.On, view, "on", Say.Of($"names no panel of this file; there are {Names(view)}."));
        }
        else if (other == view)
        {
            Report(ProblemCode.On, view, "on", Say.Of("names the panel itself; name the one whose carrier it shares."));
        }
        else if (IsTwin(other))
        {
            Report(ProblemCode.On, view, "on", Say.Of($"\"{name}\" is the mirror image of \"{other.TextOf("mirrors")}\"; name that one, and the mirror image gets this panel too."));
        }
        else if (CircleFrom(view) is { Count: > 1 } circle && circle.MinBy(each => each.Number) == view)
        {
            var way = string.Join(", ", circle.Append(view).Select(each => $"\"{each.TextOf("name")}\""));
            Report(ProblemCode.On, view, "on", Say.Of($"leads in a circle: {way}; one of them must have the carrier, so take its on out."));
        }
    }

    /// <summary>The panels from one back to it, each on the next; empty when it does not come back.</summary>
    private List<PanelView> CircleFrom(PanelView view)
    {
        List<PanelView> met = [];
        for (var at = view; at is not null && !met.Contains(at); at = Named(at.TextOf("on")))
        {
            met.Add(at);
            if (Named(at.TextOf("on")) == view)
            {
                return met;
            }
        }

        return [];
    }

    private void CheckBeside(PanelView view)
    {
        if (view.TextOf("beside") is { } way && HostOf(view) is { } host && On(host).FirstOrDefault(other => other.TextOf("beside") is not null) is { } first && first.TextOf("beside") != way)
        {
            Report(ProblemCode.Beside, view, "beside", Say.Of($"must be \"{first.TextOf("beside")}\" as for panel {first.Number}: the panels on one carrier lie in one row. Or give this one a carrier of its own."));
        }
    }

    private void CheckOwn(PanelView view)
    {
        foreach (var (name, _) in view.Entry.Keys.Where(key => OwnTables.Names.Contains(key.Name, StringComparer.Ordinal)))
        {
            Report(ProblemCode.Settled, view, name, Say.Of("is settled by the panel on whose carrier this one lies; write it there."));
        }
    }

    /// <summary>What the mirror images of the panels of a row are called must be free.</summary>
    private void CheckNames(PanelView twin)
    {
        if (Named(twin.TextOf("mirrors")) is not { } host || LiesOnAnother(host) || IsTwin(host))
        {
            return;
        }

        foreach (var panel in On(host))
        {
            var name = NameInTwin(panel, twin);
            if (Named(name.Text) is { } other)
            {
                Report(ProblemCode.PanelNamedTwice, twin, "name", Say.Of($"The mirror image of \"{panel.TextOf("name")}\" is called \"{name}\", and so is panel {other.Number}; give that one another name."));
            }
        }
    }

    private static MountingName NameInTwin(PanelView panel, PanelView twin) =>
        Mirroring.NameOf(new(panel.TextOf("name") ?? string.Empty), new(twin.TextOf("mirrors") ?? string.Empty), new(twin.TextOf("name") ?? string.Empty));

    private void Report(string code, PanelView view, string field, string message)
    {
        var place = view.PlaceOf(field);
        log.Report(code, new(fileName, place.Line, place.Column, $"panel[{view.Number}].{field}"), message);
    }

    private string Names(PanelView but) =>
        string.Join(", ", views.Where(view => view != but && !IsTwin(view)).Select(view => $"\"{view.TextOf("name")}\"").Distinct(StringComparer.Ordinal).DefaultIfEmpty(Say.Of("none")));

    private PanelView? Named(string? name) => name is null ? null : views.FirstOrDefault(view => view.TextOf("name") == name);

    private static bool IsTwin(PanelView view) => view.Entry["mirrors"] is not null;
}
