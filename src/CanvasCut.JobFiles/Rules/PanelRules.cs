using CanvasCut.Language;
using UnitsNet;
using static CanvasCut.JobFiles.RuleLog;

namespace CanvasCut.JobFiles;

/// <summary>The panel and what lies on it.</summary>
internal static class PanelRules
{
    public static void Check(JobValues values, RuleLog rules) => Check(values, rules, values);

    /// <summary>The same for a panel on the carrier of another.</summary>
    /// <param name="values">Its values.</param>
    /// <param name="rules">Where problems go.</param>
    /// <param name="carrier">The values of the panel that has the carrier.</param>
    public static void Check(JobValues values, RuleLog rules, JobValues carrier)
    {
        var (length, width) = (values.Length("panel.length"), values.Length("panel.width"));
        rules.When(length < width, ProblemCode.PanelSides, "panel.length", Say.Of($"is shorter than the width, {In(width)}; swap them, the length is the longer side."));
        rules.When(values.Length("panel.corner_radius") * 2 > width, ProblemCode.PanelCorner, "panel.corner_radius", Say.Of($"is more than half the width, {In(width)}."));
        CheckFlex(values, rules, length);
        var (athwart, foreAft) = MountedSize.Of(values);
        CheckCells(values, rules, "port", "starboard", athwart);
        CheckCells(values, rules, "forward", "aft", foreAft);
        CheckBox(values, rules, "from_port", "athwart", athwart);
        CheckBox(values, rules, "from_forward", "fore_aft", foreAft);
        CheckBoxHeight(values, rules);
        CheckExit((values, carrier), rules, ("port", "starboard"), athwart);
        CheckExit((values, carrier), rules, ("forward", "aft"), foreAft);
    }

    /// <summary>A box that stands out less is no box; from memory the flattest have 10 mm.</summary>
    private static readonly Length LeastBox = Length.FromMillimeters(3);

    private static void CheckBoxHeight(JobValues values, RuleLog rules)
    {
        const string Path = "panel.junction_box.height";
        var height = values.Length(Path);
        rules.When(height > -LeastBox && height < LeastBox, ProblemCode.Impossible, Path, Say.Of($"is less than {In(LeastBox)}; write how far the box stands above the panel's face, or below its back with a minus."));
    }

    /// <summary>The formula for the droop takes slopes as small: a drop of a third of the overhang is a slope of 24 degrees at the free edge.</summary>
    private const double MostDroop = 1.0 / 3;

    private static void CheckFlex(JobValues values, RuleLog rules, Length? length)
    {
        const double FullTurn = 360;
        rules.When(values.Quantity<Angle>("panel.max_bend.angle")?.Degrees > FullTurn, ProblemCode.BendAngle, "panel.max_bend.angle", Say.Of("is more than a full turn; a data sheet means the arc from one end of the panel to the other."));
        rules.When(values.Length("panel.max_bend.over") > length, ProblemCode.BendAngle, "panel.max_bend.over", Say.Of($"is longer than the panel, {In(length)}; degrees are spread over the side that bends."));
        var (overhang, drop) = (values.Length("panel.droop.overhang"), values.Length("panel.droop.drop"));
        rules.When(overhang > length, ProblemCode.Droop, "panel.droop.overhang", Say.Of($"is longer than the panel, {In(length)}."));
        rules.When(drop > overhang * MostDroop, ProblemCode.Droop, "panel.droop.drop", Say.Of($"is more than a third of the overhang, {In(overhang)}; let less of the panel hang over the table's edge and measure again."));
    }

    private static void CheckCells(JobValues values, RuleLog rules, string near, string far, Length? size)
    {
        var dead = values.Length($"panel.dead_border.{near}") + values.Length($"panel.dead_border.{far}");
        rules.When(dead >= size, ProblemCode.NoCells, "panel.dead_border", Say.Of($"leaves no cells between {near} and {far}: the panel as mounted is {In(size)} there."));
    }

    private static void CheckBox(JobValues values, RuleLog rules, string from, string extent, Length? size)
    {
        const string Box = "panel.junction_box";
        var end = values.Length($"{Box}.{from}") + values.Length($"{Box}.{extent}");
        rules.When(end > size, ProblemCode.OffPanel, $"{Box}.{from}", Say.Of($"puts the box's far edge at {In(end)}, and the panel as mounted ends at {In(size)}."));
    }

    private static void CheckExit((JobValues Panel, JobValues Carrier) of, RuleLog rules, (string Near, string Far) sides, Length? size)
    {
        var path = $"panel.cable_exit.from_{sides.Near}";
        var place = of.Panel.Length(path);
        var isOff = place < -MountedSize.BorderOf(of.Carrier, sides.Near) || place > size + MountedSize.BorderOf(of.Carrier, sides.Far);
        rules.When(isOff, ProblemCode.OffPanel, path, Say.Of($"lies beside the carrier; the panel as mounted is {In(size)} there, and the border adds to it."));
    }
}
