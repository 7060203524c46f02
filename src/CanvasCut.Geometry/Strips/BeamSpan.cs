namespace CanvasCut.Geometry;

/// <summary>A piece of an elastic strip between two neighbouring points of support.</summary>
/// <param name="FromMm">Where it begins.</param>
/// <param name="LengthMm">How long it is; above zero.</param>
/// <param name="Heights">The heights of its ends.</param>
/// <param name="Curvatures">The curvatures at its ends.</param>
/// <param name="WeightPerMm3">Weight a length divided by stiffness EI.</param>
/// <remarks>
/// Between the ends the curvature is a straight line and the weight's parabola w·t(l − t)/2, and the height its second
/// integral: the beam equation EI·y'''' = −w for small slopes.
/// </remarks>
internal readonly record struct BeamSpan(
    double FromMm, double LengthMm, (double Start, double End) Heights, (double Start, double End) Curvatures, double WeightPerMm3)
{
    public double CurvatureAt(double t) =>
        (Curvatures.Start * (1 - (t / LengthMm))) + (Curvatures.End * t / LengthMm) + (WeightPerMm3 * t * (LengthMm - t) / 2);

    public double HeightAt(double t)
    {
        var (l, rest) = (LengthMm, LengthMm - t);
        var line = ((Heights.Start * rest) + (Heights.End * t)) / l;
        var ends = ((Curvatures.Start * ((2 * l) - t)) + (Curvatures.End * (l + t))) / (6 * l);
        var weight = WeightPerMm3 * ((l * l) + (l * t) - (t * t)) / 24;
        return line - (t * rest * (ends + weight));
    }

    /// <summary>The rate at which the curvature changes at the start and at the end: shear divided by stiffness.</summary>
    public (double Start, double End) Shear
    {
        get
        {
            var (line, half) = ((Curvatures.End - Curvatures.Start) / LengthMm, WeightPerMm3 * LengthMm / 2);
            return (line + half, line - half);
        }
    }

    /// <summary>Where within the span the curvature is largest upward, when that is not at an end; else null.</summary>
    public double? Crest
    {
        get
        {
            if (WeightPerMm3 <= 0)
            {
                return null;
            }

            var t = (LengthMm / 2) + ((Curvatures.End - Curvatures.Start) / (WeightPerMm3 * LengthMm));
            return t > 0 && t < LengthMm ? t : null;
        }
    }

    /// <summary>How much longer the strip is than the straight line it would follow with no slope: half the sum of its slopes squared.</summary>
    public double ExtraLengthMm
    {
        get
        {
            // Slopes are polynomials of the third degree, so that their squares need the four points of Gauss to be exact.
            var (sum, half) = (0.0, LengthMm / 2);
            foreach (var (point, weight) in GaussPoints)
            {
                var slope = SlopeAt(half * (1 + point));
                sum += weight * slope * slope;
            }

            return sum * half / 2;
        }
    }

    /// <summary>Points and weights of Gauss and Legendre's rule with four points (Abramowitz and Stegun, table 25.4).</summary>
    private static readonly (double Point, double Weight)[] GaussPoints =
    [
        (-0.861136311594052575, 0.347854845137453857),
        (-0.339981043584856265, 0.652145154862546143),
        (0.339981043584856265, 0.652145154862546143),
        (0.861136311594052575, 0.347854845137453857),
    ];

    public double SlopeAt(double t)
    {
        var l = LengthMm;
        var line = (Heights.End - Heights.Start) / l;
        var start = Curvatures.Start * ((2 * l * l) - (6 * l * t) + (3 * t * t)) / (6 * l);
        var end = Curvatures.End * ((l * l) - (3 * t * t)) / (6 * l);
        var weight = WeightPerMm3 * ((l * l * l) - (6 * l * t * t) + (4 * t * t * t)) / 24;
        return line - start - end - weight;
    }
}
