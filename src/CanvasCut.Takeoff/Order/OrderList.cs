using System.Collections.Immutable;
using System.Globalization;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>What to buy, worked out from the drawn pieces and the plies under the needle.</summary>
public static class OrderList
{
    /// <summary>The lines, cloth first.</summary>
    /// <param name="patterns">The pieces.</param>
    /// <param name="plan">Their cut plan.</param>
    /// <param name="seams">Their seams.</param>
    public static ImmutableArray<OrderLine> Of(PatternSet patterns, CutPlan plan, ImmutableArray<SewnSeam> seams) =>
    [
        Cloth(patterns, plan),
        .. ZipperOrder.Of(patterns),
        .. MountOrder.Of(patterns),
        .. SewingOrder.Of(patterns, seams),
        .. BondSupplies.Of(patterns),
        .. Grommet(patterns),
    ];

    private static OrderLine Cloth(PatternSet patterns, CutPlan plan)
    {
        var (job, units) = (patterns.Job, patterns.Job.Units);
        var (grade, step) = (job.Workshop.Supplies.Cloth.Grade.Id, plan.Roll.OrderStep);
        var spare = job.Workshop.Buying.Spare;
        return new(
            new(grade, Say.Of($"{job.Workshop.Cloth.Name}, roll {LengthText.Of(plan.Roll.Width, units)} wide")),
            Bought.InSteps(plan.Ordered, step, units),
            Say.Of($"{LengthText.Of(plan.Used, units)} of the roll's length (the warp) used{(spare > 0 ? Say.Of($", {Percent(spare)} spare") : Say.Of(", no spare"))}"),
            Say.Of($"up to a multiple of {LengthText.Of(step, units)}"),
            new(Say.Of("all pieces of the cut plan"), [.. patterns.Pieces.Select(piece => piece.Key)]));
    }

    private static IEnumerable<OrderLine> Grommet(PatternSet patterns)
    {
        foreach (var holes in patterns.Holes.GroupBy(hole => hole.Radius * 2))
        {
            var grade = patterns.Job.Workshop.Supplies.Notions.Grommet;
            var (bought, rounding) = SoldBy.Of(holes.Count(), grade);
            yield return new(
                new(grade.Grade.Id, grade.Grade.Name),
                bought,
                Say.Of($"for a hole of {LengthText.Of(holes.Key, patterns.Job.Units)}"),
                rounding,
                new(Say.Of("cable exit"), [.. patterns.CarrierPieces.Select(piece => piece.Key), .. patterns.Pieces.Select(piece => piece.Key).Where(key => key.Kind == PieceKind.ExitPatch)]));
        }
    }

    /// <summary>A part of one as a percentage.</summary>
    internal static string Percent(decimal part) => (part * 100).ToString("0.##", CultureInfo.InvariantCulture) + " %";

    /// <summary>With something added for waste.</summary>
    internal static Length WithWaste(Length length) => length * SewingOrder.WasteFactor;
}
