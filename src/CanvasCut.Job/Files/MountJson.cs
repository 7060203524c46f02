using CanvasCut.Patterns;

namespace CanvasCut.Job;

/// <summary>What holds the edges in the place of zippers, for programs; docs/results.md tells the form.</summary>
internal static class MountJson
{
    /// <summary>What stands under "mounts" in results.json.</summary>
    public static IEnumerable<object> Of(IEnumerable<FlapPlace> flaps) => flaps.Select(flap => new
    {
        edge = Words.Id(flap.Side),
        kind = Word(flap.Kind),
        run_mm = JsonText.Mm(flap.Run.Millimeters),
        setback_mm = JsonText.Mm(flap.Setback.Millimeters),
        count = flap.Fasteners?.Count,
        pitch_mm = flap.Fasteners is { } row ? JsonText.Mm(row.Pitch.Millimeters) : (double?)null,
        on_carrier = flap.CentresOnCarrier.Select(Place),
        on_top = flap.CentresOnTop.Select(Place),
    });

    /// <summary>A kind as a job file writes it.</summary>
    public static string Word(Design.MountKind kind) => kind switch
    {
        Design.MountKind.Zipper => "zipper",
        Design.MountKind.Snaps => "snaps",
        Design.MountKind.Twist => "twist",
        Design.MountKind.HookAndLoop => "hook-and-loop",
        _ => "lacing",
    };

    private static object Place(Geometry.Point point)
    {
        var place = Plan.PlaceOf(point);
        return new { station_mm = JsonText.Mm(place.Station.Millimeters), offset_mm = JsonText.Mm(place.Offset.Millimeters) };
    }
}
