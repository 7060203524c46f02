using CanvasCut.Design;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>What the fastenings bear that hold an edge in the place of a zipper.</summary>
internal static class EdgeHolds
{
    /// <summary>A fastener's or a tape's load and strength; null when its strength is not known.</summary>
    /// <param name="flap">The edge.</param>
    /// <param name="job">The job.</param>
    /// <param name="perEdge">What lifts the edge, the edge factor not yet in it.</param>
    /// <remarks>
    /// Fasteners share an edge's load evenly but for the edge factor: load = edge's load / number x edge factor. Hook-and-loop
    /// is lifted at its inner edge and peels, which takes far less than shear; it is held against its peel strength.
    /// </remarks>
    public static (Measured Load, double PartUsed)? Of(FlapPlace flap, CarrierJob job, Force perEdge)
    {
        var factors = job.Conditions.Wind.Factors;
        var worst = perEdge * factors.Edge.DecimalFractions;
        if (flap is { Fasteners: { } row, Parts.Spec: { } spec })
        {
            return spec.Strength is { } strength ? Single(worst / row.Count, strength / factors.Safety.DecimalFractions) : null;
        }

        var load = ForcePerLength.FromNewtonsPerMeter(worst.Newtons / flap.Run.Meters);
        var peel = ForcePerLength.FromNewtonsPerMeter(job.Fastenings.Mount.Figures.HookAndLoop.Peel.Newtons / Length.FromInches(1).Meters / factors.Safety.DecimalFractions);
        return (Measured.AtMost(load, peel), load / peel);
    }

    private static (Measured Load, double PartUsed) Single(Force load, Force allowed) => (Measured.AtMost(load, allowed), load / allowed);
}
