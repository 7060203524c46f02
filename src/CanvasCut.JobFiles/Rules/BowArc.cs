using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>The measures of a bow's arc, any of which may be missing.</summary>
internal readonly record struct BowArc(Length? Girth, Length? Chord, Length? Crown)
{
    private const double FlatMm = 1e-6;

    public static BowArc Of(JobValues values, string bow) =>
        new(values.Length($"{bow}.girth"), values.Length($"{bow}.chord"), values.Length($"{bow}.crown"));

    /// <summary>The arc of two of its measures, or null when there are not two; the measures must fit.</summary>
    public CircularArc? Arc() => (Girth?.Millimeters, Chord?.Millimeters, Crown?.Millimeters) switch
    {
        (_, { } chord, { } crown) => CircularArc.FromChordAndRise(chord, crown),
        ({ } girth, { } chord, null) => girth - chord < FlatMm ? CircularArc.FromChordAndRise(chord, 0) : CircularArc.FromGirthAndChord(girth, chord),
        ({ } girth, null, { } crown) => crown < FlatMm ? CircularArc.FromChordAndRise(girth, 0) : CircularArc.FromGirthAndRise(girth, crown),
        _ => null,
    };
}
