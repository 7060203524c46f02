using System.Collections.Immutable;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Tells whether what bonds the panel stays out of its cells, and is laid as closely as it should be.</summary>
internal static class BondStripChecks
{
    /// <summary>A soft step so high under cells is taken to do no harm: foam tape of 1 mm with something over; chosen for this program.</summary>
    private static readonly Length SoftStep = Length.FromMillimeters(1.5);

    /// <summary>Below this nothing that is sewn or laid along the rim stays out of the cells; from memory panels have 10 to 25 mm.</summary>
    private static readonly Length LeastBorder = Length.FromMillimeters(5);

    public static IEnumerable<CheckResult> Of(PatternSet patterns) =>
        [Border(patterns), Rows(patterns), .. patterns.Bond.HasTape ? [Step(patterns), .. Strips(patterns)] : Array.Empty<CheckResult>()];

    private static CheckResult Border(PatternSet patterns)
    {
        var dead = patterns.Mounted.Panel.Fittings.DeadBorder;
        return CheckResult.Judged(
            (CheckCodes.BondBorder, Say.Of("dead border of the panel")),
            Measured.AtLeast(UnitMath.Min(UnitMath.Min(dead.Forward, dead.Aft), UnitMath.Min(dead.Port, dead.Starboard)), LeastBorder),
            Verdict.Caution,
            Say.Of("from memory, panels have 10 to 25 mm"),
            Say.Of("Cells so near the panel's edge lie over stitches, tape and pockets whatever is done: measure again from the edge to the first cell (panel.dead_border)."));
    }

    private static CheckResult Rows(PatternSet patterns) => CheckResult.Judged(
        (CheckCodes.BondRows, Say.Of("rows that hold what the panel is bonded to, and cells")),
        Measured.AtMost(Under(patterns.Bond.Rows, patterns.Mounted.CellBox), Length.Zero),
        Verdict.Caution,
        LimitSource.Practice,
        Say.Of("So much of the stitches lies under cells, where the dead border is too narrow for the webbing or a strip crosses from rim to rim. A coated patch has its one row round the edge (bonding.onto = \"coated-patch\")."));

    private static CheckResult Step(PatternSet patterns)
    {
        var (bond, tapes) = (patterns.Bond, patterns.Job.Workshop.Supplies.Tapes);
        var crosses = bond.Tape.Concat(bond.Webbing).Any(strip => Under(strip.Edges, patterns.Mounted.CellBox) > Length.Zero);
        var height = tapes.Foam.Thickness + (bond.Webbing.IsEmpty ? Length.Zero : tapes.Webbing.Thickness);
        return CheckResult.Judged(
            (CheckCodes.BondStep, Say.Of("step at the edges of strips under cells")),
            Measured.AtMost(crosses ? height : Length.Zero, SoftStep),
            Verdict.Caution,
            LimitSource.Chosen,
            Say.Of("Cells bend over the edges of strips so thick: bond to a coated patch in the place of webbing, or take thinner foam tape (tapes.foam)."));
    }

    private static IEnumerable<CheckResult> Strips(PatternSet patterns)
    {
        var layout = BondLayout.Of(patterns.Job, patterns.Mounted);
        yield return CheckResult.Judged(
            (CheckCodes.BondGap, Say.Of("widest gap between strips under the panel")),
            Measured.AtMost(layout.WidestGap, BondLayout.MostGap),
            Verdict.Caution,
            LimitSource.Practice,
            Say.Of("The panel flutters between strips so far apart: give more tape (bonding.tape_length), or leave the field out."));
        if (patterns.Job.Conditions.Bonding.TapeLength is { } length)
        {
            yield return CheckResult.Judged(
                (CheckCodes.BondLength, Say.Of("tape for once round the panel")),
                Measured.AtLeast(length, layout.RimLength),
                Verdict.Caution,
                "bonding.tape_length",
                Say.Of("It does not reach once round the panel's edge; that much is laid, drawn, ordered and reckoned with all the same."));
        }
    }

    /// <summary>How much of some lines lies inside the cells; along their very edge is outside.</summary>
    private static Length Under(ImmutableArray<(Point From, Point To)> lines, Box cells)
    {
        const double EdgeMm = 1e-3;
        var inside = cells.Grown(-EdgeMm);
        return Length.FromMillimeters(lines.Select(line => inside.PartOf(line.From, line.To)).Sum(part => part is var (from, to) ? from.DistanceMm(to) : 0));
    }
}
