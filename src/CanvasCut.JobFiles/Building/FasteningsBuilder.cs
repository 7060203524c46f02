using CanvasCut.Design;

namespace CanvasCut.JobFiles;

/// <summary>Makes what holds the carrier.</summary>
internal static class FasteningsBuilder
{
    public static Fastenings Build(GivenValues given) => new(Zipper(given), Pocket(given), WeatherStrip(given), Chafe(given), MountBuilder.Build(given));

    private static ZipperSpec Zipper(GivenValues given) => new(
        new(given.Length("zipper.chain"), given.Length("zipper.overall_width")),
        given.Word<ZipperKind>("zipper.kind"),
        given.Length("zipper.setback"),
        given.Length("zipper.reveal"),
        given.Values.Lengths("zipper.stock")!.Value,
        given.Length("zipper.cap_turn"))
    {
        Start = given.Word<Side>("zipper.start"),
        StartSetback = given.Values.Length("zipper.start_setback"),
    };

    private static PocketSpec Pocket(GivenValues given) => new(
        given.Values.Length("pocket.leg"),
        given.Values.Length("pocket.ease") ?? UnitsNet.Length.Zero,
        given.Hem("pocket.mouth"),
        given.Length("pocket.seam_allowance"),
        given.Quantity<bool>("pocket.over_zipper"));

    private static WeatherStripSpec WeatherStrip(GivenValues given) => new(
        [.. given.Values.Words("weather_strip.edges")!.Value.Select(GivenValues.WordOf<Side>)],
        given.Length("weather_strip.overlap"),
        given.Length("weather_strip.seam_allowance"),
        given.Hem("weather_strip.hem"),
        given.Length("weather_strip.overhang"))
    {
        SewnTo = given.SideWords<StripGround>("weather_strip.sewn_to"),
        Held = given.Word<StripHold>("weather_strip.held"),
        Pitch = given.Length("weather_strip.pitch"),
        Square = given.Length("weather_strip.square"),
        Rod = given.Length("weather_strip.rod"),
    };

    private static ChafeSpec Chafe(GivenValues given) => new(given.Length("chafe.width_beyond_tube"), given.Length("chafe.turn_under"));
}
