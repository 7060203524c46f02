using CanvasCut.Geometry;

namespace CanvasCut.Design;

/// <summary>The cloth over a bow, port and starboard of the centreline, level on the centreline.</summary>
/// <param name="Port">The arc whose one half is the port side, in millimetres.</param>
/// <param name="Starboard">The arc whose one half is the starboard side; the same arc where the bow is even.</param>
public sealed record BowHalves(CircularArc Port, CircularArc Starboard)
{
    /// <summary>Two halves alike.</summary>
    public static BowHalves Even(CircularArc arc) => new(arc, arc);

    /// <summary>One arc in the place of both: the two half chords put together, and the mean of both crowns.</summary>
    public CircularArc Whole => Port == Starboard
        ? Port
        : CircularArc.FromChordAndRise((Port.ChordMm + Starboard.ChordMm) / 2, (Port.RiseMm + Starboard.RiseMm) / 2);
}
