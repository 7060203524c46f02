using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Measuring;

/// <summary>One reading of the tape beside what all measures together make it.</summary>
/// <param name="Measure">The measure it belongs to.</param>
/// <param name="Number">Which reading of that measure, counted from 1.</param>
/// <param name="Adjusted">What the measures together make it.</param>
/// <param name="Redundancy">Which part of a slip in it shows in its own residual: 0 when nothing checks it, up to 1.</param>
/// <param name="Normalised">The residual over its own standard deviation; 0 when nothing checks it.</param>
/// <param name="Seen">The slip that is found 95 times in 100; null when nothing checks it.</param>
public sealed record AdjustedReading(TopMeasure Measure, int Number, Length Adjusted, double Redundancy, double Normalised, Length? Seen)
{
    /// <summary>What was read.</summary>
    public Length Read => Measure.Readings[Number - 1];

    /// <summary>What is to be added to the reading.</summary>
    public Length Residual => Adjusted - Read;

    /// <summary>Whether other readings check it.</summary>
    public bool IsChecked => Seen is not null;

    /// <summary>What all others make it; the adjusted value when nothing checks it.</summary>
    public Length ByOthers => IsChecked ? Read + (Residual / Redundancy) : Adjusted;
}
