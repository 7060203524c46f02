using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Nesting;

/// <summary>A task with places for its pieces; whether the places are good, <see cref="LayoutCheck"/> tells.</summary>
public sealed class NestingLayout
{
    private readonly ImmutableArray<Outline> _outlines;

    /// <summary>Describes a layout.</summary>
    /// <param name="task">What was to be placed.</param>
    /// <param name="placements">Where each piece lies; at least one.</param>
    /// <exception cref="ArgumentException">There is no placement, or one names an item that the task has not.</exception>
    public NestingLayout(NestingTask task, ImmutableArray<NestingPlacement> placements)
    {
        if (placements.IsDefaultOrEmpty || placements.Any(p => p.Item < 0 || p.Item >= task.Items.Length))
        {
            throw new ArgumentException("A layout places items of its task.", nameof(placements));
        }

        (Task, Placements) = (task, placements);
        _outlines = [.. placements.Select(p => p.Pose.Of(task.Items[p.Item].Shape).MovedBy(p.Offset))];
        LengthMm = _outlines.Max(outline => outline.Bounds.Right);
    }

    /// <summary>What was to be placed.</summary>
    public NestingTask Task { get; }

    /// <summary>Where each piece lies.</summary>
    public ImmutableArray<NestingPlacement> Placements { get; }

    /// <summary>How far the pieces reach along the strip.</summary>
    public double LengthMm { get; }

    /// <summary>The part of the strip's used length that is covered, from 0 to 1.</summary>
    public double Use => _outlines.Sum(outline => outline.AreaMm2) / (Task.StripWidthMm * LengthMm);

    /// <summary>The outline of a placement, as it lies on the strip.</summary>
    public Outline PlacedOutline(int placement) => _outlines[placement];
}
