using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using CanvasCut.Placing;
using CanvasCut.Tests.Patterns;

namespace CanvasCut.Tests.Placing;

/// <summary>Several mountings placed at once, held against trying every pair of places and against hand calculations.</summary>
public sealed class TogetherPlacesTests
{
    private const double GridMm = 20;

    /// <summary>The distances are measured here by NetTopologySuite and by hand, not by the rules of the search.</summary>
    [Theory]
    [InlineData(900, 1500, 0)]
    [InlineData(1500, 900, 300)]
    public void No_two_places_of_a_grid_are_better(double length, double width, double keepOutAt)
    {
        var keepOut = new KeepOut("window", (SampleJobs.Mm(keepOutAt), SampleJobs.Mm(keepOutAt + 60)), (SampleJobs.Mm(-40), SampleJobs.Mm(120)), SampleJobs.Mm(20));
        var top = new TopJob([.. new[] { "one", "other" }.Select(name => Job(name, SampleJobs.Top(length, width, [SampleJobs.BowAt(40)], keepOut), 260, 240))], [], 1);

        var placed = Placed(top);

        var brute = BruteForce(top, length, width);
        Assert.True(SpareOf(placed, length, width) >= brute - (FitChoice.GridMm / 2) - 1e-6, $"{SpareOf(placed, length, width)} against {brute}");
        Assert.Equal(SpareOf(placed, length, width), SmallestOf(placed), 1e-6);
    }

    [Fact]
    public void Twins_lie_as_far_to_port_as_to_starboard()
    {
        var port = Job("port", SampleJobs.Top(1200, 1800, [SampleJobs.BowAt(40), SampleJobs.BowAt(1160)]), 500, 300);
        var placed = Placed(new([port], [new(new("starboard"), new("port"))], 1));

        var (one, other) = (placed.Mountings[0].Fit.Mounted, placed.Mountings[1].Fit.Mounted);
        Assert.Equal(["port", "starboard"], placed.Mountings.Select(mounting => mounting.Job.Mounting.Text));
        Assert.Equal((-one.CarrierBox.Center.X, one.CarrierBox.Center.Y), (other.CarrierBox.Center.X, other.CarrierBox.Center.Y));
        Assert.Equal(
            one.Parts.Select(part => Rounded(part.Mirrored().Bounds)).Order(),
            other.Parts.Select(part => Rounded(part.Bounds)).Order());
        Assert.True(one.CarrierBox.Center.X < 0);
        Assert.True(Assert.Single(placed.Between).Distance > placed.Between[0].Needed);
    }

    [Fact]
    public void A_place_that_is_given_is_kept()
    {
        var given = Job("given", SampleJobs.Top(1200, 1800, []), 500, 300);
        given = given with { Carrier = given.Carrier with { Position = new(SampleJobs.Mm(333), SampleJobs.Mm(-411)) } };
        var placed = Placed(new([given, Job("free", given.Top, 500, 300)], [], 1));

        Assert.Equal(given.Carrier.Position, Plan.PlaceOf(placed.Mountings[0].Fit.Mounted.CarrierBox.Center));
        Assert.True(placed.Mountings[1].Fit.Mounted.CarrierBox.Center.X > 0);
    }

    /// <summary>By hand: what cannot lie side by side without touching is missed by as little as can be, and said so.</summary>
    [Fact]
    public void Two_that_do_not_fit_fall_short_by_as_little_as_can_be()
    {
        var top = SampleJobs.Top(420, 1000, []);
        var placed = Placed(new([Job("one", top, 500, 200), Job("other", top, 500, 200)], [], 1));

        var extent = placed.Mountings[0].Fit.Mounted.Extent;

        // Across there are 1000 - 2 x 25 of margin - 50 between: what two extents have more is shared by three gaps.
        var shared = (1000 - 50 - 50 - (2 * extent.WidthMm)) / 3;
        Assert.True(shared < 0);
        Assert.Equal(shared, SmallestOf(placed), FitChoice.GridMm / 2);
    }

    [Fact]
    public void Four_find_their_places_on_a_large_top()
    {
        var top = SampleJobs.Top(3000, 3000, [SampleJobs.BowAt(100), SampleJobs.BowAt(1100), SampleJobs.BowAt(2000), SampleJobs.BowAt(2900)]);
        var placed = Placed(new([.. new[] { "a", "b", "c", "d" }.Select(name => Job(name, top, 900, 500))], [], 1));

        Assert.True(SmallestOf(placed) > 0);
    }

    private static PlacedTop Placed(TopJob top) => PlacedTop.Of(top, TestContext.Current.CancellationToken);

    private static CarrierJob Job(string name, TopCloth top, double length, double width) =>
        SampleJobs.Plain with { Top = top, Panel = SampleJobs.Panel(length, width), Mounting = new(name) };

    private static (double Left, double Bottom, double Right, double Top) Rounded(Box box) =>
        (Math.Round(box.Left, 6), Math.Round(box.Bottom, 6), Math.Round(box.Right, 6), Math.Round(box.Top, 6));

    private static double SmallestOf(PlacedTop placed) => placed.Mountings.SelectMany(mounting => Clearances.Of(mounting.Job, mounting.Fit.Mounted))
        .Concat(placed.Between)
        .Min(clearance => (clearance.Distance - clearance.Needed).Millimeters);

    private static double SpareOf(PlacedTop placed, double length, double width) =>
        SpareOf([.. placed.Mountings.Select(mounting => (mounting.Job, mounting.Fit.Mounted))], length, width);

    private static double BruteForce(TopJob top, double length, double width)
    {
        var places = (from y in Steps(0, length) from x in Steps(-width / 2, width / 2) select new Step(x, -y)).ToList();
        var alone = top.Mountings.Select(job => places
            .Select(step => (Mounted: MountedShape.Of(job, LongSide.Athwart).MovedBy(step), Step: step))
            .Select(each => (each.Mounted, Spare: AloneOf(job, each.Mounted, length, width)))
            .OrderByDescending(each => each.Spare)
            .ToList()).ToArray();
        var best = double.NegativeInfinity;
        foreach (var one in alone[0].TakeWhile(each => each.Spare > best || double.IsNegativeInfinity(best)))
        {
            foreach (var other in alone[1].TakeWhile(each => each.Spare > best))
            {
                best = Math.Max(best, Math.Min(Math.Min(one.Spare, other.Spare), ClearStrip(one.Mounted.Extent, other.Mounted.Extent) - 50));
            }
        }

        return best;
    }

    private static IEnumerable<double> Steps(double from, double to)
    {
        for (var at = Math.Ceiling(from / GridMm) * GridMm; at <= to; at += GridMm)
        {
            yield return at;
        }
    }

    private static double ClearStrip(Box one, Box other) => Math.Max(Math.Max(one.Left - other.Right, other.Left - one.Right), Math.Max(one.Bottom - other.Top, other.Bottom - one.Top));

    private static double SpareOf((CarrierJob Job, MountedShape Mounted)[] all, double length, double width)
    {
        var between = all.SelectMany((one, index) => all.Skip(index + 1).Select(other => Witness.DistanceMm(Outline.Of(one.Mounted.Extent), Outline.Of(other.Mounted.Extent)) - 50));
        return all.Select(each => AloneOf(each.Job, each.Mounted, length, width)).Concat(between).Min();
    }

    private static double AloneOf(CarrierJob job, MountedShape mounted, double length, double width)
    {
        var boxes = mounted.Parts.Select(part => part.Bounds).ToList();
        var edge = boxes.Min(box => new[] { box.Left + (width / 2), (width / 2) - box.Right, -box.Top, box.Bottom + length }.Min()) - 25;
        var keepOuts = job.Top.KeepOuts.Select(keepOut => boxes.Min(box => Strip(box, Plan.Of(keepOut))) - 20);
        var tubes = job.Top.Bows.SelectMany(bow => boxes.Append(mounted.CellBox).Select(box => Math.Max(box.Bottom + bow.Station.Millimeters, -bow.Station.Millimeters - box.Top) - 12.7 - 10));
        return keepOuts.Concat(tubes).Append(edge).Min();
    }

    private static double Strip(Box box, Box keepOut)
    {
        var distance = Witness.DistanceMm(Outline.Of(box), Outline.Of(keepOut));
        return distance > 0 ? distance : ClearStrip(box, keepOut);
    }
}
