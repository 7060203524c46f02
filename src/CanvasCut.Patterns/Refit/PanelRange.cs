using System.Collections.Immutable;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>A further limit where one large side leaves less for the other.</summary>
/// <param name="Lengths">How often the panel's length counts.</param>
/// <param name="Widths">How often its width counts.</param>
/// <param name="Most">What they may add up to.</param>
public sealed record SizeLimit(int Lengths, int Widths, Length Most)
{
    /// <summary>What a panel comes to.</summary>
    public Length Of(Length length, Length width) => (length * Lengths) + (width * Widths);
}

/// <summary>The panels that a sewn half accepts when their long side lies one way.</summary>
/// <param name="LongSide">Which way.</param>
/// <param name="Length">The panel's longer side, from and to.</param>
/// <param name="Width">Its shorter side, from and to.</param>
/// <param name="Limits">What else must hold; usually nothing.</param>
public sealed record PanelRange(
    LongSide LongSide, (Length From, Length To) Length, (Length From, Length To) Width, ImmutableArray<SizeLimit> Limits)
{
    /// <summary>Whether there is any panel at all.</summary>
    public bool IsEmpty => Length.From > Length.To || Width.From > Width.To || Limits.Any(limit => limit.Of(Length.From, Width.From) > limit.Most);

    /// <summary>Whether a panel is one of them, to a millionth of a millimetre.</summary>
    public bool Holds(Length length, Length width) =>
        IsAtMost(Length.From, length) && IsAtMost(length, Length.To) && IsAtMost(Width.From, width) && IsAtMost(width, Width.To)
        && Limits.All(limit => IsAtMost(limit.Of(length, width), limit.Most));

    /// <summary>The range in whole steps of a ruler, never larger than it is.</summary>
    public PanelRange InSteps(Length step) => this with
    {
        Length = (RulerSteps.Up(Length.From, step), RulerSteps.Down(Length.To, step)),
        Width = (RulerSteps.Up(Width.From, step), RulerSteps.Down(Width.To, step)),
        Limits = [.. Limits.Select(limit => limit with { Most = RulerSteps.Down(limit.Most, step) })],
    };

    private static bool IsAtMost(Length one, Length other) => (one - other).Millimeters <= 1e-6;
}

/// <summary>Lengths in whole steps of a ruler.</summary>
public static class RulerSteps
{
    /// <summary>A part of a step that is round-off.</summary>
    private const double RoundOff = 1e-6;

    /// <summary>The finest step that is printed in the units of a job: 0.1 mm, or 1/16 in where only inches are printed.</summary>
    public static Length Of(PrintUnits units) => units == PrintUnits.Imperial ? UnitsNet.Length.FromInches(1.0 / 16) : UnitsNet.Length.FromMillimeters(0.1);

    /// <summary>The next step at or above a length.</summary>
    public static Length Up(Length length, Length step) => step * Math.Ceiling((length / step) - RoundOff);

    /// <summary>The next step at or below a length.</summary>
    public static Length Down(Length length, Length step) => step * Math.Floor((length / step) + RoundOff);
}
