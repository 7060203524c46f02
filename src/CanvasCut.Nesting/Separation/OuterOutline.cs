using CanvasCut.Geometry;

namespace CanvasCut.Nesting.Separation;

/// <summary>An outline with fewer corners that holds the whole of another.</summary>
internal static class OuterOutline
{
    /// <summary>An outline with no more corners is left as it is.</summary>
    private const int FewCorners = 12;

    /// <summary>What may be added in all, as a part of the area; so much room is lost at most.</summary>
    private const double MostAdded = 0.001;

    /// <summary>The outline, or one a little larger with fewer corners.</summary>
    public static Outline Of(Outline outline)
    {
        var points = outline.Corners.ToList();
        var left = MostAdded * outline.AreaMm2;
        while (points.Count > FewCorners && Cheapest(points) is { } cut && cut.AreaMm2 <= left)
        {
            left -= cut.AreaMm2;
            cut.Apply(points);
        }

        if (points.Count == outline.Count)
        {
            return outline;
        }

        var simple = new Outline(points);
        return Witness.IsValid(simple) && Witness.OutsideMm2(outline, simple) <= LayoutCheck.OverlapMm2 / outline.Count ? simple : outline;
    }

    private static Cut? Cheapest(List<Point> points) =>
        Enumerable.Range(0, points.Count).Select(i => CutAt(points, i)).OfType<Cut>().MinBy(cut => cut.AreaMm2);

    /// <summary>A hollow corner is bridged; an edge between two full corners gives way to its neighbours, made longer.</summary>
    private static Cut? CutAt(List<Point> points, int index)
    {
        var count = points.Count;
        var (before, corner, next, after) = (points[(index + count - 1) % count], points[index], points[(index + 1) % count], points[(index + 2) % count]);
        var (into, along, away) = (corner - before, next - corner, after - next);
        if (into.Cross(along) <= 0)
        {
            return new(index, null, Math.Abs(into.Cross(along)) / 2);
        }

        var turn = into.Cross(away);
        if (along.Cross(away) <= 0 || turn <= 0)
        {
            return null;
        }

        var meeting = corner + (into * (along.Cross(away) / turn));
        return new(index, meeting, along.Cross(meeting - corner) is var twice ? Math.Abs(twice) / 2 : 0);
    }

    /// <summary>A corner left out, or with the next one replaced by a point.</summary>
    private sealed record Cut(int Index, Point? Meeting, double AreaMm2)
    {
        public void Apply(List<Point> points)
        {
            if (Meeting is { } meeting)
            {
                points[(Index + 1) % points.Count] = meeting;
            }

            points.RemoveAt(Index);
        }
    }
}
