using CanvasCut.Geometry;

namespace CanvasCut.Patterns;

/// <summary>The cloth on the centreline from one bow to the next: straight, or an arc that hangs by the sag.</summary>
internal sealed class BayCurve
{
    private readonly double _clothMm;
    private readonly double _curvature;

    /// <param name="clothMm">Along the cloth from bow to bow; above zero.</param>
    /// <param name="riseMm">How much higher the aft bow is; less than the cloth.</param>
    /// <param name="sagMm">How far its middle hangs below a straight line.</param>
    /// <exception cref="ArgumentOutOfRangeException">The cloth does not reach from bow to bow.</exception>
    public BayCurve(double clothMm, double riseMm, double sagMm)
    {
        if (!CanBe(clothMm, riseMm, sagMm))
        {
            throw new ArgumentOutOfRangeException(nameof(riseMm), riseMm, "The cloth does not reach from bow to bow.");
        }

        _clothMm = clothMm;
        var arc = sagMm > 0 ? CircularArc.FromGirthAndRise(clothMm, sagMm) : CircularArc.FromChordAndRise(clothMm, 0);
        (ChordMm, _curvature) = (arc.ChordMm, 1 / arc.RadiusMm);
        RiseMm = riseMm;
        LevelMm = Math.Sqrt((ChordMm * ChordMm) - (riseMm * riseMm));
    }

    /// <summary>Straight from bow to bow.</summary>
    public double ChordMm { get; }

    /// <summary>How much higher the aft bow is.</summary>
    public double RiseMm { get; }

    /// <summary>From bow to bow on the level.</summary>
    public double LevelMm { get; }

    /// <summary>Whether a bay of these measures can be.</summary>
    public static bool CanBe(double clothMm, double riseMm, double sagMm) =>
        sagMm <= clothMm / Math.PI && Math.Abs(riseMm) < (sagMm > 0 ? CircularArc.FromGirthAndRise(clothMm, sagMm).ChordMm : clothMm);

    /// <summary>A place by its distance along the cloth aft of the forward bow; beyond the bows the cloth runs straight on.</summary>
    public BayPlace At(double alongMm)
    {
        var start = -_clothMm * _curvature / 2;
        var within = Math.Clamp(alongMm, 0, _clothMm);
        var (sine, cosine) = Math.SinCos(start + (within * _curvature));
        var step = ArcStep.Of(within, _curvature, start) + (new Step(cosine, sine) * (alongMm - within));
        return new(step.X / ChordMm, step.Y, cosine / ChordMm, sine);
    }

    /// <summary>How far the cloth falls, going aft, from the level at a distance along it.</summary>
    public double FallRadians(double alongMm) =>
        -Math.Atan2(RiseMm, LevelMm) - ((Math.Clamp(alongMm, 0, _clothMm) - (_clothMm / 2)) * _curvature);
}

/// <summary>A place in a bay.</summary>
/// <param name="Part">Which part of the straight way from bow to bow is done.</param>
/// <param name="LiftMm">How far above the straight line, zero or less within the bay.</param>
/// <param name="PartPerMm">How the part grows with each millimetre along the cloth.</param>
/// <param name="LiftPerMm">How the lift grows.</param>
internal readonly record struct BayPlace(double Part, double LiftMm, double PartPerMm, double LiftPerMm);
