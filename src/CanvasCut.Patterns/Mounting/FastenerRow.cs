using System.Collections.Immutable;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>Fasteners along a flap, all spaces equal.</summary>
/// <param name="Count">How many; at least two.</param>
/// <param name="Pitch">From one centre to the next.</param>
/// <param name="Between">From the first centre to the last.</param>
/// <remarks>
/// The first and the last lie at the end distance. Between them there are as few spaces as keep to the pitch that was
/// asked for: spaces = (run - 2 x end distance) / pitch, rounded up.
/// </remarks>
public sealed record FastenerRow(int Count, Length Pitch, Length Between)
{
    /// <summary>So that a length that is a whole number of pitches but for round-off has no space more.</summary>
    private const double RoundOff = 1e-9;

    /// <summary>From the middle of the flap, port negative, port first.</summary>
    public ImmutableArray<Length> Offsets => [.. Enumerable.Range(0, Count).Select(i => (Pitch * i) - (Between / 2))];

    /// <summary>The row on a flap.</summary>
    /// <param name="run">The flap's length.</param>
    /// <param name="spacing">How they are spread.</param>
    /// <exception cref="ArgumentException">The end distances leave nothing.</exception>
    public static FastenerRow Along(Length run, FastenerSpacing spacing)
    {
        var between = run - (spacing.EndDistance * 2);
        if (between.Millimeters <= 0 || spacing.Pitch.Millimeters <= 0)
        {
            throw new ArgumentException("The end distances leave no room for a second fastener.", nameof(run));
        }

        var spaces = Math.Max(1, (int)Math.Ceiling((between / spacing.Pitch) - RoundOff));
        return new(spaces + 1, between / spaces, between);
    }
}
