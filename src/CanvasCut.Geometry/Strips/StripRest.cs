namespace CanvasCut.Geometry;

/// <summary>Something a strip may rest on, or rise from.</summary>
/// <param name="AtMm">Along the straight line between the strip's two holds.</param>
/// <param name="HeightMm">Above that line; below zero when under it.</param>
public readonly record struct StripRest(double AtMm, double HeightMm);

/// <summary>Where a bent strip presses on a rest.</summary>
/// <param name="Rest">Which one, counted from 0 in the order given.</param>
/// <param name="AtMm">Along the line between the holds.</param>
/// <param name="HeightMm">Above that line.</param>
/// <param name="CurvaturePerMm">The strip's curvature there; below zero when it bends down to both sides, as over a ridge.</param>
/// <param name="PushPerMm2">The push of the rest divided by the strip's stiffness EI; zero or more.</param>
public sealed record StripContact(int Rest, double AtMm, double HeightMm, double CurvaturePerMm, double PushPerMm2)
{
    /// <summary>The radius there; infinite when straight.</summary>
    public double RadiusMm => 1 / Math.Abs(CurvaturePerMm);
}
