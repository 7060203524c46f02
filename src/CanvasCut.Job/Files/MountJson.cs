using CanvasCut.Patterns;
using CanvasCut.Takeoff;

namespace CanvasCut.Job;

/// <summary>What holds the edges in the place of zippers, for programs; docs/results.md tells the form.</summary>
internal static class MountJson
{
    /// <summary>What stands under "mounts" in results.json.</summary>
    public static IEnumerable<object> Of(IEnumerable<FlapPlace> flaps) => flaps.Select(flap =>
    {
        var entry = new Dictionary<string, object?>
        {
            ["edge"] = Words.Id(flap.Side),
            ["kind"] = Word(flap.Kind),
            ["run_mm"] = JsonText.Mm(flap.Run.Millimeters),
            ["setback_mm"] = JsonText.Mm(flap.Setback.Millimeters),
            ["count"] = flap.Fasteners?.Count,
            ["pitch_mm"] = flap.Fasteners is { } row ? JsonText.Mm(row.Pitch.Millimeters) : null,
            ["on_carrier"] = flap.CentresOnCarrier.Select(Place),
            ["on_top"] = flap.CentresOnTop.Select(Place),
        };
        if (flap is { Lugs: { } lugs, Parts.Sleeve: { } sleeve })
        {
            entry["rod"] = Rod(flap, lugs, sleeve);
        }

        return entry;
    });

    /// <summary>A kind as a job file writes it.</summary>
    public static string Word(Design.MountKind kind) => kind switch
    {
        Design.MountKind.Zipper => "zipper",
        Design.MountKind.Snaps => "snaps",
        Design.MountKind.Twist => "twist",
        Design.MountKind.HookAndLoop => "hook-and-loop",
        Design.MountKind.Sleeve => "sleeve",
        _ => "lacing",
    };

    private static object Rod(FlapPlace flap, LugRow lugs, Design.SleeveSpec sleeve) => new
    {
        diameter_mm = JsonText.Mm(sleeve.Rod.Millimeters),
        length_mm = JsonText.Mm(RodOrder.LengthOf(flap).Millimeters),
        from_edge_mm = JsonText.Mm(sleeve.ToRod.Millimeters),
        lugs_on_carrier = lugs.OnCarrier,
        lugs_on_top = lugs.OnTop,
        lug_pitch_mm = JsonText.Mm(lugs.Pitch.Millimeters),
        gap_mm = JsonText.Mm(lugs.Gap.Millimeters),
    };

    private static object Place(Geometry.Point point)
    {
        var place = Plan.PlaceOf(point);
        return new { station_mm = JsonText.Mm(place.Station.Millimeters), offset_mm = JsonText.Mm(place.Offset.Millimeters) };
    }
}
