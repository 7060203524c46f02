using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Job;

/// <summary>The panels that a sewn half accepts one way round, in words.</summary>
/// <param name="Way">Which way the long side lies.</param>
/// <param name="AsAsked">The one size that leaves the borders as the job asks.</param>
/// <param name="Length">The longer side, from and to, when borders may grow.</param>
/// <param name="Width">The shorter side, from and to.</param>
/// <param name="Further">What else must hold; empty for nothing.</param>
public sealed record RefitRange(string Way, string AsAsked, string Length, string Width, string Further)
{
    /// <summary>The same in figures, in the whole steps of a ruler that are printed; null where no panel fits.</summary>
    public PanelRange? Sizes { get; private init; }

    /// <summary>The thickest panel.</summary>
    public UnitsNet.Length MostThickness { get; private init; }

    internal static RefitRange Of(RefitWay way, PrintUnits units)
    {
        var range = way.Range.InSteps(RulerSteps.Of(units));
        var asked = way.Panel.LongSide == LongSide.Athwart ? (way.AsAsked.Athwart, way.AsAsked.ForeAft) : (way.AsAsked.ForeAft, way.AsAsked.Athwart);
        var name = Say.Of($"long side {Words.Of(way.Panel.LongSide)}");
        return range.IsEmpty || range.Width.From > range.Length.To
            ? new(name, Say.Of("none"), Say.Of("none"), Say.Of("none"), string.Empty)
            : new(
                name,
                way.Range.Holds(asked.Item1, asked.Item2) && asked.Item1 >= asked.Item2 ? $"{LengthText.Of(asked.Item1, units)} × {LengthText.Of(asked.Item2, units)}" : Say.Of("none"),
                Say.Of($"{LimitWords.Least(range.Length.From, units)} to {LimitWords.Most(range.Length.To, units)}"),
                Say.Of($"{LimitWords.Least(range.Width.From, units)} to {LimitWords.Most(range.Width.To, units)}"),
                string.Join("; ", [.. range.Limits.Select(limit => Text(limit, units)), Say.Of($"at most {LimitWords.Most(way.MostThickness, units)} thick")]))
            {
                Sizes = range,
                MostThickness = way.MostThickness,
            };
    }

    private static string Text(SizeLimit limit, PrintUnits units) =>
        Say.Of($"{Times(limit.Lengths, Say.Of("length"))} + {Times(limit.Widths, Say.Of("width"))} at most {LimitWords.Most(limit.Most, units)}");

    private static string Times(int times, string what) => times == 1 ? what : FormattableString.Invariant($"{times} × {what}");
}
