using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Nesting;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>One piece where it lies on the roll.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Number">Counted from 1 in the order of cutting.</param>
/// <param name="Copy">Which of several alike, counted from 1.</param>
/// <param name="Outline">Its cut outline: X from the cut end along the roll, Y from the selvage, millimetres.</param>
/// <param name="Quarters">By how many quarters to the left it is turned from the way its warp asks for, 0 to 3.</param>
/// <param name="Forward">The direction on the roll in which the piece points forward.</param>
public sealed record PlacedPiece(PatternPiece Piece, int Number, int Copy, Outline Outline, int Quarters, Step Forward);

/// <summary>How the pieces lie on the roll, and how much cloth that takes.</summary>
/// <param name="Roll">The roll.</param>
/// <param name="Placed">Every piece, in the order of cutting.</param>
/// <param name="Used">From the cut end to the last piece.</param>
/// <param name="Ordered">The used length and the spare rounded up to the shop's step.</param>
/// <param name="Proof">How short a layout can be at most, and what follows for this one.</param>
public sealed record CutPlan(ClothRoll Roll, ImmutableArray<PlacedPiece> Placed, Length Used, Length Ordered, PlanProof Proof)
{
    private readonly Lazy<ImmutableArray<Leftover>> _leftovers = new(() => Leftover.Of(Roll, Ordered, Placed));

    /// <summary>No layout on this roll can be shorter.</summary>
    public Length LowerBound => Proof.Bound;

    /// <summary>The part of the cloth ordered that becomes pieces, 0 to 1.</summary>
    public double Use => Placed.Sum(placed => placed.Outline.AreaMm2) / (Roll.Width.Millimeters * Ordered.Millimeters);

    /// <summary>What is worth keeping of the rest, the largest first; looked for once, when first asked for.</summary>
    public ImmutableArray<Leftover> Leftovers => _leftovers.Value;

    /// <summary>Where the roll can be cut straight across between pieces.</summary>
    public ImmutableArray<StraightCut> StraightCuts => CuttingOrder.Across(Placed);

    /// <summary>Lays out the pieces.</summary>
    /// <param name="patterns">The pieces; each fits the roll.</param>
    /// <param name="search">Finds the layout.</param>
    /// <param name="report">Told how it gets on, from any thread; null when nobody listens.</param>
    /// <param name="cancellation">Breaks the search off; there is no plan then, for what was found by then would be another one every time.</param>
    /// <exception cref="InvalidOperationException">A piece does not fit the roll.</exception>
    /// <exception cref="OperationCanceledException">It was broken off.</exception>
    public static CutPlan Of(PatternSet patterns, INestingSearch search, Action<PlanProgress>? report = null, CancellationToken cancellation = default) =>
        Of(patterns.Pieces, patterns.Job.Workshop, search, report, cancellation);

    /// <summary>Lays out the pieces of one or more mountings on one roll.</summary>
    /// <param name="pieces">The pieces; each fits the roll.</param>
    /// <param name="workshop">What they are cut from.</param>
    /// <param name="search">Finds the layout.</param>
    /// <param name="report">Told how it gets on, from any thread; null when nobody listens.</param>
    /// <param name="cancellation">Breaks the search off.</param>
    /// <exception cref="InvalidOperationException">A piece does not fit the roll.</exception>
    /// <exception cref="OperationCanceledException">It was broken off.</exception>
    public static CutPlan Of(
        ImmutableArray<PatternPiece> pieces, Workshop workshop, INestingSearch search, Action<PlanProgress>? report = null, CancellationToken cancellation = default)
    {
        var cloth = workshop.Cloth;
        var quarters = cloth.Lay.Warp == WarpDirection.ForeAft ? 3 : 0;
        var task = new NestingTask(
            [.. pieces.Select(piece => ItemOf(piece, quarters, cloth.Lay))],
            cloth.Roll.UsableWidth.Millimeters,
            cloth.Lay.Gap.Millimeters);
        var layout = search.Find(task, PlanProgress.Telling(report) with { Cancellation = cancellation });
        cancellation.ThrowIfCancellationRequested();
        if (layout is null)
        {
            throw new InvalidOperationException("A piece does not fit the roll.");
        }

        var used = Length.FromMillimeters(layout.LengthMm);
        var spare = workshop.Buying.Spare;
        return new(
            cloth.Roll,
            PlacedOf(pieces, layout, quarters, cloth.Roll.Selvage.Millimeters),
            used,
            RoundedUp(used * (1 + (double)spare), cloth.Roll.OrderStep),
            PlanProof.Of(layout, cloth.Roll.OrderStep, spare));
    }

    /// <summary>A length rounded up to a whole number of steps.</summary>
    public static Length RoundedUp(Length length, Length step) =>
        step * Math.Ceiling((length.Millimeters / step.Millimeters) - 1e-9);

    private static NestingItem ItemOf(PatternPiece piece, int quarters, ClothLay lay) => new(
        piece.Key.Id,
        piece.Shape.Cut.Turned(quarters),
        piece.Title.Quantity,
        lay.AllowedTurns switch
        {
            RollTurns.None => AllowedTurns.None,
            RollTurns.Half => AllowedTurns.Half,
            _ => AllowedTurns.Quarter,
        });

    private static ImmutableArray<PlacedPiece> PlacedOf(ImmutableArray<PatternPiece> pieces, NestingLayout layout, int quarters, double selvageMm)
    {
        var copies = new int[pieces.Length];
        return
        [
            .. CuttingOrder.Sorted(layout.Placements.Index(), each => layout.PlacedOutline(each.Index).Bounds)
                .Select((each, place) => new PlacedPiece(
                    pieces[each.Item.Item],
                    place + 1,
                    ++copies[each.Item.Item],
                    layout.PlacedOutline(each.Index).MovedBy(new(0, selvageMm)),
                    each.Item.Quarters,
                    Turn.Quarters(new(0, 1), quarters + each.Item.Quarters) - new Point(0, 0))),
        ];
    }
}
