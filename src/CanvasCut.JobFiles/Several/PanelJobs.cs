using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.JobFiles;

/// <summary>Reads one job for the only panel of a file, or one for each panel of its list that has a carrier of its own.</summary>
internal sealed class PanelJobs((TomlTable Root, bool IsWhole) file, string fileName, SupplyChoice supplies, ProblemLog log)
{
    private static readonly Field[] KnownOfHosts = [.. KnownFields.All.Except(PanelFields.All.Where(known => RowRules.Fields.Contains(known.ShortName, StringComparer.Ordinal)))];

    /// <summary>What was read; nothing may be built of it when a problem was reported.</summary>
    public PanelsRead Read()
    {
        List<PanelView> views = [.. PanelView.Of(file.Root)];
        if (views.Count == 0)
        {
            ReportEmptyList();
            var only = ReadFields(file.Root, (supplies, KnownOfHosts), log);
            CheckRules(only.Values, log);
            SeveralRules.CheckOnly(only.Values, log);
            CheckStrings(only.Values, [string.Empty]);
            return new([only], [], only.Values);
        }

        var (rules, rows) = (new SeveralRules(views, fileName, log), new RowRules(views, fileName, log));
        if (file.IsWhole)
        {
            rules.Check();
            rows.Check();
        }

        List<PanelRead> panels = [.. views.Where(view => view.Entry["mirrors"] is null && !RowRules.LiesOnAnother(view)).Select(view => ReadHost(view, rows))];
        if (panels.Count > 0)
        {
            SeveralRules.CheckCopies(panels[0].Values, log);
            CheckStrings(panels[0].Values, [.. views.Select(view => view.TextOf("name")).OfType<string>().Concat(rows.NamesInTwins)]);
        }

        ReadStrays(views, rows);
        return new(panels, [.. rules.Twins], panels.FirstOrDefault()?.Values);
    }

    private void CheckStrings(JobValues values, IReadOnlyList<string> panels)
    {
        if (file.IsWhole)
        {
            StringRules.Check(values, panels, log);
        }
    }

    private void ReportEmptyList()
    {
        if (file.Root["panel"] is TomlList { Items.Count: 0 } list)
        {
            log.Report(ProblemCode.Missing, new(fileName, list.Place.Line, list.Place.Column, "panel"), Say.Of("holds no panel; begin each with [[panel]]."));
        }
    }

    /// <summary>A panel with a carrier, and those that share it.</summary>
    private PanelRead ReadHost(PanelView view, RowRules rows)
    {
        var own = new ProblemLog();
        var read = ReadFields(view.Root, (supplies.For(view.Root, fileName, own), KnownOfHosts), own) with { View = view };
        List<PanelRead> on = [.. rows.On(view).Select(other => ReadShared(other, read.Values))];
        var values = on.Count == 0 ? read.Values : read.Values.WithRow(new(rows.AxisOn(view), [.. on.Select(each => each.Values)]));
        CheckRules(values, own);
        Report(view, own);
        CheckRowLength(values, on);
        return read with { Values = values, On = [.. on] };
    }

    /// <summary>A panel on the carrier of another: of it only its own table is read.</summary>
    private PanelRead ReadShared(PanelView view, JobValues? carrier)
    {
        var own = new ProblemLog();
        var read = ReadFields(view.Root, (supplies, PanelFields.All.Concat(LabelFields.All)), own) with { View = view };
        if (file.IsWhole)
        {
            var into = new RuleLog(read.Values, own);
            PanelRules.Check(read.Values, into, carrier ?? read.Values);
            LabelRules.Check(read.Values, into);
        }

        Report(view, own);
        return read;
    }

    /// <summary>What lies on no carrier that there is, is read all the same, for all that is wrong with it to be told at once.</summary>
    private void ReadStrays(List<PanelView> views, RowRules rows)
    {
        foreach (var view in views.Where(view => view.Entry["mirrors"] is null && RowRules.LiesOnAnother(view) && rows.HostOf(view) is null))
        {
            ReadShared(view, null);
        }
    }

    private void Report(PanelView view, ProblemLog own)
    {
        foreach (var problem in own.InOrder().Select(view.InFile))
        {
            log.Report(problem.Code, problem.Place, problem.Message);
        }
    }

    private void CheckRowLength(JobValues values, List<PanelRead> on)
    {
        if (file.IsWhole && on.LastOrDefault()?.View is { } last && MountedSize.RowBeyondTop(values) is { } message)
        {
            var place = last.PlaceOf("on");
            log.Report(ProblemCode.RowLength, new(fileName, place.Line, place.Column, $"panel[{last.Number}].on"), message);
        }
    }

    private PanelRead ReadFields(TomlTable root, (SupplyChoice Supplies, IEnumerable<Field> Fields) of, ProblemLog into)
    {
        var reader = new FieldReader((root, file.IsWhole), fileName, of.Supplies, into);
        var values = reader.ReadAll(of.Fields);
        return new(values, [.. reader.Defaults], of.Supplies);
    }

    private void CheckRules(JobValues values, ProblemLog into)
    {
        if (file.IsWhole)
        {
            // Of half a file, rules between fields could only guess.
            JobRules.Check(values, into);
        }
    }
}
