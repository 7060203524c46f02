using System.Collections.Immutable;
using System.Diagnostics;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using CanvasCut.Placing;
using CanvasCut.Tests.Patterns;
using NetTopologySuite.Geometries;

namespace CanvasCut.Tests.Placing;

/// <summary>The margin to a top's edge that is no rectangle, and the best place on it.</summary>
public sealed class OutlinePlacesTests
{
    /// <summary>
    /// By hand: the port edge runs from (-800, 0) to (-1000, -2000); 1 mm along it is (-0.0995037, -0.9950372). A carrier of 1000 by 500 with its
    /// middle at (0, -800) has its forward port corner at (-500, -550). From (-800, 0) to there it is (300, -550): the distance from the edge is
    /// the cross product, -0.0995037 x -550 + 0.9950372 x 300 = 54.7270 + 298.5112 = 353.2382.
    /// </summary>
    [Fact]
    public void The_distance_from_a_tapering_edge_is_that_of_a_point_from_a_line()
    {
        var top = SampleTops.Of(new(SampleJobs.Mm(2000), [SampleTops.At(0, 800, 800), SampleTops.At(2000, 1000, 1000)]));
        var carrier = Box.Around(new(0, -800), 1000, 500);

        Assert.Equal(353.2382, TopRim.InsideMm(top, Side.Port, carrier), 1e-3);
        Assert.Equal(353.2382, TopRim.InsideMm(top, Side.Starboard, carrier), 1e-3);
        Assert.Equal(550, TopRim.InsideMm(top, Side.Forward, carrier), 1e-9);

        // Moved 400 mm to port it reaches over the edge: 353.2382 - 400 x 0.9950372 = -44.7767.
        Assert.Equal(-44.7767, TopRim.InsideMm(top, Side.Port, carrier.MovedBy(new(-400, 0))), 1e-3);
    }

    /// <summary>By hand: a hollow of 40 mm halfway along a 2 m side; what lies beside its middle is 40 mm nearer to the edge than the straight side.</summary>
    [Fact]
    public void A_hollow_edge_comes_nearer()
    {
        var top = SampleTops.Of(new(SampleJobs.Mm(2000), [SampleTops.At(0, 900, 900, 40), SampleTops.At(2000, 900, 900)]));
        var carrier = Box.Around(new(0, -1000), 1000, 500);

        Assert.Equal(900 - 40 - 500, TopRim.InsideMm(top, Side.Port, carrier), 0.1);
        Assert.True(TopRim.InsideMm(top, Side.Port, carrier.MovedBy(new(-370, 0))) < 0);
    }

    [Theory]
    [InlineData(560, 180, 170)]
    [InlineData(600, 260, 210)]
    [InlineData(400, 420, 380)]
    public void No_place_on_the_grid_has_a_larger_smallest_margin(double size, double length, double width)
    {
        var job = SampleJobs.Plain with
        {
            Top = SampleTops.Of(SampleTops.Crooked(size), SampleJobs.BowAt(size * 0.1), SampleJobs.BowAt(size * 0.9)),
            Panel = SampleJobs.Panel(length, width),
        };

        var choice = FitChoice.For(job);

        var best = BruteForce(job);
        var chosen = choice.Options[0].Spare.Millimeters;
        Assert.True(chosen >= best - 1e-6, $"{chosen} against {best}");
        if (best > 0)
        {
            Assert.Equal(best, chosen, 1e-6);
            Assert.Equal(chosen, SpareOf(job, choice.Mounted), 1e-6);
        }
    }

    /// <summary>Where something is too near, verdict and search still measure the same.</summary>
    [Fact]
    public void The_spare_told_is_that_of_the_clearances()
    {
        var job = SampleJobs.Plain with { Top = SampleTops.Of(SampleTops.Crooked(900)), Panel = SampleJobs.Panel(1100, 550) };
        var choice = FitChoice.For(job);

        Assert.True(choice.Options[0].Spare.Millimeters < 0);
        Assert.Equal(choice.Options[0].Spare.Millimeters, Clearances.Of(job, choice.Mounted).Min(clearance => (clearance.Distance - clearance.Needed).Millimeters), 1e-9);
    }

    [Fact]
    public void The_same_rectangle_given_by_stations_gives_the_same_place()
    {
        var shape = new TopShape(SampleJobs.Mm(1600), [SampleTops.At(0, 900, 900), SampleTops.At(1600, 900, 900)]);
        var byStations = SampleJobs.Plain with { Top = SampleTops.Of(shape, [.. SampleJobs.Plain.Top.Bows]) };

        Assert.Equal(FitChoice.For(SampleJobs.Plain).Options, FitChoice.For(byStations).Options);
    }

    [Fact]
    public void Twins_find_their_places_on_a_top_that_is_wider_aft()
    {
        var shape = new TopShape(SampleJobs.Mm(1600), [SampleTops.At(0, 900, 900, 30), SampleTops.At(1600, 1200, 1200)]) { Corners = SampleTops.Rounded(120) };
        var job = SampleJobs.Plain with { Top = SampleTops.Of(shape, SampleJobs.BowAt(60), SampleJobs.BowAt(1540)), Panel = SampleJobs.Panel(700, 500), Mounting = new("port") };

        var watch = Stopwatch.StartNew();
        var placed = PlacedTop.Of(new([job], [new(new("starboard"), new("port"))], 1), TestContext.Current.CancellationToken);

        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(5), $"{watch.Elapsed}");
        Assert.All(placed.Mountings, mounting => Assert.True(SpareOf(mounting.Job, mounting.Fit.Mounted) > 0));
        Assert.Equal(-placed.Mountings[0].Fit.Mounted.CarrierBox.Center.X, placed.Mountings[1].Fit.Mounted.CarrierBox.Center.X, 1e-9);
    }

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

    /// <summary>The smallest spare by NetTopologySuite; how far something reaches over the edge is not measured, only that it does.</summary>
    private static double SpareOf(CarrierJob job, MountedShape mounted)
    {
        ImmutableArray<Polygon> parts = [.. mounted.Parts.Select(part => Witness.ToPolygon(Outline.Of(part.Bounds)))];
        var top = Witness.ToPolygon(Plan.OutlineOf(job.Top));
        if (!parts.All(top.Contains))
        {
            return double.NegativeInfinity;
        }

        var boxes = mounted.Parts.Select(part => part.Bounds).Append(mounted.CellBox);
        var tubes = job.Top.Bows.SelectMany(bow => boxes.Select(box => Math.Max(box.Bottom + bow.Station.Millimeters, -bow.Station.Millimeters - box.Top) - 12.7 - 10));
        return tubes.Append(parts.Min(part => top.ExteriorRing.Distance(part)) - 25).Min();
    }
}
