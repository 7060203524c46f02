using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>The measures of a bow's arc, any of which may be missing.</summary>
/// <param name="Girth">From end to end; the sum of the halves where they were measured apart.</param>
/// <param name="Chord">From end to end.</param>
/// <param name="Crown">In the middle; the mean of the halves where they were measured apart.</param>
/// <param name="Port">What was measured of the port half alone.</param>
/// <param name="Starboard">What was measured of the starboard half alone.</param>
internal readonly record struct BowArc(Length? Girth, Length? Chord, Length? Crown, HalfMeasures Port, HalfMeasures Starboard)
{
    private const double FlatMm = 1e-6;

    public static BowArc Of(JobValues values, string bow)
    {
        var (port, starboard) = (HalfMeasures.Of(values, bow, "port"), HalfMeasures.Of(values, bow, "starboard"));
        return new(
            values.Length($"{bow}.girth") ?? (port.Girth + starboard.Girth),
            values.Length($"{bow}.chord"),
            values.Length($"{bow}.crown") ?? ((port.Crown + starboard.Crown) / 2),
            port,
            starboard);
    }

    /// <summary>The arc of two of its measures, or null when there are not two; the measures must fit.</summary>
    public CircularArc? Arc() => (Girth?.Millimeters, Chord?.Millimeters, Crown?.Millimeters) switch
    {
        (_, { } chord, { } crown) => CircularArc.FromChordAndRise(chord, crown),
        ({ } girth, { } chord, null) => girth - chord < FlatMm ? CircularArc.FromChordAndRise(chord, 0) : CircularArc.FromGirthAndChord(girth, chord),
        ({ } girth, null, { } crown) => Rising(girth, crown),
        _ => null,
    };

    /// <summary>The arcs of both halves, or null when there are not measures enough; the measures must fit.</summary>
    public BowHalves? Halves() => Arc() is { } whole ? new(Half(whole, Port), Half(whole, Starboard)) : null;

    private CircularArc Half(CircularArc whole, HalfMeasures half) => (half.Girth?.Millimeters, half.Crown?.Millimeters) switch
    {
        (null, null) => whole,
        ({ } girth, var crown) => Rising(2 * girth, crown ?? whole.RiseMm),
        (null, { } crown) => Chord is null ? Rising(whole.GirthMm, crown) : CircularArc.FromChordAndRise(whole.ChordMm, crown),
    };

    private static CircularArc Rising(double girthMm, double crownMm) =>
        crownMm < FlatMm ? CircularArc.FromChordAndRise(girthMm, 0) : CircularArc.FromGirthAndRise(girthMm, crownMm);
}

/// <summary>What was measured of one half of a bow.</summary>
/// <param name="Girth">From the centreline to the end.</param>
/// <param name="Crown">From the level of the end up to the cloth on the centreline.</param>
internal readonly record struct HalfMeasures(Length? Girth, Length? Crown)
{
    public static HalfMeasures Of(JobValues values, string bow, string hand) =>
        new(values.Length($"{bow}.girth_{hand}"), values.Length($"{bow}.crown_{hand}"));
}
