using System.Collections.Immutable;
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

    /// <summary>The path for each profile of each panel.</summary>
    /// <remarks>
    /// Up to a panel's edges the carrier follows the cloth, in the gap between two panels too. Between them it goes with the panel: from
    /// edge to edge along the bent strip, and over each tube it touches longer by h·θ, θ being what the cloth turns there and h how high
    /// the panel's middle lies over the cloth, because what lies outside on a bend has the longer way.
    /// </remarks>
    public static ImmutableArray<CarrierPath> Of(MountedShape mounted, TopSurface surface, ImmutableArray<(PatternSet Patterns, ImmutableArray<PanelProfile> Profiles)> panels) =>
        [.. panels.SelectMany(panel => panel.Profiles.Select(profile => Of(mounted, surface, profile, [.. Crossed(panel.Patterns, profile, surface, panels)])))];

    /// <summary>The panels that a line along the boat crosses, from forward to aft, with how each lies there.</summary>
    private static IEnumerable<(PatternSet Patterns, PanelProfile Profile)> Crossed(
        PatternSet own, PanelProfile profile, TopSurface surface, ImmutableArray<(PatternSet Patterns, ImmutableArray<PanelProfile> Profiles)> panels)
    {
        var at = profile.Offset.Millimeters;
        return panels.Select(panel => panel.Patterns)
            .Where(panel => panel == own || (panel.Mounted.PanelBox.Left <= at && at <= panel.Mounted.PanelBox.Right))
            .Select(panel => (panel, panel == own ? profile : PanelProfile.At(panel.Job, panel.Mounted, surface, at)));
    }

    private static CarrierPath Of(MountedShape mounted, TopSurface surface, PanelProfile along, ImmutableArray<(PatternSet Patterns, PanelProfile Profile)> crossed)
    {
        Length Girth(double from, double to) => surface.GirthBetween(PanelNet.At(from, along.Offset.Millimeters), PanelNet.At(to, along.Offset.Millimeters));
        var (forward, aft) = (-mounted.Fastened.Edges[0].LineY, -mounted.Fastened.Edges[1].LineY);
        var (way, turned, at) = (Length.Zero, Length.Zero, forward);
        foreach (var (panel, profile) in crossed)
        {
            var (panelFrom, panelTo) = (-panel.Mounted.PanelBox.Top, -panel.Mounted.PanelBox.Bottom);
            var height = (panel.Job.Panel.Body.Thickness / 2) + ClothThickness;
            var turn = profile.Tubes.Where(tube => tube.IsTouched).Sum(tube => surface.Ridges[tube.Bow].Turn.Radians);
            way += Girth(at, panelFrom) + Length.FromMillimeters(profile.Strip.LengthMm + profile.Strip.ExtraLengthMm);
            turned += height * turn;
            at = panelTo;
        }

        return new(Girth(forward, aft), way + Girth(at, aft) + turned, Length.FromMillimeters(aft - forward));
    }
}
