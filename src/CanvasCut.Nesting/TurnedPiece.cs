using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Nesting;

/// <summary>An item in one of its turns, as the search sees it: by its convex hull.</summary>
/// <param name="Item">The item's place in the task.</param>
/// <param name="Pose">How it is held.</param>
/// <param name="Hull">The hull after the turn.</param>
internal sealed record TurnedPiece(int Item, Pose Pose, Outline Hull)
{
    /// <summary>An item in every turn that fits across the strip, leaving out turns that look like an earlier one.</summary>
    public static ImmutableArray<TurnedPiece> Of(NestingTask task, int item)
    {
        var pieces = ImmutableArray.CreateBuilder<TurnedPiece>();
        foreach (var pose in NestingFit.FittingPoses(task, item))
        {
            var piece = new TurnedPiece(item, pose, ConvexHull.Of(pose.Of(task.Items[item].Shape).Corners));
            if (!pieces.Any(piece.LooksLike))
            {
                pieces.Add(piece);
            }
        }

        return pieces.ToImmutable();
    }

    /// <summary>The places of the piece's origin with which it lies inside a strip, up to so far along it.</summary>
    public Box PlacesOn(double stripWidthMm, double reachMm)
    {
        var (left, bottom) = (-Hull.Bounds.Left, -Hull.Bounds.Bottom);
        return new(left, bottom, Math.Max(left, reachMm), Math.Max(bottom, stripWidthMm - Hull.Bounds.Top));
    }

    private bool LooksLike(TurnedPiece other) =>
        Hull.Count == other.Hull.Count && Enumerable.Range(0, Hull.Count).All(i => FromCorner(i).DistanceMm(other.FromCorner(i)) <= FreePlace.SameMm);

    private Point FromCorner(int index) => Hull[index] - (Hull.Bounds.LowerLeft - new Point(0, 0));
}
