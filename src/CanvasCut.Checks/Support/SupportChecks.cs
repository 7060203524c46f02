using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Checks;

/// <summary>Tells whether anything hard lies under or on the cells.</summary>
internal static class SupportChecks
{
    private static string Source => Say.Of("limits.cell_margin (rule of thumb, editable)");

    /// <summary>One result a part.</summary>
    public static IEnumerable<CheckResult> Of(PatternSet patterns)
    {
        var panels = patterns.EachPanel;
        return HardParts.Of(patterns).Select(part => Judged(part, panels.MinBy(panel => part.ToCells(panel.Mounted.CellBox).Millimeters)!));
    }

    /// <summary>Of several panels the nearest is looked at.</summary>
    private static CheckResult Judged(HardPart part, PatternSet panel) => CheckResult.Judged(
        (part.Code, PanelWords.Of(panel.Job, Say.Of($"cells and {part.Subject}"))),
        Measured.AtLeast(part.ToCells(panel.Mounted.CellBox), panel.Job.Limits.CellMargin),
        IsOnlyThick(part.Code) || panel.Job.Panel.Limits.AllowsHardPoints ? Verdict.Caution : Verdict.Fail,
        Source,
        AdviceOn(part.Code)).On(part.Key, new PartKeys(panel.Job).Cells);

    /// <summary>A row of stitches or a hem is a step of a millimetre, not a hard point like a seam of four layers or a row of teeth.</summary>
    private static bool IsOnlyThick(string code) => code == CheckCodes.Stitch;

    private static string AdviceOn(string code) => code switch
    {
        CheckCodes.SupportSeam => Say.Of("A felled seam is a ridge under cells: buy a wider roll, lay the warp the other way (cloth.warp), turn the panel, or lay strips of foam beside the seam."),
        CheckCodes.Stitch => Say.Of("Stitches and the step of a hem lie under or near cells: widen carrier.border on that side, narrow carrier.hem, bind the edge (carrier.edges), or lay a thin foam under the whole panel."),
        _ => Say.Of("A hard part lies near cells: widen carrier.border on that side, or turn the panel."),
    };
}
