using CanvasCut.Design;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>What the fastenings bear that hold an edge in the place of a zipper.</summary>
internal static class EdgeHolds
{
    /// <summary>Whether nobody said what pulls a fastener of this edge off.</summary>
    public static bool IsUnknown(FlapPlace flap) => flap is { Lugs: null, Fasteners: not null, Parts.Spec: { Strength: null } };

    /// <summary>
    /// Hook-and-loop is lifted at its inner edge and peels, which takes far less than shear; it is held against its peel strength. The
    /// pull lies in the plane of the tape, where it bears many times as much, so that only what lifts peels.
    /// </summary>
    public static WindHold Peeled(FlapPlace flap, CarrierJob job, Force upright, Speed wind)
    {
        var factors = job.Conditions.Wind.Factors;
        var load = ForcePerLength.FromNewtonsPerMeter(upright.Newtons * factors.Edge.DecimalFractions / flap.Run.Meters);
        var peel = ForcePerLength.FromNewtonsPerMeter(job.Fastenings.Mount.Figures.HookAndLoop.Peel.Newtons / Length.FromInches(1).Meters / factors.Safety.DecimalFractions);
        return new(CheckCodes.WindFastener, flap.Name, Measured.AtMost(load, peel), WindReach.Square(wind, load / peel)) { Edge = flap.Side };
    }
}
