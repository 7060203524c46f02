using System.Collections.Immutable;
using CanvasCut.Patterns;
using CanvasCut.Takeoff;

namespace CanvasCut.Job;

/// <summary>What holds the edges in the place of zippers, for programs; docs/results.md tells the form.</summary>
internal static class MountJson
{
    /// <summary>What stands under "mounts" in results.json.</summary>
    public static ImmutableArray<MountPart> Of(IEnumerable<FlapPlace> flaps) => [.. flaps.Select(flap => new MountPart(
        flap.Side,
        flap.Kind,
        JsonText.Mm(flap.Run.Millimeters),
        JsonText.Mm(flap.Setback.Millimeters),
        flap.Fasteners?.Count,
        flap.Fasteners is { } row ? JsonText.Mm(row.Pitch.Millimeters) : null,
        [.. flap.CentresOnCarrier.Select(Place)],
        [.. flap.CentresOnTop.Select(Place)],
        flap is { Lugs: { } lugs, Parts.Sleeve: { } sleeve } ? Rod(flap, lugs, sleeve) : null))];

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

    private static RodPart Rod(FlapPlace flap, LugRow lugs, Design.SleeveSpec sleeve) => new(
        JsonText.Mm(sleeve.Rod.Millimeters),
        JsonText.Mm(RodOrder.LengthOf(flap).Millimeters),
        JsonText.Mm(sleeve.ToRod.Millimeters),
        lugs.OnCarrier,
        lugs.OnTop,
        JsonText.Mm(lugs.Pitch.Millimeters),
        JsonText.Mm(lugs.Gap.Millimeters));

    private static PlacePart Place(Geometry.Point point)
    {
        var place = Plan.PlaceOf(point);
        return new(JsonText.Mm(place.Station.Millimeters), JsonText.Mm(place.Offset.Millimeters));
    }
}
