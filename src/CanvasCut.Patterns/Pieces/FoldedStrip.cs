using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>A strip of two plies, folded in half, its raw edges turned in; its middle when finished is the origin.</summary>
internal sealed class FoldedStrip
{
    /// <summary>The turn along every raw edge, less where the strip is narrower; common practice, no source.</summary>
    private static readonly Length MostTurn = Length.FromInches(0.5);

    /// <summary>
    /// Kept outside a corner's fold: so little that a row 3 mm inside an edge, which is 3/√2 mm inside that fold at least, passes beside what is folded in.
    /// </summary>
    private static readonly Length KeptAtCorner = Length.FromMillimeters(2);

    private readonly int _toward;

    /// <summary>Works out a strip.</summary>
    /// <param name="place">The finished strip, anywhere.</param>
    /// <param name="toward">Where the fold lies: 1 forward, -1 aft.</param>
    public FoldedStrip(Box place, int toward)
    {
        _toward = toward;
        Finished = Box.Around(new(0, 0), place.WidthMm, place.HeightMm);
        FoldY = toward * Finished.Top;
        Open = toward > 0 ? Finished with { Top = Finished.Top + Finished.HeightMm } : Finished with { Bottom = Finished.Bottom - Finished.HeightMm };
        Turn = TurnIn(place);

        // Its corners all come to lie on each other where it is sewn on: square they would be eight plies.
        Hemmed = new(Open, Sides.All(EdgeTurn.Once(Turn)), CornerKind.Mitred, kept: KeptAtCorner);
        Order = [.. Hemmed.FoldOrder, new(new(0, FoldY), new(-toward, 0))];
    }

    /// <summary>The finished strip.</summary>
    public Box Finished { get; }

    /// <summary>Before it is folded in half, its edges turned.</summary>
    public Box Open { get; }

    /// <summary>Where it is folded in half.</summary>
    public double FoldY { get; }

    /// <summary>What is turned in.</summary>
    public Length Turn { get; }

    /// <summary>The open strip with its turned edges.</summary>
    public HemmedBox Hemmed { get; }

    /// <summary>The folds in the order in which they are made, that in half last.</summary>
    public ImmutableArray<HalfPlane> Order { get; }

    /// <summary>The folds as they are drawn.</summary>
    public IEnumerable<PieceLine> Folds()
    {
        var cut = Hemmed.Cut.Bounds;
        return [.. Hemmed.Folds(), PieceLine.Straight(PieceLineKind.Fold, new(cut.Left, FoldY), new(cut.Right, FoldY), LineShows.FoldInHalf)];
    }

    /// <summary>The edge away from the fold.</summary>
    public double OuterY => -_toward * Finished.Top;

    /// <summary>What is turned in along the edges of a strip.</summary>
    public static Length TurnIn(Box place) =>
        Length.FromMillimeters(Math.Min(MostTurn.Millimeters, Math.Min(place.WidthMm, place.HeightMm) / 2));
}
