namespace CanvasCut.Geometry;

/// <summary>A straight elastic strip whose ends, free to turn, are pushed together until it stands up in a bow.</summary>
/// <remarks>
/// Euler's elastica in closed form, with the modulus k = sin(α/2) of the slope α at its ends and the complete elliptic integrals
/// K and E of that modulus: the ends lie 2E/K − 1 of the length apart, the middle has a radius of length/4kK and rises by k·length/K
/// (A. Love, "A treatise on the mathematical theory of elasticity", chapter 19). The shape does not depend on the stiffness.
/// </remarks>
public static class BowedStrip
{
    /// <summary>The modulus at which the ends meet: 2E = K.</summary>
    private const double EndsMeet = 0.90890855754854;

    /// <summary>Two to the number of means taken: each doubles the digits that are right, and after eight nothing changes.</summary>
    private const int MeansMost = 256;

    /// <summary>The radius in the middle, where it is smallest; infinite for a strip that is not pushed together.</summary>
    /// <param name="lengthMm">Of the strip; above zero.</param>
    /// <param name="shorteningMm">How much nearer its ends are than its length; less than that.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ends would meet or pass each other.</exception>
    public static double SharpestRadiusMm(double lengthMm, double shorteningMm)
    {
        var k = Modulus(lengthMm, shorteningMm);
        return k > 0 ? lengthMm / (4 * k * Integrals(k).K) : double.PositiveInfinity;
    }

    /// <summary>How far the middle stands over the line between the ends.</summary>
    /// <param name="lengthMm">Of the strip; above zero.</param>
    /// <param name="shorteningMm">How much nearer its ends are than its length; less than that.</param>
    public static double RiseMm(double lengthMm, double shorteningMm)
    {
        var k = Modulus(lengthMm, shorteningMm);
        return lengthMm * k / Integrals(k).K;
    }

    /// <summary>How much nearer its ends may come before its middle is bent sharper than a radius; at most the whole length.</summary>
    /// <param name="lengthMm">Of the strip; above zero.</param>
    /// <param name="radiusMm">The radius; above zero.</param>
    public static double MostShorteningMm(double lengthMm, double radiusMm)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(lengthMm);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(radiusMm);
        return lengthMm * Integrals(Bisection.Root(k => (4 * k * Integrals(k).K) - (lengthMm / radiusMm), 0, EndsMeet)).Shortening;
    }

    private static double Modulus(double lengthMm, double shorteningMm)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(lengthMm);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(shorteningMm, lengthMm);
        return shorteningMm <= 0 ? 0 : Bisection.Root(k => Integrals(k).Shortening - (shorteningMm / lengthMm), 0, EndsMeet);
    }

    /// <summary>
    /// K and the part of its length by which the strip is shortened, 2(1 − E/K), by the arithmetic-geometric mean (Abramowitz and
    /// Stegun, 17.6): K = π/2a, and 1 − E/K is half the sum of 2ⁿc², free of the difference of two like numbers.
    /// </summary>
    private static (double K, double Shortening) Integrals(double k)
    {
        var (a, b, c, sum) = (1.0, Math.Sqrt(1 - (k * k)), k, 0.0);
        for (var power = 1; power < MeansMost; power *= 2)
        {
            sum += power * c * c;
            (a, b, c) = ((a + b) / 2, Math.Sqrt(a * b), (a - b) / 2);
        }

        return (Math.PI / (2 * a), sum);
    }
}
