using System.Collections.Immutable;

namespace CanvasCut.Geometry;

/// <summary>A thin elastic strip, held at both ends, that lies on rests by its own weight and its own stiffness.</summary>
/// <remarks>
/// <para>
/// Lengths run along the straight line between the two holds, heights square to it, both in millimetres. The ends are
/// held there and free to turn. A rest can push the strip up but not pull it down, so the strip may lift off; which rests
/// it presses on is found, not assumed. Without weight the shape does not depend on the stiffness.
/// </para>
/// <para>Slopes are taken as small. At a rise of a tenth of the length this gives a curvature 3 % too sharp, on the safe side.</para>
/// </remarks>
public sealed class ElasticStrip
{
    private readonly ImmutableArray<BeamSpan> _spans;

    private ElasticStrip(double lengthMm, ImmutableArray<BeamSpan> spans, ImmutableArray<StripContact> contacts) =>
        (LengthMm, _spans, Contacts) = (lengthMm, spans, contacts);

    /// <summary>From hold to hold in a straight line.</summary>
    public double LengthMm { get; }

    /// <summary>The rests it presses on, in order.</summary>
    public ImmutableArray<StripContact> Contacts { get; }

    /// <summary>How much longer the strip is, from hold to hold, than the straight line.</summary>
    public double ExtraLengthMm => _spans.Sum(span => span.ExtraLengthMm);

    /// <summary>The smallest radius anywhere, and where; infinite for a straight strip.</summary>
    public (double RadiusMm, double AtMm) Sharpest
    {
        get
        {
            var places = _spans.SelectMany(span => span.Crest is { } crest ? new[] { span.FromMm, span.FromMm + crest } : [span.FromMm]);
            var at = places.MaxBy(place => Math.Abs(CurvatureAt(place)));
            return (1 / Math.Abs(CurvatureAt(at)), at);
        }
    }

    /// <summary>Lays a strip.</summary>
    /// <param name="lengthMm">From hold to hold; above zero.</param>
    /// <param name="rests">What lies under it, each farther along than the one before and between the holds.</param>
    /// <param name="weightPerMm3">Its weight a length divided by its stiffness EI; zero or more.</param>
    /// <exception cref="ArgumentException">The rests are out of order or not between the holds.</exception>
    public static ElasticStrip Over(double lengthMm, ImmutableArray<StripRest> rests, double weightPerMm3)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(lengthMm);
        ArgumentOutOfRangeException.ThrowIfNegative(weightPerMm3);
        var before = 0.0;
        foreach (var rest in rests)
        {
            if (rest.AtMm <= before || rest.AtMm >= lengthMm)
            {
                throw new ArgumentException("The rests must lie between the holds, in order.", nameof(rests));
            }

            before = rest.AtMm;
        }

        var touched = StripContactSearch.Find(lengthMm, rests, weightPerMm3);
        var spans = StripContactSearch.Spans(lengthMm, rests, touched, weightPerMm3);
        var pushes = ContinuousBeam.Pushes(spans);
        return new(lengthMm, spans, [.. touched.Select((rest, i) =>
            new StripContact(rest, rests[rest].AtMm, rests[rest].HeightMm, spans[i + 1].Curvatures.Start, pushes[i]))]);
    }

    /// <summary>The strip's height above the line between the holds.</summary>
    public double HeightAt(double atMm)
    {
        var span = SpanAt(atMm);
        return span.HeightAt(atMm - span.FromMm);
    }

    /// <summary>The strip's curvature; above zero where it hangs, below where it bends over something.</summary>
    public double CurvatureAt(double atMm)
    {
        var span = SpanAt(atMm);
        return span.CurvatureAt(atMm - span.FromMm);
    }

    private BeamSpan SpanAt(double atMm) => _spans.LastOrDefault(span => span.FromMm <= atMm, _spans[0]);
}
