using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Placing;

/// <summary>What must not lie on a tube.</summary>
/// <remarks>
/// What holds and ends the carrier across the boat lies clear of a tube that runs across, and what does so along the boat of one that runs
/// fore and aft. The others pass over it somewhere, and are only told of.
/// </remarks>
internal static class TubeParts
{
    /// <summary>The parts that a tube across the boat must not touch.</summary>
    public static IEnumerable<TubePart> Across(CarrierJob job, MountedShape mounted)
    {
        var (carrier, keys) = (mounted.CarrierBox, new PartKeys(job));
        yield return new(ClearanceKind.TubeEdge, keys.CarrierEdge(Side.Forward), Say.Of("carrier's forward edge"), [carrier with { Bottom = carrier.Top }]);
        yield return new(ClearanceKind.TubeEdge, keys.CarrierEdge(Side.Aft), Say.Of("carrier's aft edge"), [carrier with { Top = carrier.Bottom }]);
        foreach (var part in Holding(mounted, keys, isEnd: true))
        {
            yield return part;
        }

        foreach (var strip in mounted.Fastened.StripsOnTop)
        {
            yield return Seam(strip, keys);
        }

        foreach (var box in Boxes(job, mounted, ClearanceKind.TubeBox))
        {
            yield return box;
        }

        foreach (var part in Fasteners(mounted, keys, areEnds: false))
        {
            yield return part;
        }
    }

    /// <summary>The parts that a tube along the boat must not touch.</summary>
    public static IEnumerable<TubePart> Along(CarrierJob job, MountedShape mounted)
    {
        var (carrier, keys) = (mounted.CarrierBox, new PartKeys(job));
        yield return new(ClearanceKind.TubeEdge, keys.CarrierEdge(Side.Port), Say.Of("carrier's port edge"), [carrier with { Right = carrier.Left }]);
        yield return new(ClearanceKind.TubeEdge, keys.CarrierEdge(Side.Starboard), Say.Of("carrier's starboard edge"), [carrier with { Left = carrier.Right }]);
        foreach (var part in Holding(mounted, keys, isEnd: false))
        {
            yield return part;
        }

        foreach (var strip in mounted.Fastened.StripsOnTop.Where(strip => strip.Side is Side.Port or Side.Starboard))
        {
            yield return Seam(strip, keys);
        }

        foreach (var box in Boxes(job, mounted, ClearanceKind.TubeBox))
        {
            yield return box;
        }

        foreach (var part in Fasteners(mounted, keys, areEnds: true))
        {
            yield return part;
        }
    }

    /// <summary>The junction box of each panel, where its place is known.</summary>
    public static IEnumerable<TubePart> Boxes(CarrierJob job, MountedShape mounted, ClearanceKind kind) =>
        from panel in EachPanel.Of(job, mounted)
        let box = panel.Mounted.JunctionBox
        where box is not null
        select new TubePart(kind, new PartKeys(panel.Job).JunctionBox, PanelWords.Of(panel.Job, Say.Of("junction box")), [box.Value]);

    private static TubePart Seam(StripPlace strip, PartKeys keys) =>
        new(ClearanceKind.TubeStrip, keys.Strip(strip.Side), Say.Of($"{Words.Of(strip.Side)} weather strip's seam"), [Box.Holding([strip.Seam.From, strip.Seam.To])]);

    /// <summary>What holds two edges, and the pockets.</summary>
    private static IEnumerable<TubePart> Holding(MountedShape mounted, PartKeys keys, bool isEnd)
    {
        foreach (var zipper in mounted.Fastened.Zippers.Where(zipper => zipper.IsEnd == isEnd))
        {
            yield return new(ClearanceKind.TubeZipper, keys.Fastening(zipper.Side), Say.Of($"{Words.Of(zipper.Side)} zipper"), [zipper.Band]);
        }

        foreach (var flap in mounted.Fastened.Flaps.Where(flap => flap.IsEnd == isEnd))
        {
            yield return new(ClearanceKind.TubeMount, keys.Fastening(flap.Side), flap.Name, [flap.Band]);
        }

        // Port and starboard pockets lie at the same stations unless their legs differ; each is told all the same.
        foreach (var pocket in mounted.Fastened.Pockets)
        {
            yield return new(ClearanceKind.TubePocket, keys.Pocket(pocket.Corner), Say.Of($"{pocket.Corner} pocket"), [pocket.Outline.Bounds]);
        }
    }

    /// <summary>Single fasteners along edges that pass over the tube; none may sit on it, and the nearest counts.</summary>
    private static IEnumerable<TubePart> Fasteners(MountedShape mounted, PartKeys keys, bool areEnds) => mounted.Fastened.Flaps
        .Where(flap => flap.IsEnd == areEnds && flap.Fasteners is not null)
        .Select(flap => new TubePart(ClearanceKind.TubeMount, keys.Fastening(flap.Side), Say.Of($"nearest of {flap.Name}"), SideFasteners.RimsOf(flap)));
}
