using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.JobFiles;

/// <summary>Whether every panel of a file stands in one string, and every string leads to a controller.</summary>
internal static class StringRules
{
    public static void Check(JobValues values, IReadOnlyList<string> panels, ProblemLog log)
    {
        if (!values.IsWritten(ElectricFields.Table) || !values.Tables("electric.controller").Any())
        {
            return;
        }

        var rules = new RuleLog(values, log);
        List<string> controllers = [.. values.Tables("electric.controller").Select(path => values.Text($"{path}.name")).OfType<string>()];
        List<string> strings = [.. values.Tables("electric.string")];
        if (strings.Count == 0)
        {
            rules.When(
                panels.Count > 1 || controllers.Count > 1,
                ProblemCode.Wiring,
                ElectricFields.Table,
                Say.Of("does not tell which panels are in series; begin each string with [[electric.string]] and name its panels and its controller."));
            return;
        }

        HashSet<string> wired = new(StringComparer.Ordinal);
        foreach (var path in strings)
        {
            CheckController(values, rules, path, controllers);
            CheckPanels(values, rules, path, (panels, wired));
        }

        foreach (var left in panels.Where(name => !wired.Contains(name) && values.Words($"{strings[0]}.panels") is not null))
        {
            rules.When(left.Length > 0, ProblemCode.Wiring, ElectricFields.Table, Say.Of($"has no string with panel \"{left}\"; name it in one."));
        }
    }

    private static void CheckController(JobValues values, RuleLog rules, string path, List<string> controllers)
    {
        var name = values.Text($"{path}.controller");
        var names = string.Join(", ", controllers.Distinct(StringComparer.Ordinal).Select(each => $"\"{each}\""));
        rules.When(name is null && !values.IsWritten($"{path}.controller") && controllers.Count > 1, ProblemCode.Wiring, path, Say.Of($"does not tell its controller; there are {names}."));
        rules.When(name is not null && !controllers.Contains(name), ProblemCode.Wiring, $"{path}.controller", Say.Of($"names no controller of this file; there are {names}."));
    }

    private static void CheckPanels(JobValues values, RuleLog rules, string path, (IReadOnlyList<string> All, HashSet<string> Wired) panels)
    {
        if (values.Words($"{path}.panels") is not { } named)
        {
            return;
        }

        rules.When(named.IsEmpty, ProblemCode.Wiring, $"{path}.panels", Say.Of("names no panel."));
        foreach (var name in named)
        {
            var isOnly = panels.All is [""];
            rules.When(isOnly, ProblemCode.Wiring, $"{path}.panels", Say.Of("is for several panels; this job has one: take the string out."));
            rules.When(
                !isOnly && !panels.All.Contains(name, StringComparer.Ordinal),
                ProblemCode.Wiring,
                $"{path}.panels",
                Say.Of($"\"{name}\" is no panel of this file; there are {string.Join(", ", panels.All.Select(each => $"\"{each}\""))}."));
            rules.When(!panels.Wired.Add(name), ProblemCode.Wiring, $"{path}.panels", Say.Of($"\"{name}\" stands in two strings, or twice in one; a panel is wired once."));
        }
    }
}
