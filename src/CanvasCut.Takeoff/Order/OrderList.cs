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
    /// <summary>The lines, cloth first: each sum rounded once, whichever carriers and sets it is for.</summary>
    /// <param name="made">What is made.</param>
    /// <param name="plan">The cut plan of all of it.</param>
    /// <param name="seams">The seams of one set.</param>
    public static ImmutableArray<OrderLine> Of(MadeTogether made, CutPlan plan, ImmutableArray<MadeSeam> seams) =>
    [
        Cloth(made, plan),
        .. NeedSums.Of(made, ZipperOrder.Of),
        .. NeedSums.Of(made, patterns => [.. MountOrder.Of(patterns), .. StripHoldOrder.Of(patterns)]),
        .. SewingOrder.Of(made, seams),
        .. NeedSums.Of(made, BondSupplies.Of),
        .. NeedSums.Of(made, Grommet),
    ];

    private static OrderLine Cloth(MadeTogether made, CutPlan plan)
    {
        var (job, units) = (made.Job, made.Job.Units);
        var (grade, step) = (job.Workshop.Supplies.Cloth.Grade.Id, plan.Roll.OrderStep);
        var spare = job.Workshop.Buying.Spare;
        return new(
            new(grade, Say.Of($"{job.Workshop.Cloth.Name}, roll {LengthText.Of(plan.Roll.Width, units)} wide")),
            Bought.InSteps(plan.Ordered, step, units),
            Say.Of($"{LengthText.Of(plan.Used, units)} of the roll's length (the warp) used{(spare > 0 ? Say.Of($", {Percent(spare)} spare") : Say.Of(", no spare"))}"),
            Say.Of($"up to a multiple of {LengthText.Of(step, units)}"),
            new(Say.Of("all pieces of the cut plan"), [.. made.Pieces.Select(piece => piece.Key)]));
    }

    private static IEnumerable<OrderNeed> Grommet(PatternSet patterns)
    {
        if (!patterns.Holes.IsEmpty)
        {
            var sizes = string.Join(", ", patterns.Holes.Select(hole => LengthText.Of(hole.Radius * 2, patterns.Job.Units)).Distinct());
            var grade = patterns.Job.Workshop.Supplies.Notions.Grommet;
            yield return new(
                default,
                new(grade.Grade.Id, grade.Grade.Name),
                NeedAmount.Of(patterns.Holes.Length, grade),
                Say.Of($"for a hole of {sizes}"),
                new(Say.Of("cable exit"), [.. patterns.CarrierPieces.Select(piece => piece.Key), .. patterns.Pieces.Select(piece => piece.Key).Where(key => key.Kind == PieceKind.ExitPatch)]));
        }
    }

    /// <summary>A part of one as a percentage.</summary>
    internal static string Percent(decimal part) => (part * 100).ToString("0.##", CultureInfo.InvariantCulture) + " %";

    /// <summary>With something added for waste.</summary>
    internal static Length WithWaste(Length length) => length * SewingOrder.WasteFactor;
}
