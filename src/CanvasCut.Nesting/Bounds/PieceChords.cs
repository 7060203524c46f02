using System.Collections.Immutable;

namespace CanvasCut.Nesting;

/// <summary>One way an item may lie: along the strip, or turned by a quarter.</summary>
/// <param name="AlongMm">How far it reaches along the strip.</param>
/// <param name="Upright">Its chords across the strip, from its left to its right.</param>
/// <param name="Level">Its chords along the strip.</param>
internal sealed record ChordChoice(double AlongMm, ChordProfile Upright, ChordProfile Level);

/// <summary>The chords of an item in every way it may lie; a half turn changes none of them.</summary>
/// <param name="Demand">How many copies.</param>
/// <param name="Choices">The ways in which it fits across the strip; one or two.</param>
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
        var (upright, level) = (ChordProfile.Of(parts), ChordProfile.Of([.. parts.Select(part => part.Turned(1))]));
        return new(item.Demand, [.. BoundTurns.Of(item, task.StripWidthMm)
            .Select(quarters => quarters % 2)
            .Distinct()
            .Select(odd => new ChordChoice(BoundTurns.AlongMm(item, odd), odd == 0 ? upright : level, odd == 0 ? level : upright))]);
    }
}

/// <summary>The turns that the bounds take into account.</summary>
internal static class BoundTurns
{
    /// <summary>How much a strip may seem wider, or a length shorter, by round-off; above what <see cref="LayoutCheck"/> forgives.</summary>
    public const double SlackMm = 1e-5;

    /// <summary>The allowed turns in which an item lies across the strip.</summary>
    public static ImmutableArray<int> Of(NestingItem item, double stripWidthMm) =>
        [.. item.Quarters.Where(quarters => AlongMm(item, quarters + 1) <= stripWidthMm + SlackMm)];

    /// <summary>How far a turned item reaches along the strip.</summary>
    public static double AlongMm(NestingItem item, int quarters) =>
        quarters % 2 == 0 ? item.Shape.Bounds.WidthMm : item.Shape.Bounds.HeightMm;
}
