using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Nesting;

/// <summary>One way an item may lie.</summary>
/// <param name="AlongMm">How far it reaches along the strip.</param>
/// <param name="Upright">Its chords across the strip, from its left to its right.</param>
/// <param name="Level">Its chords along the strip.</param>
internal sealed record ChordChoice(double AlongMm, ChordProfile Upright, ChordProfile Level);

/// <summary>The chords of an item in every way it may lie; a half turn changes none of them, nor does a mirror that stands along or across.</summary>
/// <param name="Demand">How many copies.</param>
/// <param name="Choices">The ways in which it fits across the strip.</param>
internal sealed record PieceChords(int Demand, ImmutableArray<ChordChoice> Choices)
{
    /// <summary>The chords of every item of a task, each set out by half the gap.</summary>
    public static ImmutableArray<PieceChords> Of(NestingTask task) => [.. task.Items.Select(item => Of(item, task))];

    /// <summary>The least a sum over the chords can be, whichever of the ways that fit a length is taken; infinite when none does.</summary>
    public double Least(double lengthMm, Func<ChordChoice, double> sum) =>
        Choices.Where(choice => choice.AlongMm <= lengthMm).Select(sum).DefaultIfEmpty(double.PositiveInfinity).Min() * Demand;

    private static PieceChords Of(NestingItem item, NestingTask task)
    {
        var parts = ConvexParts.Of(item.Shape, task.GapMm);
        return new(item.Demand, [.. BoundTurns.Of(item, task.StripWidthMm)
            .DistinctBy(pose => (pose.Degrees % 180, pose.IsMirrored && pose.Degrees % 90 != 0))
            .Select(pose => Choice(item, pose, [.. parts.Select(pose.Of)]))]);
    }

    private static ChordChoice Choice(NestingItem item, Pose pose, ImmutableArray<Outline> parts) =>
        new(BoundTurns.AlongMm(item, pose), ChordProfile.Of(parts), ChordProfile.Of([.. parts.Select(part => part.Turned(1))]));
}

/// <summary>The turns that the bounds take into account.</summary>
internal static class BoundTurns
{
    /// <summary>How much a strip may seem wider, or a length shorter, by round-off; above what <see cref="LayoutCheck"/> forgives.</summary>
    public const double SlackMm = 1e-5;

    /// <summary>The allowed turns in which an item lies across the strip.</summary>
    public static ImmutableArray<Pose> Of(NestingItem item, double stripWidthMm) =>
        [.. item.Poses.Where(pose => pose.Of(item.Shape).Bounds.HeightMm <= stripWidthMm + SlackMm)];

    /// <summary>How far a turned item reaches along the strip.</summary>
    public static double AlongMm(NestingItem item, Pose pose) => pose.Of(item.Shape).Bounds.WidthMm;
}
