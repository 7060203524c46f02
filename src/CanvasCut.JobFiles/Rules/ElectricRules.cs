using CanvasCut.Design;
using CanvasCut.Electrics;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>What must hold between the fields of the wiring; <see cref="StringRules"/> has the panels.</summary>
internal static class ElectricRules
{
    public static void Check(JobValues values, RuleLog rules)
    {
        if (!values.IsWritten(ElectricFields.Table))
        {
            return;
        }

        CheckBank(values, rules);
        List<string> controllers = [.. values.Tables("electric.controller")];
        rules.When(controllers.Count == 0, ProblemCode.Wiring, ElectricFields.Table, Say.Of("has no controller; begin each with [[electric.controller]]."));
        foreach (var path in controllers)
        {
            var name = values.Text($"{path}.name");
            rules.When(
                name is not null && values.Text($"{controllers.First(other => values.Text($"{other}.name") == name)}.name") is not null && controllers.First(other => values.Text($"{other}.name") == name) != path,
                ProblemCode.Wiring,
                $"{path}.name",
                Say.Of($"\"{name}\" is the name of another controller already; give each its own."));
            CheckWire(values, rules, $"{path}.panel_wire");
            CheckWire(values, rules, $"{path}.bank_wire");
        }
    }

    private static void CheckWire(JobValues values, RuleLog rules, string path)
    {
        if (values.Text(path) is not { } size)
        {
            return;
        }

        if (values.Text("electric.wires.family") is not { } word)
        {
            rules.When(!values.IsWritten("electric.wires.family"), ProblemCode.WireSize, path, Say.Of("needs electric.wires.family: the same name means other copper in each."));
            return;
        }

        var known = WireSize.Of(ElectricBuilder.FamilyOf(word)).Select(each => each.Name).ToList();
        rules.Unless(known.Contains(size, StringComparer.Ordinal), ProblemCode.WireSize, path, Say.Of($"\"{size}\" is no size of family {word}; there are {string.Join(", ", known)}."));
    }

    private static void CheckBank(JobValues values, RuleLog rules)
    {
        const string Bank = "electric.bank";
        var (absorption, keeps, lowest) = (Volts(values, "absorption"), Volts(values, "float"), Volts(values, "lowest"));
        rules.When(keeps > absorption, ProblemCode.Bank, $"{Bank}.float", Say.Of($"is above the absorption voltage, {In(absorption)}; float is the lower of the two."));
        rules.When(lowest >= absorption, ProblemCode.Bank, $"{Bank}.lowest", Say.Of($"is not below the absorption voltage, {In(absorption)}."));
        if (values.Text($"{Bank}.nominal") is { } nominal && absorption is { } full)
        {
            var named = ((ElectricPotential)QuantityKinds.Voltage.Parse(nominal)!).Volts;
            rules.When(full.Volts <= named || full.Volts > named * 1.3, ProblemCode.Bank, $"{Bank}.absorption", Say.Of($"is not that of a bank of {nominal}; a bank of 12 V becomes full between 13.8 and 15 V."));
        }
    }

    private static ElectricPotential? Volts(JobValues values, string name) => values.Quantity<ElectricPotential>($"electric.bank.{name}");

    private static string In(ElectricPotential? volts) => volts is { } known ? QuantityWords.Of(known) : string.Empty;
}
