using System.Collections.Immutable;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>A top as the tape found it: more measures than its shape needs, so that they check each other.</summary>
public sealed class MeasuredTop
{
    /// <summary>Describes a measured top.</summary>
    /// <param name="name">What the user calls it.</param>
    /// <param name="tape">The standard deviation of one reading; above zero.</param>
    /// <param name="bows">From forward to aft; at least two.</param>
    /// <param name="measures">
    /// Each kind at most once a bow, and enough to fix the shape: every chord, both stations of every bow but the first,
    /// and one diagonal of every bay.
    /// </param>
    /// <exception cref="ArgumentException">The measures are too few, doubled, or of a bow that there is not.</exception>
    public MeasuredTop(string name, Length tape, ImmutableArray<MeasuredBow> bows, ImmutableArray<TopMeasure> measures)
    {
        (Name, Tape, Bows, Measures) = (name, Require.Positive(tape), bows, measures);
        var isFixed = bows.Length >= 2
            && measures.All(measure => measure.Bow < bows.Length)
            && measures.DistinctBy(measure => (measure.Kind, measure.Bow)).Count() == measures.Length
            && Enumerable.Range(0, bows.Length).All(IsFixed);
        if (!isFixed)
        {
            throw new ArgumentException("The measures do not fix the top's shape.", nameof(measures));
        }
    }

    /// <summary>What the user calls it.</summary>
    public string Name { get; }

    /// <summary>The standard deviation of one reading.</summary>
    public Length Tape { get; }

    /// <summary>The bows, from forward to aft.</summary>
    public ImmutableArray<MeasuredBow> Bows { get; }

    /// <summary>What was measured.</summary>
    public ImmutableArray<TopMeasure> Measures { get; }

    /// <summary>A measure of a bow; null when it was not taken.</summary>
    public TopMeasure? Of(MeasureKind kind, int bow) => Measures.FirstOrDefault(measure => measure.Kind == kind && measure.Bow == bow);

    private bool IsFixed(int bow) => Of(MeasureKind.Chord, bow) is not null
        && (bow == 0
            || (Of(MeasureKind.Port, bow) is not null
                && Of(MeasureKind.Starboard, bow) is not null
                && (Of(MeasureKind.DiagonalFromPort, bow) ?? Of(MeasureKind.DiagonalFromStarboard, bow)) is not null));
}
