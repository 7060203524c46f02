using System.Collections.Immutable;
using System.Diagnostics;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using CanvasCut.Placing;
using CanvasCut.Tests.Patterns;
using LineString = NetTopologySuite.Geometries.LineString;

namespace CanvasCut.Tests.Placing;

/// <summary>Tubes that are no bows: distances by hand, and the best place against trying every one with NetTopologySuite.</summary>
public sealed class TubePlacesTests
{
    private const double RadiusMm = 12.7;

    /// <summary>
    /// By hand: the tube runs from (-900, -300) to (900, -900), 1897.3666 long. The carrier of 1000 by 500 has its forward edge at y = -1000; its
    /// starboard end (500, -1000) is nearest. From the tube's start to there it is (1400, -700); the cross product 1800 x (-700) - (-600) x 1400
    /// = -420000, over 1897.3666, is 221.3594; less 12.7 to the tube's skin 208.6594.
    /// </summary>
    [Fact]
    public void The_distance_from_a_slanted_tube_is_that_of_a_point_from_a_line()
    {
        var job = Job(new TopCloth(SampleJobs.Mm(1800), SampleJobs.Mm(1800), new(SampleJobs.Mm(25), SampleJobs.Mm(0)), [], []) { Tubes = [Tube("brace", (300, -900), (900, 900))] }, 1000, 474.6);
        var mounted = MountedShape.Of(job, LongSide.Athwart).At(new(SampleJobs.Mm(1250), SampleJobs.Mm(0)));

        var edge = Assert.Single(Clearances.Of(job, mounted), clearance => clearance.Kind == ClearanceKind.TubeEdge && clearance.Of == new PartKeys(job).CarrierEdge(Side.Forward));

        Assert.Equal(PartKey.Tube(1), edge.To);
        Assert.Equal(208.6594, edge.Distance.Millimeters, 1e-3);
        Assert.Equal(10, edge.Needed.Millimeters);
    }

    /// <summary>By hand: a strut that ends 300 mm forward and 400 mm to starboard of the carrier's corner is 500 mm away, less its half breadth.</summary>
    [Fact]
    public void Beyond_the_end_of_a_strut_its_end_is_what_is_near()
    {
        var job = Job(new TopCloth(SampleJobs.Mm(1800), SampleJobs.Mm(1800), new(SampleJobs.Mm(25), SampleJobs.Mm(0)), [], []) { Tubes = [Tube("strut", (200, 900), (700, 850))] }, 900, 474.6);
        var mounted = MountedShape.Of(job, LongSide.Athwart).At(new(SampleJobs.Mm(1250), SampleJobs.Mm(0)));

        // The carrier's forward starboard corner is (450, -1000); the strut's aft end (850, -700).
        var edge = Assert.Single(Clearances.Of(job, mounted), clearance => clearance.Kind == ClearanceKind.TubeEdge && clearance.Of == new PartKeys(job).CarrierEdge(Side.Starboard));
        Assert.Equal(500 - RadiusMm, edge.Distance.Millimeters, 1e-6);
    }

    /// <summary>A tube along the boat must pass under the ends of the carrier, but not lie along its sides; one across the boat the other way round.</summary>
    [Fact]
    public void What_a_tube_may_pass_under_depends_on_the_way_it_runs()
    {
        var top = new TopCloth(SampleJobs.Mm(1800), SampleJobs.Mm(1800), new(SampleJobs.Mm(25), SampleJobs.Mm(0)), [], []) { Tubes = [Tube("ridge", (0, 100), (1800, 120))] };
        var job = Job(top, 900, 474.6) with { Panel = SampleJobs.Panel(900, 474.6) with { Limits = SampleJobs.Panel(900, 474.6).Limits with { AllowsHardPoints = true } } };
        var mounted = MountedShape.Of(job, LongSide.Athwart).At(new(SampleJobs.Mm(900), SampleJobs.Mm(0)));

        var results = JobChecks.Of(PatternSet.Of(job, mounted)).Where(result => result.About.Parts.Contains(PartKey.Tube(1))).ToList();

        Assert.All(results.Where(result => result.Code == CheckCodes.TubeEdge), result => Assert.Equal(Verdict.Pass, result.Verdict));
        Assert.Equal(2, results.Count(result => result.Code == CheckCodes.TubeZipper && result.Verdict == Verdict.Caution));
        Assert.Single(results, result => result.Code == CheckCodes.TubeCells && result.Verdict == Verdict.Caution);
        Assert.Single(results, result => result.Code == CheckCodes.TubePatch);
    }

    /// <summary>A tube that carries the cloth shortens what gives when the wind pulls at an edge, so that the pull is no smaller than without it.</summary>
    [Fact]
    public void A_tube_beside_an_edge_makes_no_pull_smaller()
    {
        var bare = new TopCloth(SampleJobs.Mm(1800), SampleJobs.Mm(1800), new(SampleJobs.Mm(25), SampleJobs.Mm(0)), [], []);
        double PullOn(TopCloth top)
        {
            var job = Job(top, 900, 474.6);
            var mounted = MountedShape.Of(job, LongSide.Athwart).At(new(SampleJobs.Mm(900), SampleJobs.Mm(0)));
            var pull = JobChecks.Of(PatternSet.Of(job, mounted)).First(result => result.Code == CheckCodes.WindZipper);
            return ((UnitsNet.ForcePerLength)pull.Measured.Reading!.Value).NewtonsPerMeter;
        }

        Assert.True(PullOn(new(bare.Length, bare.Outline, bare.Edges) { Tubes = [Tube("brace", (500, -900), (450, 900))] }) > PullOn(bare));
    }

    [Theory]
    [InlineData(520, 180, 170)]
    [InlineData(600, 260, 150)]
    public void No_place_on_the_grid_has_a_larger_smallest_margin(double size, double length, double width)
    {
        var top = SampleTops.Of(SampleTops.Crooked(size), SampleJobs.BowAt(size * 0.95));
        ImmutableArray<TopTube> tubes = [Tube("brace", (size * 0.05, -size * 0.4), (size * 0.2, size * 0.42)), Tube("strut", (size * 0.9, -size * 0.5), (size * 0.3, -size * 0.3))];
        var job = Job(new(top.Length, top.Outline, top.Edges) { Bows = top.Bows, Tubes = tubes }, length, width);

        var choice = FitChoice.For(job);

        var best = BruteForce(job);
        Assert.True(best > 0, $"{best}");
        Assert.Equal(best, choice.Options[0].Spare.Millimeters, 1e-6);
        Assert.Equal(best, SpareOf(job, choice.Mounted), 1e-6);
    }

    /// <summary>A large top with hollow sides, round corners and slanted tubes: the search takes milliseconds where trying every place took a minute.</summary>
    [Fact]
    public void The_search_is_quick_on_a_large_crooked_top()
    {
        var top = SampleTops.Of(SampleTops.Crooked(3000), SampleJobs.BowAt(100), SampleJobs.BowAt(2900));
        var tubes = Enumerable.Range(0, 4).Select(i => Tube($"brace {i}", (600 + (500 * i), -1200), (400 + (550 * i), 1200)));
        var job = Job(new(top.Length, top.Outline, top.Edges) { Bows = top.Bows, Tubes = [.. tubes] }, 900, 400);
        var times = new List<double>();
        for (var i = 0; i < 8; i++)
        {
            var watch = Stopwatch.StartNew();
            FitChoice.For(job);
            times.Add(watch.Elapsed.TotalMilliseconds);
        }

        Assert.True(times.Min() < 300, $"{times.Min()} ms");
    }

    private static TopTube Tube(string name, (double Station, double Offset) from, (double Station, double Offset) to) =>
        new(name, Place(from), Place(to), SampleJobs.Mm(2 * RadiusMm));

    private static TopPlace Place((double Station, double Offset) at) => new(SampleJobs.Mm(at.Station), SampleJobs.Mm(at.Offset));

    private static CarrierJob Job(TopCloth top, double length, double width) => SampleJobs.Plain with { Top = top, Panel = SampleJobs.Panel(length, width) };

    private static double BruteForce(CarrierJob job)
    {
        var (shape, whole) = (MountedShape.Of(job, LongSide.Athwart), Plan.Of(job.Top));
        var best = double.NegativeInfinity;
        for (var y = Math.Ceiling(whole.Bottom / 5) * 5; y <= whole.Top; y += 5)
        {
            for (var x = Math.Ceiling(whole.Left / 5) * 5; x <= whole.Right; x += 5)
            {
                best = Math.Max(best, SpareOf(job, shape.MovedBy(new(x, y))));
            }
        }

        return best;
    }

    /// <summary>By NetTopologySuite; what lies on a tube or over the edge counts as no place at all.</summary>
    private static double SpareOf(CarrierJob job, MountedShape mounted)
    {
        ImmutableArray<NetTopologySuite.Geometries.Geometry> parts = [.. mounted.Parts.Select(part => Witness.ToPolygon(Outline.Of(part.Bounds)))];
        var top = Witness.ToPolygon(Plan.OutlineOf(job.Top));
        if (!parts.All(top.Contains))
        {
            return double.NegativeInfinity;
        }

        var boxes = mounted.Bounds.Append(mounted.CellBox);
        var bows = job.Top.Bows.SelectMany(bow => boxes.Select(box => Math.Max(box.Bottom + bow.Station.Millimeters, -bow.Station.Millimeters - box.Top) - RadiusMm - 10));
        var tubes = job.Top.Tubes.SelectMany(tube => HardOn(mounted, tube).Select(part => part.Distance(Line(Plan.Of(tube.From), Plan.Of(tube.To))) - RadiusMm - 10));
        return bows.Concat(tubes).Append(parts.Min(part => top.ExteriorRing.Distance(part)) - 25).Min();
    }

    /// <summary>Every one of them, for no part of the carrier's cells may lie on a tube, and its edges and pockets lie around them.</summary>
    private static IEnumerable<NetTopologySuite.Geometries.Geometry> HardOn(MountedShape mounted, TopTube tube)
    {
        var carrier = mounted.CarrierBox;
        yield return Witness.ToPolygon(Outline.Of(mounted.CellBox));
        foreach (var pocket in mounted.Fastened.Pockets)
        {
            yield return Witness.ToPolygon(Outline.Of(pocket.Outline.Bounds));
        }

        if (tube.RunsForeAft)
        {
            yield return Line(carrier.LowerLeft, new(carrier.Left, carrier.Top));
            yield return Line(new(carrier.Right, carrier.Bottom), new(carrier.Right, carrier.Top));
            yield break;
        }

        yield return Line(carrier.LowerLeft, new(carrier.Right, carrier.Bottom));
        yield return Line(new(carrier.Left, carrier.Top), new(carrier.Right, carrier.Top));
        foreach (var zipper in mounted.Fastened.Zippers)
        {
            yield return Witness.ToPolygon(Outline.Of(zipper.Band));
        }

        foreach (var strip in mounted.Fastened.StripsOnTop)
        {
            yield return Line(strip.Seam.From, strip.Seam.To);
        }
    }

    private static LineString Line(CanvasCut.Geometry.Point from, CanvasCut.Geometry.Point to) => new([new(from.X, from.Y), new(to.X, to.Y)]);
}
