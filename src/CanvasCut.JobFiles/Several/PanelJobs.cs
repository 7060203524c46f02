using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.JobFiles;

/// <summary>Reads one job for the only panel of a file, or one for each panel of its list.</summary>
internal sealed class PanelJobs((TomlTable Root, bool IsWhole) file, string fileName, SupplyChoice supplies, ProblemLog log)
{
    /// <summary>What was read; nothing may be built of it when a problem was reported.</summary>
    public PanelsRead Read()
    {
        List<PanelView> views = [.. PanelView.Of(file.Root)];
        if (views.Count == 0)
        {
            ReportEmptyList();
            var only = ReadJob(file.Root, supplies, log);
            SeveralRules.CheckOnly(only.Values, log);
            CheckStrings(only.Values, [string.Empty]);
            return new([only], [], only.Values);
        }

        var rules = new SeveralRules(views, fileName, log);
        if (file.IsWhole)
        {
            rules.Check();
        }

        List<PanelRead> panels = [.. views.Where(view => view.Entry["mirrors"] is null).Select(ReadView)];
        if (panels.Count > 0)
        {
            SeveralRules.CheckCopies(panels[0].Values, log);
            CheckStrings(panels[0].Values, [.. views.Select(view => view.TextOf("name")).OfType<string>()]);
        }

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

    private PanelRead ReadView(PanelView view)
    {
        var own = new ProblemLog();
        var read = ReadJob(view.Root, supplies.For(view.Root, fileName, own), own) with { View = view };
        foreach (var problem in own.InOrder().Select(view.InFile))
        {
            log.Report(problem.Code, problem.Place, problem.Message);
        }

        return read;
    }

    private PanelRead ReadJob(TomlTable root, SupplyChoice choice, ProblemLog into)
    {
        var reader = new FieldReader((root, file.IsWhole), fileName, choice, into);
        var values = reader.ReadAll();
        if (file.IsWhole)
        {
            // Of half a file, rules between fields could only guess.
            JobRules.Check(values, into);
        }

        return new(values, [.. reader.Defaults], choice);
    }
}
