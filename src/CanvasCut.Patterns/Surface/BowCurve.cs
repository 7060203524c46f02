using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>The cloth over one bow, seen along the boat: arcs that are level on the centreline, and the bends of the frame beyond.</summary>
/// <remarks>All in millimetres along the cloth. Each arc runs on beyond its measured chord.</remarks>
internal sealed class BowCurve
{
    private readonly double _portCurvature;
    private readonly double _starboardCurvature;
    private readonly (double Port, double Starboard) _bendFromMm;
    private readonly double _bendCurvature;

    /// <param name="halves">The arcs.</param>
    /// <param name="edges">From the centreline to the top's side edges over the bow.</param>
    /// <param name="cornerRadiusMm">The last so much of each half bends down with this radius; zero for no bend.</param>
    public BowCurve(BowHalves halves, (Length Port, Length Starboard) edges, double cornerRadiusMm)
    {
        (_portCurvature, _starboardCurvature) = (1 / halves.Port.RadiusMm, 1 / halves.Starboard.RadiusMm);
        _bendFromMm = (From(edges.Port), From(edges.Starboard));
        _bendCurvature = cornerRadiusMm > 0 ? 1 / cornerRadiusMm : 0;
        double From(Length edge) => cornerRadiusMm > 0 ? edge.Millimeters - cornerRadiusMm : double.PositiveInfinity;
    }

    /// <summary>The place at an offset: X to starboard, Y up, both from the cloth on the centreline; and how the curve runs there.</summary>
    public CurvePlace At(double offsetMm)
    {
        var hand = offsetMm < 0 ? -1 : 1;
        var (curvature, along) = (hand < 0 ? _portCurvature : _starboardCurvature, Math.Abs(offsetMm));
        var bendFrom = hand < 0 ? _bendFromMm.Port : _bendFromMm.Starboard;
        var onArc = Math.Min(along, bendFrom);
        var (step, turn) = (ArcStep.Of(onArc, curvature, 0), onArc * curvature);
        if (along > bendFrom)
        {
            step += ArcStep.Of(along - bendFrom, _bendCurvature, turn);
            (turn, curvature) = (turn + ((along - bendFrom) * _bendCurvature), _bendCurvature);
        }

        return new(new(hand * step.X, -step.Y), hand * turn, curvature);
    }
}

/// <summary>A place on a curve.</summary>
/// <param name="At">X to starboard, Y up, millimetres from the cloth on the centreline.</param>
/// <param name="TurnRadians">How far the curve has turned down to starboard.</param>
/// <param name="CurvaturePerMm">How much it turns a millimetre; zero or more.</param>
internal readonly record struct CurvePlace(Point At, double TurnRadians, double CurvaturePerMm)
{
    /// <summary>The direction to starboard, of length 1.</summary>
    public Step Along => new(Math.Cos(TurnRadians), -Math.Sin(TurnRadians));

    /// <summary>How the direction changes a millimetre.</summary>
    public Step Bend => new Step(-Math.Sin(TurnRadians), -Math.Cos(TurnRadians)) * CurvaturePerMm;
}

/// <summary>Walks along arcs.</summary>
internal static class ArcStep
{
    /// <summary>The step from one end of an arc to the other, in axes along and square to a base line.</summary>
    /// <param name="lengthMm">Along the arc.</param>
    /// <param name="curvature">Its turn a millimetre; zero for a straight line.</param>
    /// <param name="startRadians">How far it is turned from the base line where it begins.</param>
    public static Step Of(double lengthMm, double curvature, double startRadians)
    {
        // The chord of an arc is sin(φ)/φ times its length, φ half its turn, and leaves its tangent by φ.
        var half = lengthMm * curvature / 2;
        var chord = Math.Abs(half) < 1e-9 ? lengthMm : lengthMm * Math.Sin(half) / half;
        var (sine, cosine) = Math.SinCos(startRadians + half);
        return new(chord * cosine, chord * sine);
    }
}
