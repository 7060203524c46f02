using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using CanvasCut.Placing;
using CanvasCut.Tests.Patterns;

namespace CanvasCut.Tests.Placing;

/// <summary>The place chosen, against a search that tries every place of the grid and measures with NetTopologySuite.</summary>
public sealed class BestPlaceTests
{
    private const double Clear = 30;

    public static TheoryData<double, double, double> KeepOutCorners { get; } = new()
    {
        { 0, -400, 300 },
        { 520, -100, 160 },
        { 0, 150, 700 },
    };

    [Theory]
    [MemberData(nameof(KeepOutCorners))]
    public void No_place_on_the_grid_has_a_larger_smallest_margin(double station, double offset, double size)
    {
        var keepOut = new KeepOut(
            "window",
            (SampleJobs.Mm(station), SampleJobs.Mm(station + (size / 2))),
            (SampleJobs.Mm(offset), SampleJobs.Mm(offset + (size / 3))),
            SampleJobs.Mm(Clear));
        var job = SampleJobs.Plain with
        {
            Top = SampleJobs.Top(700, 800, [SampleJobs.BowAt(40), SampleJobs.BowAt(660)], keepOut),
            Panel = SampleJobs.Panel(260, 240),
        };

        var choice = FitChoice.For(job);

        var (best, places) = BruteForce(job);
        var chosen = Plan.PlaceOf(choice.Mounted.CarrierBox.Center);
        Assert.Equal(best, choice.Options[0].Spare.Millimeters, 1e-6);
        Assert.Contains(places, place => place == (chosen.Station.Millimeters, chosen.Offset.Millimeters));
        Assert.Equal(places.Min(place => Math.Abs(place.Offset)), Math.Abs(chosen.Offset.Millimeters));
    }

    [Fact]
    public void Without_keep_outs_the_carrier_lies_on_the_centreline_between_the_bows()
    {
        var chosen = Plan.PlaceOf(FitChoice.For(SampleJobs.Plain).Mounted.CarrierBox.Center);

        Assert.Equal(0, chosen.Offset.Millimeters);
        Assert.InRange(chosen.Station.Millimeters, 790, 810);
    }

    [Fact]
    public void A_panel_that_may_lie_either_way_takes_the_one_with_more_to_spare()
    {
        var narrow = SampleJobs.Plain with
        {
            Top = SampleJobs.Top(1600, 1250, [SampleJobs.BowAt(60), SampleJobs.BowAt(1540)]),
            Panel = SampleJobs.Panel(1100, 550, longSide: null),
        };
        var options = FitChoice.For(narrow).Options;

        Assert.Equal([LongSide.ForeAft, LongSide.Athwart], options.Select(option => option.LongSide));
        Assert.True(options[0].Spare > options[1].Spare);
    }

    [Fact]
    public void A_way_the_panel_may_not_be_bent_goes_behind()
    {
        var panel = SampleJobs.Panel(1100, 550, longSide: null);
        var job = SampleJobs.Plain with { Panel = panel with { Limits = panel.Limits with { Bends = BendAxis.Width } } };

        Assert.Equal(LongSide.ForeAft, FitChoice.For(job).Options[0].LongSide);
    }

    /// <summary>The largest smallest spare distance, and every place that has it.</summary>
    private static (double Spare, List<(double Station, double Offset)> Places) BruteForce(CarrierJob job)
    {
        var shape = MountedShape.Of(job, LongSide.Athwart);
        var found = new List<(double Spare, double Station, double Offset)>();
        for (var station = 0.0; station <= job.Top.Length.Millimeters; station += 5)
        {
            for (var offset = -400.0; offset <= 400; offset += 5)
            {
                found.Add((SpareOf(job, shape.At(new(SampleJobs.Mm(station), SampleJobs.Mm(offset)))), station, offset));
            }
        }

        var best = found.Max(place => place.Spare);
        return (best, [.. found.Where(place => place.Spare > best - 1e-6).Select(place => (place.Station, place.Offset))]);
    }

    private static double SpareOf(CarrierJob job, MountedShape mounted)
    {
        var boxes = mounted.Parts.Select(part => part.Bounds).ToList();
        var edge = boxes.Min(box => new[] { box.Left + 400, 400 - box.Right, -box.Top, box.Bottom + 700 }.Min()) - 25;
        if (edge < 0)
        {
            return edge;
        }

        var keepOuts = job.Top.KeepOuts.Select(keepOut => boxes.Min(box => Witness.DistanceMm(Outline.Of(box), Outline.Of(Plan.Of(keepOut)))) - Clear);
        var hard = boxes.Append(mounted.CellBox);
        var tubes = job.Top.Bows.SelectMany(bow => hard.Select(box => Math.Max(box.Bottom + bow.Station.Millimeters, -bow.Station.Millimeters - box.Top) - 12.7 - 10));
        return keepOuts.Concat(tubes).Append(edge).Min();
    }
}
