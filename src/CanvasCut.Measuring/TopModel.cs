using System.Collections.Immutable;
using CanvasCut.Design;
using MathNet.Numerics.LinearAlgebra;

namespace CanvasCut.Measuring;

/// <summary>What a tape would read on a top of which the places of the bows' ends and the rises of their arcs are known.</summary>
/// <remarks>
/// Unknowns, in millimetres: offset and station of both ends of every bow, and for a bow with girth or crown one more. The
/// forward bow lies on the line of station 0 with its port end at offset 0, which is where the frame of reference is held.
/// With girth and crown both, the one more is the rise of a circular arc, g = 4R·atan(2s/c), R = c²/(8s) + s/2; with one of
/// them it is that measure itself. Stations on the centreline share one unknown more, the first bow's distance from the top's
/// forward edge; from there on they run straight, or in the sag that was measured, from the cloth over one bow to the cloth
/// over the next. The top's own length and width are unknowns for themselves. Heights are taken as given: an error in them
/// has hardly any weight.
/// </remarks>
internal sealed class TopModel
{
    private const int PerBow = 4;
    private const double StepMm = 0.01;
    private const double FlatPart = 1e-9;

    private readonly MeasuredTop _top;
    private readonly int[] _extraAt;
    private readonly int _edgeAt;
    private readonly int _lengthAt;
    private readonly int _widthAt;

    public TopModel(MeasuredTop top)
    {
        _top = top;
        var next = 1 + (PerBow * (top.Bows.Length - 1));
        _extraAt = [.. Enumerable.Range(0, top.Bows.Length).Select(bow => ExtraOf(bow) is null ? -1 : next++)];
        _edgeAt = top.Measures.Any(measure => measure.Kind == MeasureKind.Station) ? next++ : -1;
        _lengthAt = top.Of(MeasureKind.TopLength, 0) is null ? -1 : next++;
        _widthAt = top.Of(MeasureKind.TopWidth, 0) is null ? -1 : next++;
        Unknowns = next;
    }

    /// <summary>How many unknowns there are.</summary>
    public int Unknowns { get; }

    /// <summary>A rectangle by the means of chords and stations, to begin from.</summary>
    public Vector<double> Start()
    {
        var start = Vector<double>.Build.Dense(Unknowns);
        var middle = MeanMm(MeasureKind.Chord, 0) / 2;
        start[0] = 2 * middle;
        for (var bow = 0; bow < _top.Bows.Length; bow++)
        {
            if (bow > 0)
            {
                var half = MeanMm(MeasureKind.Chord, bow) / 2;
                double[] ends = [middle - half, MeanMm(MeasureKind.Port, bow), middle + half, MeanMm(MeasureKind.Starboard, bow)];
                start.SetSubVector(FirstOf(bow), PerBow, Vector<double>.Build.Dense(ends));
            }

            if (ExtraOf(bow) is { } extra)
            {
                start[_extraAt[bow]] = extra.Mean.Millimeters;
            }
        }

        StartWhole(start);
        return start;
    }

    /// <summary>The station of a bow on the centreline, along the cloth from the top's forward edge; null when none was measured.</summary>
    /// <remarks>A first line without a tube is the top's forward edge itself.</remarks>
    public double? StationMm(Vector<double> unknowns, int bow) =>
        _edgeAt >= 0 ? unknowns[_edgeAt] + AlongMm(unknowns, bow)
        : _top.Bows[0].Middle.IsBare ? AlongMm(unknowns, bow)
        : null;

    /// <summary>What each of the top's measures would read, in their order.</summary>
    public Vector<double> Values(Vector<double> unknowns) => Vector<double>.Build.Dense([.. _top.Measures.Select(measure => ValueMm(measure, unknowns))]);

    /// <summary>How each measure changes with each unknown, by central differences.</summary>
    public Matrix<double> Slopes(Vector<double> unknowns) => Matrix<double>.Build.DenseOfColumnVectors(Enumerable.Range(0, Unknowns).Select(i =>
    {
        var (more, less) = (unknowns.Clone(), unknowns.Clone());
        more[i] += StepMm;
        less[i] -= StepMm;
        return (Values(more) - Values(less)) / (2 * StepMm);
    }));

    /// <summary>Where an end of a bow lies: offset from the port end of the forward bow, station, height.</summary>
    public ImmutableArray<double> End(Vector<double> unknowns, int bow, bool isPort)
    {
        var height = _top.Bows[bow].Height.Millimeters;
        var at = FirstOf(bow) + (isPort ? 0 : 2);
        return bow > 0 ? [unknowns[at], unknowns[at + 1], height] : isPort ? [0, 0, height] : [unknowns[0], 0, height];
    }

    private double ValueMm(TopMeasure measure, Vector<double> unknowns)
    {
        var (bow, last) = (measure.Bow, _top.Bows.Length - 1);
        return measure.Kind switch
        {
            MeasureKind.Chord => Between(unknowns, (bow, true), (bow, false)),
            MeasureKind.Girth when HasArc(bow) => GirthMm(Between(unknowns, (bow, true), (bow, false)), unknowns[_extraAt[bow]]),
            MeasureKind.Girth or MeasureKind.Crown => unknowns[_extraAt[bow]],
            MeasureKind.Port => Enumerable.Range(1, bow).Sum(i => Between(unknowns, (i - 1, true), (i, true))),
            MeasureKind.Starboard => Enumerable.Range(1, bow).Sum(i => Between(unknowns, (i - 1, false), (i, false))),
            MeasureKind.DiagonalFromPort => Between(unknowns, (bow - 1, true), (bow, false)),
            MeasureKind.DiagonalFromStarboard => Between(unknowns, (bow - 1, false), (bow, true)),
            MeasureKind.Station => StationMm(unknowns, bow)!.Value,
            MeasureKind.TopLength => unknowns[_lengthAt],
            MeasureKind.TopWidth => unknowns[_widthAt],
            MeasureKind.OverallFromPort => Between(unknowns, (0, true), (last, false)),
            _ => Between(unknowns, (0, false), (last, true)),
        };
    }

    private double Between(Vector<double> unknowns, (int Bow, bool IsPort) from, (int Bow, bool IsPort) to) =>
        Apart(End(unknowns, from.Bow, from.IsPort), End(unknowns, to.Bow, to.IsPort));

    private static double Apart(ImmutableArray<double> one, ImmutableArray<double> other) => Math.Sqrt(one.Zip(other, (a, b) => (a - b) * (a - b)).Sum());

    private void StartWhole(Vector<double> start)
    {
        if (_top.Measures.FirstOrDefault(measure => measure.Kind == MeasureKind.Station) is { } station)
        {
            start[_edgeAt] = station.Mean.Millimeters - AlongMm(start, station.Bow);
        }

        foreach (var (at, kind) in new[] { (_lengthAt, MeasureKind.TopLength), (_widthAt, MeasureKind.TopWidth) }.Where(each => each.Item1 >= 0))
        {
            start[at] = MeanMm(kind, 0);
        }
    }

    /// <summary>Along the cloth on the centreline, from the first bow to another.</summary>
    private double AlongMm(Vector<double> unknowns, int bow) => Enumerable.Range(1, bow).Sum(i =>
        GirthMm(Apart(Middle(unknowns, i - 1), Middle(unknowns, i)), _top.Bows[i - 1].Middle.SagAft?.Value.Millimeters ?? 0));

    private ImmutableArray<double> Middle(Vector<double> unknowns, int bow)
    {
        var (port, starboard) = (End(unknowns, bow, isPort: true), End(unknowns, bow, isPort: false));
        return [(port[0] + starboard[0]) / 2, (port[1] + starboard[1]) / 2, _top.Bows[bow].Middle.Cloth?.Millimeters ?? port[2]];
    }

    /// <summary>Even in the rise, so that a flat bow may come out a little hollow on the way.</summary>
    private static double GirthMm(double chordMm, double riseMm) => Math.Abs(riseMm) <= FlatPart * chordMm
        ? chordMm
        : ((chordMm * chordMm / riseMm) + (4 * riseMm)) / 2 * Math.Atan(2 * riseMm / chordMm);

    private bool HasArc(int bow) => _top.Of(MeasureKind.Crown, bow) is not null;

    private TopMeasure? ExtraOf(int bow) => _top.Of(MeasureKind.Crown, bow) ?? _top.Of(MeasureKind.Girth, bow);

    private double MeanMm(MeasureKind kind, int bow) => _top.Of(kind, bow)!.Mean.Millimeters;

    private static int FirstOf(int bow) => 1 + (PerBow * (bow - 1));
}
