using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Nesting.Rectangles;

/// <summary>A way a rectangle may lie.</summary>
/// <param name="Along">How far it reaches along the strip, with the gap.</param>
/// <param name="Across">How far across it, with the gap.</param>
/// <param name="Pose">A pose in which it lies so.</param>
internal readonly record struct Lying(long Along, long Across, Pose Pose);

/// <summary>A task of rectangles alone, in whole units.</summary>
/// <remarks>
/// Pieces that keep a gap are the same as pieces one gap longer and wider that may touch on a strip one gap longer and
/// wider. To find a layout, sizes are rounded up and the strip's width down to the unit, so that what fits here fits there;
/// to show that there is none, the other way round.
/// </remarks>
internal sealed class RectangleTask
{
    /// <summary>Units in a millimetre.</summary>
    private const double Units = 1e6;

    /// <summary>A size so little above a whole unit is that unit.</summary>
    private const double RoundOff = 1e-3;

    /// <summary>A corner so little off a right angle is one; far below what <see cref="LayoutCheck"/> minds.</summary>
    private const double SquareMm = 1e-9;

    private RectangleTask(NestingTask task, ImmutableArray<ImmutableArray<Lying>> ways, long width)
    {
        (Task, Ways, Width) = (task, ways, width);
        Pieces = [.. task.Items.SelectMany((item, index) => Enumerable.Repeat(index, item.Demand))];
        Step = ways.SelectMany(item => item).Select(way => way.Along).Aggregate(GreatestCommonDivisor);
        Area = Pieces.Sum(item => (double)ways[item][0].Along * ways[item][0].Across);
        var longest = ways.Max(item => item.Min(way => way.Along));
        var least = Math.Max(longest, (long)Math.Ceiling((Area / Width * (1 - 1e-12)) - RoundOff));
        Least = (least + Step - 1) / Step * Step;
    }

    /// <summary>The task it was made from.</summary>
    public NestingTask Task { get; }

    /// <summary>For each item the ways in which it may lie: one or two.</summary>
    public ImmutableArray<ImmutableArray<Lying>> Ways { get; }

    /// <summary>For each piece its item.</summary>
    public ImmutableArray<int> Pieces { get; }

    /// <summary>The strip's width.</summary>
    public long Width { get; }

    /// <summary>The area of all pieces with their gaps.</summary>
    public double Area { get; }

    /// <summary>Every length along the strip is a multiple of this, for pieces pushed toward its start lie behind one another.</summary>
    public long Step { get; }

    /// <summary>No layout is shorter.</summary>
    public long Least { get; }

    /// <summary>The task in whole units; null when not every piece is a rectangle that lies level, or the strip is not free all over.</summary>
    /// <param name="task">The task.</param>
    /// <param name="isRoomier">Whether it may have a little more room than in truth, or else a little less.</param>
    public static RectangleTask? Of(NestingTask task, bool isRoomier = false)
    {
        if (!task.Barred.IsEmpty || task.RepeatMm > 0 || !task.Items.All(item => IsLevel(item.Shape) && item.Poses.All(pose => pose.Degrees % 90 == 0)))
        {
            return null;
        }

        var width = LengthUnits(task.StripWidthMm + task.GapMm + (isRoomier ? BoundTurns.SlackMm : 0));
        ImmutableArray<ImmutableArray<Lying>> ways = [.. task.Items.Select(item => WaysOf(item, sizeMm => isRoomier ? LengthUnits(sizeMm + task.GapMm) : SizeUnits(sizeMm + task.GapMm), width))];
        return ways.All(item => !item.IsEmpty) ? new(task, ways, width) : null;
    }

    /// <summary>A length in millimetres, without the gap after the last piece.</summary>
    public double LengthMm(long length) => (length / Units) - Task.GapMm;

    /// <summary>The most whole units within a length and the gap after the last piece.</summary>
    public long LengthWithin(double lengthMm) => LengthUnits(lengthMm + Task.GapMm);

    /// <summary>The layout of the pieces.</summary>
    public NestingLayout ToLayout(RectangleLayout layout)
    {
        var copies = new int[Task.Items.Length];
        return new(Task, [.. Pieces.Select((item, piece) => Placed(item, copies[item]++, Ways[item][layout.Way[piece]], (layout.Along[piece], layout.Across[piece])))]);
    }

    private NestingPlacement Placed(int item, int copy, Lying way, (long Along, long Across) at)
    {
        var corner = way.Pose.Of(Task.Items[item].Shape).Bounds.LowerLeft;
        return new(item, copy, way.Pose, new Point(at.Along / Units, at.Across / Units) - corner);
    }

    private static ImmutableArray<Lying> WaysOf(NestingItem item, Func<double, long> whole, long width) =>
    [
        .. from pose in item.Poses
           let box = pose.Of(item.Shape).Bounds
           let way = new Lying(whole(box.WidthMm), whole(box.HeightMm), pose)
           where way.Across <= width
           group way by (way.Along, way.Across) into alike
           select alike.First(),
    ];

    private static long LengthUnits(double lengthMm) => (long)Math.Floor((lengthMm * Units) + RoundOff);

    private static long SizeUnits(double sizeMm) => (long)Math.Ceiling((sizeMm * Units) - RoundOff);

    private static bool IsLevel(Outline shape)
    {
        var box = shape.Bounds;
        return shape.Count == 4 && shape.Corners.All(corner =>
            Math.Min(corner.X - box.Left, box.Right - corner.X) <= SquareMm && Math.Min(corner.Y - box.Bottom, box.Top - corner.Y) <= SquareMm)
            && shape.AreaMm2 >= (box.WidthMm * box.HeightMm) - (SquareMm * shape.PerimeterMm);
    }

    private static long GreatestCommonDivisor(long one, long other) => other == 0 ? one : GreatestCommonDivisor(other, one % other);
}
