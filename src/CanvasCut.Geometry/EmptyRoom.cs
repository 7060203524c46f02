using System.Collections.Immutable;

namespace CanvasCut.Geometry;

/// <summary>Looks for upright rectangles in a frame that lie on no outline.</summary>
public static class EmptyRoom
{
    private const double SameMm = 1e-6;

    /// <summary>The largest empty rectangle, then the largest of what is left, and so on; none lies on another.</summary>
    /// <param name="frame">What they lie in; larger than nothing.</param>
    /// <param name="taken">The outlines that they may touch, but not lie on.</param>
    /// <param name="leastMm">How wide and how high each is at least; above zero.</param>
    /// <param name="gridMm">How fine is looked; above zero.</param>
    /// <remarks>
    /// Looked for on a grid and then widened to the outlines. Take two grid steps off the width and the height of any empty
    /// rectangle; when it is still wide and high enough, it is not larger than the first one found.
    /// </remarks>
    /// <exception cref="ArgumentException">An argument is outside its range.</exception>
    public static IEnumerable<Box> Of(Box frame, ImmutableArray<Outline> taken, double leastMm, double gridMm)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(leastMm);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(gridMm);
        if (!(frame.WidthMm > 0 && frame.HeightMm > 0))
        {
            throw new ArgumentException("The frame must have a size.", nameof(frame));
        }

        return Found(frame, taken, leastMm, gridMm);
    }

    private static IEnumerable<Box> Found(Box frame, ImmutableArray<Outline> taken, double leastMm, double gridMm)
    {
        var grid = new RoomGrid(frame, gridMm);
        foreach (var outline in taken)
        {
            grid.Take(outline);
        }

        while (grid.Largest(leastMm - (2 * gridMm), box => IsLarge(Widened(box, frame, taken), leastMm)) is { } rough)
        {
            var box = Widened(rough, frame, taken);
            taken = taken.Add(Outline.Of(box));
            grid.Take(taken[^1]);
            yield return box;
        }
    }

    private static bool IsLarge(Box box, double leastMm) => Math.Min(box.WidthMm, box.HeightMm) >= leastMm - SameMm;

    /// <summary>A box with each side moved out until it touches something: to the right, below, to the left, above.</summary>
    private static Box Widened(Box box, Box frame, ImmutableArray<Outline> taken)
    {
        for (var side = 0; side < 4; side++)
        {
            box = (box with { Right = RightOf(box, frame, taken) }).Turned(1);
            frame = frame.Turned(1);
            taken = [.. taken.Select(outline => outline.Turned(1))];
        }

        return box;
    }

    private static double RightOf(Box box, Box frame, ImmutableArray<Outline> taken)
    {
        var band = box with { Left = box.Right - SameMm, Bottom = box.Bottom + SameMm, Right = frame.Right, Top = box.Top - SameMm };
        var met =
            from outline in taken
            where !outline.Bounds.Shared(band).IsEmpty
            from edge in Enumerable.Range(0, outline.Count)
            let part = band.PartOf(outline[edge], outline[edge + 1])
            where part is not null
            select Math.Min(part.Value.From.X, part.Value.To.X);
        return Math.Max(box.Right, met.DefaultIfEmpty(frame.Right).Min());
    }
}
