using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>How much cloth the carrier needs from zipper to zipper, at one offset, against what it is made with.</summary>
/// <param name="AlongCloth">From zipper line to zipper line along the cloth of the top.</param>
/// <param name="Needed">The carrier's own way between the same lines.</param>
/// <param name="Made">What the carrier and its halves of the zippers measure, laid flat.</param>
public sealed record CarrierPath(Length AlongCloth, Length Needed, Length Made)
{
    /// <summary>The thickness of marine acrylic of 300 g/m²; from memory.</summary>
    public static readonly Length ClothThickness = Length.FromMillimeters(0.5);

    /// <summary>How much the carrier is too short; below zero when it is too long.</summary>
    public Length Shortfall => Needed - Made;

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
        Length Girth(double from, double to) => surface.GirthBetween(PanelNet.At(from, profile.Offset.Millimeters), PanelNet.At(to, profile.Offset.Millimeters));
        var (forward, aft) = (-mounted.Fastened.Edges[0].LineY, -mounted.Fastened.Edges[1].LineY);
        var (panelFrom, panelTo) = (-mounted.PanelBox.Top, -mounted.PanelBox.Bottom);
        var height = (job.Panel.Body.Thickness / 2) + ClothThickness;
        var turn = profile.Tubes.Where(tube => tube.IsTouched).Sum(tube => surface.Ridges[tube.Bow].Turn.Radians);
        var panel = Length.FromMillimeters(profile.Strip.LengthMm + profile.Strip.ExtraLengthMm);
        return new(
            Girth(forward, aft),
            Girth(forward, panelFrom) + panel + Girth(panelTo, aft) + (height * turn),
            Length.FromMillimeters(aft - forward));
    }
}
