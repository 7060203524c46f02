using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Measuring;

/// <summary>What the sewist is told of her measures.</summary>
public static class MeasureVerdict
{
    /// <summary>A difference of diagonals that is worth a word; working figure, 1/8 in.</summary>
    private static readonly Length Noticed = Length.FromMillimeters(3);

    /// <summary>Slips smaller than this should be seen; larger ones that are not are told of.</summary>
    private static readonly Length Wanted = Length.FromMillimeters(25);

    private static readonly ImmutableArray<(MeasureKind One, MeasureKind Other)> Pairs =
    [
        (MeasureKind.DiagonalFromPort, MeasureKind.DiagonalFromStarboard),
        (MeasureKind.OverallFromPort, MeasureKind.OverallFromStarboard),
    ];

    /// <summary>The verdict, the most important first.</summary>
    /// <remarks>Of a frame out of square nothing can be said while a reading is under suspicion: it may be that reading.</remarks>
    public static ImmutableArray<string> Of(MeasureAdjustment adjustment) =>
        [Agreement(adjustment), .. adjustment.Agrees ? Unequal(adjustment) : [Postponed], .. Unchecked(adjustment)];

    private static string Postponed => Say.Of("Whether the frame is square shows only once the measures agree.");

    private static string Agreement(MeasureAdjustment adjustment) => (adjustment.IsSettled, adjustment.Suspects) switch
    {
        (false, _) => Say.Of("No top is anything like these measures. Look for a wrong digit, a wrong unit, or port and starboard changed over."),
        (_, []) => adjustment.Freedom > 0
            ? Say.Of("The measures agree as well as the tape allows.")
            : Say.Of("There is not one measure more than the shape needs, so nothing was checked. Measure again what can be measured again."),
        (_, [var one]) => (
            Say.Of($"The measures do not agree. Most likely wrong: {MeasureWords.Of(adjustment.Top, one)}. It reads {Text(one.Read)}; the others make it {Text(one.ByOthers)}. Measure it again.")),
        (_, var several) =>
            Say.Of($"The measures do not agree, and these cannot tell which is wrong: {string.Join("; ", several.Select(each => MeasureWords.Of(adjustment.Top, each)))}. Measure each again."),
    };

    private static IEnumerable<string> Unequal(MeasureAdjustment adjustment) =>
        from pair in Pairs
        from one in adjustment.Readings
        where one.Measure.Kind == pair.One && one.Number == 1
        from other in adjustment.Readings
        where other.Measure.Kind == pair.Other && other.Number == 1 && other.Measure.Bow == one.Measure.Bow
        let apart = UnitMath.Abs(one.Adjusted - other.Adjusted)
        where apart > Noticed
        select Say.Of($"{MeasureWords.Of(adjustment.Top, one.Measure)} and the one across differ by {Text(apart)}: the frame is out of square there. Square it before you sew, or sew to it as it is.");

    private static IEnumerable<string> Unchecked(MeasureAdjustment adjustment)
    {
        List<string> weak = [.. adjustment.Readings.Where(reading => !(reading.Seen < Wanted)).Select(reading => MeasureWords.Of(adjustment.Top, reading.Measure)).Distinct()];
        return weak.Count == 0 ? [] : [Say.Of($"Hardly anything checks these; measure each again, hooked anew, and write both readings: {string.Join("; ", weak)}.")];
    }

    private static string Text(Length length) => LengthText.Of(length, PrintUnits.Both);
}
