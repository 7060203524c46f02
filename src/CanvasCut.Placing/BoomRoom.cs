using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Placing;

/// <summary>Something that the boom must pass over.</summary>
/// <param name="Key">Which part it is.</param>
/// <param name="Name">As in "junction box".</param>
/// <param name="Height">How high it stands above the top's cloth.</param>
/// <param name="Places">Where it lies.</param>
public sealed record BoomPart(PartKey Key, string Name, Length Height, ImmutableArray<Box> Places);

/// <summary>The room under a boom that swings over the top.</summary>
public static class BoomRoom
{
    /// <summary>The cloth of the carrier with hems; two layers at most lie under the panel. From memory.</summary>
    private static readonly Length Cloth = Length.FromMillimeters(2);

    /// <summary>What stands up from the top: the thickest panel with the carrier, and each junction box on a face whose place is known.</summary>
    public static ImmutableArray<BoomPart> PartsOf(CarrierJob job, MountedShape mounted)
    {
        var panels = EachPanel.Of(job, mounted);
        var thickest = panels.MaxBy(panel => HeightOf(panel).Millimeters)!;
        return
        [
            new(new PartKeys(thickest.Job).Panel, Say.Of("panel and carrier"), HeightOf(thickest), mounted.Bounds),
            .. panels.SelectMany(BoxOf),
        ];
    }

    private static Length HeightOf(EachPanel panel) =>
        Cloth + (BondPlan.Of(panel.Job, panel.Mounted).HasTape ? panel.Job.Workshop.Supplies.Tapes.Foam.Thickness : Length.Zero) + panel.Job.Panel.Body.Thickness;

    private static IEnumerable<BoomPart> BoxOf(EachPanel panel) => panel.Mounted.Panel.Fittings.JunctionBox is { IsAtBack: false } box && panel.Mounted.JunctionBox is { } place
        ? [new(new PartKeys(panel.Job).JunctionBox, PanelWords.Of(panel.Job, Say.Of("junction box")), HeightOf(panel) + box.Height, [place])]
        : [];

    /// <summary>How far a part lies outside the swing, seen from above; negative when it lies in it.</summary>
    public static Length OutsideOf(TopBoom boom, BoomPart part)
    {
        var swing = Swing(boom);
        return Length.FromMillimeters(part.Places.Min(swing.DistanceMm));
    }

    /// <summary>Whether the boom passes over a part with the clearance asked for; only where its height is known.</summary>
    public static bool ClearsOver(TopBoom boom, BoomPart part) => boom.Height is { } height && height - part.Height >= boom.Clearance;

    /// <summary>What is too high for the boom to pass over lies beside its swing; nothing where its height is not known, which the checks tell.</summary>
    internal static IEnumerable<DistanceRule> RulesOf(CarrierJob job, MountedShape mounted) => job.Top.Boom is { Height: not null } boom
        ? PartsOf(job, mounted).Where(part => !ClearsOver(boom, part)).Select(part =>
            new DistanceRule(ClearanceKind.Boom, Say.Of($"{part.Name} and the swing of the boom"), part.Places, Swing(boom), boom.Clearance.Millimeters) { Of = part.Key, To = PartKey.Boom })
        : [];

    private static ZoneObstacle Swing(TopBoom boom) => new(Plan.SwingOf(boom).Corners, 0);
}
