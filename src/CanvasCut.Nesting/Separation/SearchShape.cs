using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Nesting.Separation;

/// <summary>An item in one of its poses, or a barred zone, as this search sees it.</summary>
internal sealed class SearchShape
{
    /// <summary>Prepares a shape.</summary>
    /// <param name="item">The item's place in the task; -1 for a zone.</param>
    /// <param name="pose">How it is held.</param>
    /// <param name="outline">The outline in that pose.</param>
    public SearchShape(int item, Pose pose, Outline outline)
    {
        (Item, Pose, Bounds) = (item, pose, outline.Bounds);
        Parts = ConvexDivision.Of(OuterOutline.Of(outline));
        HullAreaMm2 = ConvexHull.Of(outline.Corners).AreaMm2;
        Corners = [.. outline.Corners.Select(corner => corner - (Bounds.LowerLeft - new Point(0, 0))).OrderBy(corner => corner.X).ThenBy(corner => corner.Y)];
    }

    /// <summary>The item's place in the task; -1 for a zone.</summary>
    public int Item { get; }

    /// <summary>How it is held.</summary>
    public Pose Pose { get; }

    /// <summary>The box around its true outline.</summary>
    public Box Bounds { get; }

    /// <summary>Convex parts that together hold it.</summary>
    public ImmutableArray<Outline> Parts { get; }

    /// <summary>The area of its convex hull.</summary>
    public double HullAreaMm2 { get; }

    private ImmutableArray<Point> Corners { get; }

    /// <summary>Whether both have the same corners, wherever they were drawn.</summary>
    public bool LooksLike(SearchShape other) =>
        Corners.Length == other.Corners.Length && Corners.Zip(other.Corners).All(pair => pair.First.DistanceMm(pair.Second) <= FreePlace.SameMm);
}
