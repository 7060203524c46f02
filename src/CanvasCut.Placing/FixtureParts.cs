using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Placing;

/// <summary>What must stay clear of things that are on the top already.</summary>
internal static class FixtureParts
{
    /// <summary>The rules of every fixture.</summary>
    public static IEnumerable<DistanceRule> RulesOf(CarrierJob job, MountedShape mounted) => job.Top.Fixtures.Index().SelectMany(each =>
        Of(each.Item, job, mounted).DistinctBy(part => (part.Key, part.Name)).Select(part => new DistanceRule(
            ClearanceKind.Fixture,
            part.Name.Length > 0 ? Say.Of($"{part.Name} and {each.Item.Name}") : each.Item.Name,
            part.Places,
            Obstacle(each.Item),
            each.Item.Clearance.Millimeters)
        {
            Of = part.Name.Length > 0 ? part.Key : null,
            To = PartKey.Fixture(each.Index + 1),
        }));

    private static AllObstacles Obstacle(TopFixture fixture) =>
        new([.. Plan.PartsOf(fixture).Select(part => new ZoneObstacle(part.Corners, part.HalfMm))]);

    private static IEnumerable<TubePart> Of(TopFixture fixture, CarrierJob job, MountedShape mounted) => fixture.Forbids.Contains(Forbidden.Everything)
        ? [new(ClearanceKind.Fixture, new PartKeys(job).Carrier, string.Empty, mounted.Bounds)]
        : fixture.Forbids.SelectMany(forbidden => forbidden switch
        {
            Forbidden.Stitches => Stitches(mounted, new(job)).Where(row => fixture.Kind != FixtureKind.Seam || row.RunsForeAft == fixture.RunsForeAft).Select(row => row.Part),
            Forbidden.Cells => EachPanel.Of(job, mounted).Select(panel => Part(new PartKeys(panel.Job).Cells, PanelWords.Of(panel.Job, Say.Of("cells")), panel.Mounted.CellBox)),
            _ => HardEdges(mounted, new(job)).Concat(TubeParts.Boxes(job, mounted, ClearanceKind.Fixture)),
        });

    /// <summary>What is sewn to the top, and which way it runs; a seam of the top may be crossed, but not sewn along.</summary>
    private static IEnumerable<(bool RunsForeAft, TubePart Part)> Stitches(MountedShape mounted, PartKeys keys) =>
    [
        .. mounted.Fastened.Edges.Select(edge => (!edge.IsEnd, Part(keys.Fastening(edge.Side), edge.Name, edge.Band))),
        .. mounted.Fastened.StripsOnTop.Select(strip => (strip.Side is Side.Port or Side.Starboard, Part(keys.Strip(strip.Side), Say.Of($"{Words.Of(strip.Side)} weather strip's seam"), Box.Holding([strip.Seam.From, strip.Seam.To])))),
        .. mounted.Fastened.Pockets.SelectMany(pocket => new[]
        {
            (false, Part(keys.Pocket(pocket.Corner), Say.Of($"{pocket.Corner} pocket, leg across"), Box.Holding([pocket.At, pocket.EndAthwart]))),
            (true, Part(keys.Pocket(pocket.Corner), Say.Of($"{pocket.Corner} pocket, leg along"), Box.Holding([pocket.At, pocket.EndForeAft]))),
        }),
    ];

    private static IEnumerable<TubePart> HardEdges(MountedShape mounted, PartKeys keys)
    {
        var carrier = mounted.CarrierBox;
        yield return Part(keys.CarrierEdge(Side.Forward), Say.Of("carrier's forward edge"), carrier with { Bottom = carrier.Top });
        yield return Part(keys.CarrierEdge(Side.Aft), Say.Of("carrier's aft edge"), carrier with { Top = carrier.Bottom });
        yield return Part(keys.CarrierEdge(Side.Port), Say.Of("carrier's port edge"), carrier with { Right = carrier.Left });
        yield return Part(keys.CarrierEdge(Side.Starboard), Say.Of("carrier's starboard edge"), carrier with { Left = carrier.Right });
        foreach (var edge in mounted.Fastened.Edges)
        {
            yield return Part(keys.Fastening(edge.Side), edge.Name, edge.Band);
        }

        foreach (var pocket in mounted.Fastened.Pockets)
        {
            yield return Part(keys.Pocket(pocket.Corner), Say.Of($"{pocket.Corner} pocket"), pocket.Outline.Bounds);
        }
    }

    private static TubePart Part(PartKey key, string name, Box place) => new(ClearanceKind.Fixture, key, name, [place]);
}
