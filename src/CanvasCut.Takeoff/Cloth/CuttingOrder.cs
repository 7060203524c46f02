using System.Collections.Immutable;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>In which order the pieces leave the roll, and where it can be cut straight across.</summary>
internal static class CuttingOrder
{
    private const double SameMm = 1e-3;

    /// <summary>
    /// The piece first that ends nearest to the cut end, of several alike the one nearer the selvage: the cloth that is
    /// still on the roll is never cut into further than it must be.
    /// </summary>
    public static IEnumerable<T> Sorted<T>(IEnumerable<T> pieces, Func<T, Box> boxOf) => pieces
        .OrderBy(piece => Math.Round(boxOf(piece).Right / SameMm))
        .ThenBy(piece => Math.Round(boxOf(piece).Bottom / SameMm))
        .ThenBy(piece => Math.Round(boxOf(piece).Left / SameMm));

    /// <summary>After which pieces a straight cut across the whole roll is free, and how far from the cut end.</summary>
    /// <param name="placed">The pieces in the order of cutting.</param>
    public static ImmutableArray<StraightCut> Across(ImmutableArray<PlacedPiece> placed)
    {
        var cuts = ImmutableArray.CreateBuilder<StraightCut>();
        for (var i = 0; i + 1 < placed.Length; i++)
        {
            var (endMm, nextMm) = (placed[i].Outline.Bounds.Right, placed.Skip(i + 1).Min(piece => piece.Outline.Bounds.Left));
            if (nextMm >= endMm - SameMm)
            {
                cuts.Add(new(placed[i].Number, Length.FromMillimeters((endMm + Math.Max(endMm, nextMm)) / 2)));
            }
        }

        return cuts.ToImmutable();
    }
}
