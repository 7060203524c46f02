using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>The cloth from one bow to the next, with nothing under it.</summary>
/// <param name="Bow">The bow at its forward end, counted from 0.</param>
/// <param name="From">The station of its forward end.</param>
/// <param name="Span">Along the cloth to the next bow.</param>
/// <param name="Sag">How far its middle hangs below a straight line.</param>
/// <param name="IsMeasured">Whether the sag was measured, and so is part of the surface; else it is assumed.</param>
internal sealed record ClothSpan(int Bow, Length From, Length Span, Length Sag, bool IsMeasured)
{
    /// <summary>The radius to which it hangs; null without sag. R = L²/8s + s/2 for the straight distance L.</summary>
    public Length? Radius => Sag > Length.Zero ? Length.FromMillimeters(Geometry.CircularArc.FromGirthAndRise(Span.Millimeters, Sag.Millimeters).RadiusMm) : null;

    /// <summary>The spans of a top, forward to aft.</summary>
    public static IEnumerable<ClothSpan> Of(CarrierJob job) => job.Top.Bows.Zip(job.Top.Bows.Skip(1)).Select((pair, index) =>
    {
        var (span, isMeasured) = (pair.Second.Station - pair.First.Station, pair.First.SagAft.Millimeters > 0);
        return new ClothSpan(index, pair.First.Station, span, isMeasured ? pair.First.SagAft : span * job.Limits.Shape.ClothSag, isMeasured);
    });
}
