using System.Text.RegularExpressions;
using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.JobFiles;

/// <summary>What must hold between the panels of a list.</summary>
internal sealed partial class SeveralRules(IReadOnlyList<PanelView> views, string fileName, ProblemLog log)
{
    /// <summary>Fields that only panels of a list have.</summary>
    private static readonly string[] OfLists = ["name", "mirrors", .. RowRules.Fields];

    private static readonly string[] OfTwins = ["name", "mirrors"];

    /// <summary>A shop's order, not a factory's.</summary>
    private const int MostCopies = 100;

    /// <summary>The twins, each with what it mirrors.</summary>
    public IEnumerable<MirroredTwin> Twins =>
        views.Where(IsTwin).Select(twin => new MirroredTwin(new(NameOf(twin) ?? string.Empty), new(twin.TextOf("mirrors") ?? string.Empty)));

    /// <summary>Checks a job whose panel is no list.</summary>
    public static void CheckOnly(JobValues values, ProblemLog log)
    {
        foreach (var path in OfLists.Select(field => $"panel.{field}").Where(values.IsWritten))
        {
            log.Report(ProblemCode.OneOnly, values.PlaceOf(path), Say.Of("is for several panels; begin each of them with [[panel]], or take this out."));
        }

        CheckCopies(values, log);
    }

    /// <summary>Checks the list.</summary>
    public void Check()
    {
        foreach (var view in views)
        {
            CheckName(view);
            CheckMirror(view);
        }
    }

    /// <summary>Checks the number of sets.</summary>
    public static void CheckCopies(JobValues values, ProblemLog log)
    {
        if (values.Quantity<int>("copies") is < 1 or > MostCopies)
        {
            log.Report(ProblemCode.Copies, values.PlaceOf("copies"), Say.Of($"must be from 1 to {MostCopies}: how many sets of everything are made."));
        }
    }

    private void CheckName(PanelView view)
    {
        if (NameOf(view) is not { } name)
        {
            Report(ProblemCode.PanelName, view, "name", Say.Of("Each panel of a list needs a name of its own, as in name = \"port\"."));
        }
        else if (!PlainName().IsMatch(name))
        {
            Report(ProblemCode.PanelName, view, "name", Say.Of($"\"{name}\" cannot stand in the names of pieces and files: write at most 20 small letters, digits and hyphens, a letter first."));
        }
        else if (views.First(other => NameOf(other) == name) is var first && first != view)
        {
            Report(ProblemCode.PanelNamedTwice, view, "name", Say.Of($"\"{name}\" is the name of panel {first.Number} already; give each its own."));
        }
    }

    private void CheckMirror(PanelView view)
    {
        if (view.Entry["mirrors"] is null)
        {
            return;
        }

        var of = view.TextOf("mirrors");
        var original = views.FirstOrDefault(other => NameOf(other) == of);
        if (original is null)
        {
            Report(ProblemCode.Mirror, view, "mirrors", Say.Of($"names no panel of this file; there are {Names(view)}."));
        }
        else if (original == view)
        {
            Report(ProblemCode.Mirror, view, "mirrors", Say.Of("names the panel itself; name the one on the other side."));
        }
        else if (IsTwin(original))
        {
            Report(ProblemCode.Mirror, view, "mirrors", Say.Of($"\"{of}\" has no carrier of its own to be mirrored; name the panel that it mirrors."));
        }

        else if (RowRules.LiesOnAnother(original))
        {
            Report(ProblemCode.Mirror, view, "mirrors", Say.Of($"\"{of}\" lies on the carrier of \"{original.TextOf("on")}\"; name the panel that has the carrier, and all of it is mirrored."));
        }

        foreach (var (name, _) in view.Entry.Keys.Where(key => !OfTwins.Contains(key.Name, StringComparer.Ordinal)))
        {
            Report(ProblemCode.Settled, view, name, Say.Of("is settled by the panel that this one mirrors; take it out, or take out mirrors."));
        }
    }

    private void Report(string code, PanelView view, string field, string message)
    {
        var place = view.PlaceOf(field);
        log.Report(code, new(fileName, place.Line, place.Column, $"panel[{view.Number}].{field}"), message);
    }

    private string Names(PanelView but) =>
        string.Join(", ", views.Where(view => view != but && !IsTwin(view)).Select(view => $"\"{NameOf(view)}\"").Distinct(StringComparer.Ordinal).DefaultIfEmpty(Say.Of("none")));

    private static bool IsTwin(PanelView view) => view.Entry["mirrors"] is not null;

    private static string? NameOf(PanelView view) => view.TextOf("name");

    [GeneratedRegex("^[a-z][a-z0-9-]{0,19}$")]
    private static partial Regex PlainName();
}
