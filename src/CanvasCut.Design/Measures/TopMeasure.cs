using System.Collections.Immutable;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>One measure of a top, read once or several times, each time hooked anew.</summary>
public sealed class TopMeasure
{
    /// <summary>Describes a measure.</summary>
    /// <param name="kind">What it is taken between.</param>
    /// <param name="bow">The bow, counted from 0 at the forward one; for overall diagonals the last, for the whole top the first.</param>
    /// <param name="readings">At least one, none below zero.</param>
    /// <param name="form">How they were written; millimetres when left out.</param>
    /// <exception cref="ArgumentException">There is no reading, or one below zero.</exception>
    public TopMeasure(MeasureKind kind, int bow, ImmutableArray<Length> readings, LengthForm? form = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(bow);
        if (readings.IsDefaultOrEmpty || readings.Any(reading => reading < Length.Zero))
        {
            throw new ArgumentException("A measure has at least one reading, and none below zero.", nameof(readings));
        }

        (Kind, Bow, Readings, Form) = (kind, bow, readings, form ?? LengthForm.Millimetres);
    }

    /// <summary>What it is taken between.</summary>
    public MeasureKind Kind { get; }

    /// <summary>The bow, counted from 0.</summary>
    public int Bow { get; }

    /// <summary>The readings in the order they were taken.</summary>
    public ImmutableArray<Length> Readings { get; }

    /// <summary>How they were written.</summary>
    public LengthForm Form { get; }

    /// <summary>Their mean.</summary>
    public Length Mean => Length.FromMillimeters(Readings.Average(reading => reading.Millimeters));
}
