namespace CanvasCut.Geometry;

/// <summary>A circular arc, known by its chord (straight across) and its rise (the middle's height above the chord).</summary>
/// <remarks>
/// R = c²/(8s) + s/2 and girth = 2R·asin(c/2R), or 2R·(π − asin(c/2R)) for an arc above the half circle.
/// A rise of zero is a straight line with an endless radius.
/// </remarks>
public sealed record CircularArc
{
    private const double StraightRatio = 1e-9;

    private CircularArc(double chordMm, double riseMm) => (ChordMm, RiseMm) = (chordMm, riseMm);

    /// <summary>Straight from end to end; above zero.</summary>
    public double ChordMm { get; }

    /// <summary>The middle's height above the chord; zero or more.</summary>
    public double RiseMm { get; }

    /// <summary>The radius; infinite when straight.</summary>
    public double RadiusMm => RiseMm <= StraightRatio * ChordMm ? double.PositiveInfinity : ((ChordMm * ChordMm / RiseMm) + (4 * RiseMm)) / 8;

    /// <summary>The length along the arc.</summary>
    public double GirthMm => double.IsPositiveInfinity(RadiusMm) ? ChordMm : Math.Max(ChordMm, 4 * RadiusMm * Math.Atan(2 * RiseMm / ChordMm));

    /// <summary>The arc with this chord and rise.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The chord is not above zero or the rise is below it.</exception>
    public static CircularArc FromChordAndRise(double chordMm, double riseMm)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(chordMm);
        ArgumentOutOfRangeException.ThrowIfNegative(riseMm);
        return new(chordMm, riseMm);
    }

    /// <summary>The arc with this girth and chord.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The chord is not above zero or longer than the girth.</exception>
    public static CircularArc FromGirthAndChord(double girthMm, double chordMm)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(chordMm);
        ArgumentOutOfRangeException.ThrowIfLessThan(girthMm, chordMm);

        // The rise of an arc on a given chord is below half the girth, and the girth grows with the rise.
        return new(chordMm, Bisection.Root(rise => new CircularArc(chordMm, rise).GirthMm - girthMm, 0, girthMm / 2));
    }

    /// <summary>The arc with this girth and rise, no more than a half circle.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No such arc: the rise is more than girth/π.</exception>
    public static CircularArc FromGirthAndRise(double girthMm, double riseMm)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(girthMm);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(riseMm, girthMm / Math.PI);
        return new(Bisection.Root(chord => new CircularArc(chord, riseMm).GirthMm - girthMm, girthMm / 2, girthMm), riseMm);
    }
}
