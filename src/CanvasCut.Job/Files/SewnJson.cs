using CanvasCut.Design;
using CanvasCut.Patterns;

namespace CanvasCut.Job;

/// <summary>Writes what is sewn to the top, for a later refit.</summary>
/// <remarks>Its numbers are not rounded, so that a refit draws what is sewn to the last byte as it was drawn.</remarks>
internal static class SewnJson
{
    public static object Root(PatternSet patterns)
    {
        var sewn = SewnHalf.Of(patterns.Job, patterns.Mounted);
        return new
        {
            carrier = Carrier(sewn.Carrier),
            panel = Panel(sewn.Carrier.Panel),
            zipper = Zipper(sewn),
            pocket = Pocket(sewn),
            weather_strip = Strip(sewn.Fastenings.WeatherStrip),
            chafe = new { width_beyond_tube_mm = sewn.Fastenings.Chafe.WidthBeyondTube.Millimeters, turn_under_mm = sewn.Fastenings.Chafe.TurnUnder.Millimeters },
        };
    }

    private static object Carrier(SewnCarrier carrier) => new
    {
        station_mm = carrier.Middle.Station.Millimeters,
        offset_mm = carrier.Middle.Offset.Millimeters,
        athwart_mm = carrier.Athwart.Millimeters,
        fore_aft_mm = carrier.ForeAft.Millimeters,
    };

    private static object Panel(SewnPanel panel) => new
    {
        long_side = panel.LongSide == LongSide.Athwart ? "athwart" : "fore-aft",
        athwart_mm = panel.Athwart.Millimeters,
        fore_aft_mm = panel.ForeAft.Millimeters,
        thickness_mm = panel.Thickness.Millimeters,
    };

    private static object Zipper(SewnHalf sewn) => new
    {
        kind = sewn.Zipper.Kind == ZipperKind.Separating ? "separating" : "continuous",
        chain_mm = sewn.Fastenings.Zipper.Gauge.Chain.Millimeters,
        overall_width_mm = sewn.Fastenings.Zipper.Gauge.OverallWidth.Millimeters,
        reveal_mm = sewn.Fastenings.Zipper.Reveal.Millimeters,
        run_mm = sewn.Zipper.Run.Millimeters,
        setback_mm = sewn.Zipper.Setback.Millimeters,
        start = Words.Id(sewn.Fastenings.Zipper.Start),
        start_setback_mm = sewn.Zipper.StartSetback.Millimeters,
        buy_mm = sewn.Zipper.Buy.Millimeters,
    };

    private static object Pocket(SewnHalf sewn) => new
    {
        legs_mm = sewn.Legs.Select(leg => leg.Millimeters),
        ease_mm = sewn.Fastenings.Pocket.Ease.Millimeters,
        mouth = Hem(sewn.Fastenings.Pocket.Mouth),
        seam_allowance_mm = sewn.Fastenings.Pocket.SeamAllowance.Millimeters,
        over_zipper = sewn.Fastenings.Pocket.OverZipper,
    };

    private static object Strip(WeatherStripSpec strip) => new
    {
        edges = strip.Edges.Select(Words.Id),
        overlap_mm = strip.Overlap.Millimeters,
        seam_allowance_mm = strip.SeamAllowance.Millimeters,
        hem = Hem(strip.Hem),
        overhang_mm = strip.Overhang.Millimeters,
        seam_clearance_mm = strip.SeamClearance?.Millimeters,
    };

    private static object Hem(Hem hem) => new { turn_under_mm = hem.TurnUnder.Millimeters, width_mm = hem.Width.Millimeters };
}
