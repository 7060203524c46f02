using CanvasCut.Geometry;

namespace CanvasCut.Nesting.Rectangles;

/// <summary>Leaves of a task only rectangles that lie inside its pieces: where these find no room, the pieces find none.</summary>
public static class InnerRectangles
{
    /// <summary>A rectangle smaller than this part of its piece says nothing worth the trying.</summary>
    private const double LeastPart = 0.25;

    /// <summary>The task of the rectangles on a strip that is free all over; null when no piece holds a worthwhile one.</summary>
    /// <remarks>Pieces with a dent, and those that may be turned by less than a quarter, are left out: with fewer pieces there is only more room.</remarks>
    public static NestingTask? Of(NestingTask task)
    {
        var items = task.Items.Select(InsideOf).OfType<NestingItem>().ToList();
        return items.Count == 0 ? null : new([.. items], task.StripWidthMm, task.GapMm);
    }

    /// <summary>The largest level rectangle in an outline without a dent, of those that end at a corner or midway between two.</summary>
    public static Box LargestIn(Outline shape)
    {
        var corners = shape.Corners.Select(corner => corner.X).Distinct().Order().ToList();
        var ends = corners.Concat(corners.Zip(corners.Skip(1), (from, to) => (from + to) / 2)).Distinct().Order().ToList();
        var upright = ends.ToDictionary(x => x, x => Upright(shape, x));
        return (
            from left in ends
            from right in ends
            where right > left
            select new Box(left, Math.Max(upright[left].Low, upright[right].Low), right, Math.Min(upright[left].High, upright[right].High)))
            .Where(box => box.Top > box.Bottom)
            .DefaultIfEmpty(new Box(0, 0, 0, 0))
            .MaxBy(box => box.WidthMm * box.HeightMm);
    }

    private static NestingItem? InsideOf(NestingItem item)
    {
        if (!ConvexParts.IsConvex(item.Shape) || item.Poses.Any(pose => pose.Degrees % 90 != 0))
        {
            return null;
        }

        var inside = LargestIn(item.Shape);
        return inside.WidthMm * inside.HeightMm >= LeastPart * item.Shape.AreaMm2 ? new(item.Name, Outline.Of(inside), item.Demand, item.Poses) : null;
    }

    /// <summary>Where an upright line enters and leaves the outline.</summary>
    private static (double Low, double High) Upright(Outline shape, double x)
    {
        var met = Enumerable.Range(0, shape.Corners.Length)
            .Select(edge => (From: shape[edge], To: shape[edge + 1]))
            .Where(edge => Math.Min(edge.From.X, edge.To.X) <= x && x <= Math.Max(edge.From.X, edge.To.X))
            .SelectMany(edge => edge.From.X == edge.To.X
                ? new[] { edge.From.Y, edge.To.Y }
                : [edge.From.Y + ((x - edge.From.X) / (edge.To.X - edge.From.X) * (edge.To.Y - edge.From.Y))])
            .ToList();
        return (met.Min(), met.Max());
    }
}
