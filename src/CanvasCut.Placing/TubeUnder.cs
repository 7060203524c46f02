using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Placing;

/// <summary>A tube under the top, be it a bow or another.</summary>
/// <param name="Key">Which it is.</param>
/// <param name="Name">What it is called.</param>
/// <param name="RunsForeAft">Whether it runs along the boat rather than across it.</param>
/// <param name="Obstacle">Where it lies.</param>
internal sealed record TubeUnder(PartKey Key, string Name, bool RunsForeAft, Obstacle Obstacle)
{
    /// <summary>The bows, then the other tubes.</summary>
    public static IEnumerable<TubeUnder> Of(TopCloth top) =>
        top.Bows.Select((bow, i) => new TubeUnder(PartKey.Bow(i + 1), Say.Of($"bow {i + 1}"), RunsForeAft: false, Band(Plan.BandOf(top, bow))))
            .Concat(top.Tubes.Select((tube, i) => new TubeUnder(PartKey.Tube(i + 1), tube.Name, tube.RunsForeAft, Straight(tube))));

    private static BandObstacle Band(Box band) => new(band.Center, new(1, 0), band.HeightMm / 2);

    private static ZoneObstacle Straight(TopTube tube) => new([Plan.Of(tube.From), Plan.Of(tube.To)], tube.Diameter.Millimeters / 2);
}
