using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>Where a tube that is no bow begins and ends.</summary>
internal static class TubeEnds
{
    /// <summary>
    /// Its ends: from the port edge to the starboard edge by their stations, from the forward edge to the aft edge by their offsets, or by both
    /// as they are given; null when neither is given, or the top has no edge there.
    /// </summary>
    public static (TopPlace From, TopPlace To)? Of(JobValues values, string path, TopOutline outline) =>
        (values.Pair($"{path}.station"), values.Pair($"{path}.offset")) switch
        {
            ({ } station, { } offset) => (new(station.From, offset.From), new(station.To, offset.To)),
            ({ } station, null) when outline.Across(-station.From.Millimeters) is { } from && outline.Across(-station.To.Millimeters) is { } to =>
                (new(station.From, Mm(from.From.X)), new(station.To, Mm(to.To.X))),
            (null, { } offset) when outline.Along(offset.From.Millimeters) is { } from && outline.Along(offset.To.Millimeters) is { } to =>
                (new(Mm(-from.To.Y), offset.From), new(Mm(-to.From.Y), offset.To)),
            _ => null,
        };

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
