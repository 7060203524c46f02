using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>How far a flap, or its counterpart on the top, reaches, counted outward from the carrier's edge.</summary>
/// <param name="FromMm">Where it begins; below zero under the carrier.</param>
/// <param name="ToMm">Where it ends.</param>
/// <param name="EndMm">How much shorter it is than the run at each end.</param>
internal readonly record struct FlapReach(double FromMm, double ToMm, double EndMm = 0)
{
    /// <summary>The flap on the carrier, and what is sewn to the top for it.</summary>
    /// <param name="parts">What the flap carries.</param>
    /// <param name="job">The job.</param>
    /// <param name="run">The flap's length.</param>
    public static (FlapReach OnCarrier, FlapReach OnTop) Of(FlapParts parts, CarrierJob job, Length run)
    {
        if (parts.Sleeve is { } sleeve)
        {
            return OfSleeve(sleeve, run);
        }

        var figures = job.Fastenings.Mount.Figures;
        var width = (parts.Spec?.Width ?? figures.HookAndLoop.Width).Millimeters;
        var gap = figures.LacingGap.Millimeters;
        var tape = job.Workshop.Supplies.Tapes.Mount.HookAndLoop.Width.Millimeters;
        return (new(-MountSpec.Lap.Millimeters, width), parts.Kind switch
        {
            MountKind.HookAndLoop => new((width - tape) / 2, (width + tape) / 2),
            MountKind.Lacing => new(width + gap, (2 * width) + gap),
            _ => new(0, width),
        });
    }

    /// <summary>Laid flat, both sleeves reach beyond the rod: the top's mirrors the carrier's over the rod's middle.</summary>
    private static (FlapReach OnCarrier, FlapReach OnTop) OfSleeve(SleeveSpec sleeve, Length run)
    {
        var (lugs, width, rod) = (LugRow.Along(run, sleeve), sleeve.Width.Millimeters, sleeve.ToRod.Millimeters);
        return (
            new(-MountSpec.Lap.Millimeters, width),
            new((2 * rod) - width, sleeve.OuterEdge.Millimeters, (lugs.Pitch + (lugs.Gap / 2)).Millimeters));
    }
}
