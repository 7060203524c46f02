using CanvasCut.Design;
using CanvasCut.Patterns;

namespace CanvasCut.Job;

/// <summary>Writes what is sewn to the top, for a later refit.</summary>
/// <remarks>Its numbers are not rounded, so that a refit draws what is sewn to the last byte as it was drawn.</remarks>
internal static class SewnJson
{
    public static SewnPart Of(PatternSet patterns)
    {
        var sewn = SewnHalf.Of(patterns.Job, patterns.Mounted);
        return new(
            Carrier(sewn.Carrier),
            Panel(sewn.Carrier.Panel),
            Zipper(sewn),
            Pocket(sewn),
            Strip(sewn.Fastenings.WeatherStrip),
            new(sewn.Fastenings.Chafe.WidthBeyondTube.Millimeters, sewn.Fastenings.Chafe.TurnUnder.Millimeters));
    }

    private static SewnCarrierPart Carrier(SewnCarrier carrier) => new(
        carrier.Middle.Station.Millimeters, carrier.Middle.Offset.Millimeters, carrier.Athwart.Millimeters, carrier.ForeAft.Millimeters);

    private static SewnPanelPart Panel(SewnPanel panel) => new(
        panel.LongSide, panel.Athwart.Millimeters, panel.ForeAft.Millimeters, panel.Thickness.Millimeters);

    private static SewnZipperPart Zipper(SewnHalf sewn) => new(
        sewn.Zipper.Kind,
        sewn.Fastenings.Zipper.Gauge.Chain.Millimeters,
        sewn.Fastenings.Zipper.Gauge.OverallWidth.Millimeters,
        sewn.Fastenings.Zipper.Reveal.Millimeters,
        sewn.Zipper.Run.Millimeters,
        sewn.Zipper.Setback.Millimeters,
        sewn.Zipper.Buy.Millimeters,
        sewn.Fastenings.Zipper.Start,
        sewn.Zipper.StartSetback.Millimeters);

    private static SewnPocketPart Pocket(SewnHalf sewn) => new(
        [.. sewn.Legs.Select(leg => leg.Millimeters)],
        sewn.Fastenings.Pocket.Ease.Millimeters,
        Hem(sewn.Fastenings.Pocket.Mouth),
        sewn.Fastenings.Pocket.SeamAllowance.Millimeters,
        sewn.Fastenings.Pocket.OverZipper);

    private static SewnStripPart Strip(WeatherStripSpec strip) => new(
        [.. strip.Edges],
        strip.Overlap.Millimeters,
        strip.SeamAllowance.Millimeters,
        Hem(strip.Hem),
        strip.Overhang.Millimeters,
        strip.SeamClearance?.Millimeters,
        [.. strip.Edges.Where(edge => strip.SewnTo[edge] == StripGround.Carrier)],
        strip.Held == StripHold.Nothing ? null : new(strip.Held, strip.Pitch.Millimeters, strip.Square.Millimeters, strip.Rod.Millimeters));

    private static HemPart Hem(Hem hem) => new(hem.TurnUnder.Millimeters, hem.Width.Millimeters);
}
