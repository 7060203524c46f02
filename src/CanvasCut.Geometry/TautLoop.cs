namespace CanvasCut.Geometry;

/// <summary>A closed band that is fixed at one point and pulled tight by a circle inside it.</summary>
/// <remarks>
/// From the point two straight parts touch the circle, and between the places where they touch the band lies on it. For a
/// circle of radius r whose middle lies x from the point, half the band measures √(x² − r²) + r·(π/2 + asin(r/x)); with
/// x = r, the point on the circle itself, that is half its circumference, π·r.
/// </remarks>
public static class TautLoop
{
    /// <summary>From the fixed point to the circle's middle.</summary>
    /// <param name="halfGirthMm">Half of the way round the band.</param>
    /// <param name="radiusMm">The circle's radius; above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The radius is not above zero, or the band is too short to go round the circle.</exception>
    public static double ToMiddleMm(double halfGirthMm, double radiusMm)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(radiusMm);
        ArgumentOutOfRangeException.ThrowIfLessThan(halfGirthMm, Math.PI * radiusMm);
        return Bisection.Root(x => HalfGirthMm(x, radiusMm) - halfGirthMm, radiusMm, halfGirthMm);
    }

    private static double HalfGirthMm(double x, double radius) =>
        Math.Sqrt(Math.Max(0, (x * x) - (radius * radius))) + (radius * ((Math.PI / 2) + Math.Asin(radius / x)));
}
