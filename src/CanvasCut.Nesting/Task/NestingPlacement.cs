using CanvasCut.Geometry;

namespace CanvasCut.Nesting;

/// <summary>Where one copy of an item lies.</summary>
/// <param name="Item">The item's place in the task, from 0.</param>
/// <param name="Copy">Which copy of it, from 0.</param>
/// <param name="Pose">How it is held before it is moved.</param>
/// <param name="Offset">How it is moved then.</param>
public sealed record NestingPlacement(int Item, int Copy, Pose Pose, Step Offset)
{
    /// <summary>Describes a placement that is turned by quarters to the left and not mirrored.</summary>
    public NestingPlacement(int item, int copy, int quarters, Step offset)
        : this(item, copy, new Pose(quarters * 90), offset)
    {
    }

    /// <summary>By how many whole quarters to the left the piece is turned about the origin, before it is moved.</summary>
    public int Quarters => Pose.Degrees / 90;
}
