using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>How much cloth the carrier needs from zipper to zipper, at one offset, against what it is made with.</summary>
/// <param name="AlongClothMm">From zipper line to zipper line along the cloth of the top.</param>
/// <param name="NeededMm">The carrier's own way between the same lines.</param>
/// <param name="MadeMm">What the carrier and its halves of the zippers measure, laid flat.</param>
public sealed record CarrierPath(double AlongClothMm, double NeededMm, double MadeMm)
{
    /// <summary>The thickness of marine acrylic of 300 g/m²; from memory.</summary>
    public static readonly Length ClothThickness = Length.FromMillimeters(0.5);

    /// <summary>How much the carrier is too short; below zero when it is too long.</summary>
    public double ShortMm => NeededMm - MadeMm;

    /// <summary>The path for each profile.</summary>
    /// <remarks>
    /// Up to the panel's edges the carrier follows the cloth. Between them it goes with the panel: from edge to edge along
    /// the bent strip, and over each tube it touches longer by h·θ, θ being what the cloth turns there and h how high the
    /// panel's middle lies over the cloth, because what lies outside on a bend has the longer way.
    /// </remarks>
    public static ImmutableArray<CarrierPath> Of(CarrierJob job, MountedShape mounted, TopSurface surface, ImmutableArray<PanelProfile> profiles) =>
        [.. profiles.Select(profile => Of(job, mounted, surface, profile))];

    private static CarrierPath Of(CarrierJob job, MountedShape mounted, TopSurface surface, PanelProfile profile)
    {
        double Girth(double from, double to) => surface.GirthBetween(PanelNet.At(from, profile.OffsetMm), PanelNet.At(to, profile.OffsetMm)).Millimeters;
        var (forward, aft) = (-mounted.Fastened.Edges[0].LineY, -mounted.Fastened.Edges[1].LineY);
        var (panelFrom, panelTo) = (-mounted.PanelBox.Top, -mounted.PanelBox.Bottom);
        var height = ((job.Panel.Body.Thickness / 2) + ClothThickness).Millimeters;
        var turn = profile.Tubes.Where(tube => tube.IsTouched).Sum(tube => surface.Ridges[tube.Bow].Turn.Radians);
        var panel = profile.Strip.LengthMm + profile.Strip.ExtraLengthMm;
        return new(
            Girth(forward, aft),
            Girth(forward, panelFrom) + panel + Girth(panelTo, aft) + (height * turn),
            aft - forward);
    }
}
