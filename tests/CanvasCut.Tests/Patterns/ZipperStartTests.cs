using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;

namespace CanvasCut.Tests.Patterns;

/// <summary>
/// By hand, for the sample job with nothing said of the start: a pocket covers (0 + 15) + (12.7 + 15) - 3 = 39.7 along both edges;
/// the outer edge of the tapes lies 9.5 + 19.05 = 28.55 out, where the mouth, at 45 degrees, has gone 28.55 further. With 10 of room
/// the zipper starts 78.25 from the corner, and runs 1100 - 25.4 - 78.25 = 996.35.
/// </summary>
public sealed class ZipperStartTests
{
    private static readonly CarrierJob Job = SampleJobs.Plain.With(zipper: SampleJobs.Zipper with { StartSetback = null });

    [Fact]
    public void A_zipper_starts_clear_of_the_pocket()
    {
        var mounted = MountedShape.Of(Job, LongSide.Athwart);

        Assert.Equal(2, mounted.Fastened.Zippers.Length);
        Assert.All(mounted.Fastened.Zippers, zipper =>
        {
            Assert.Equal(78.25, zipper.Choice.StartSetback.Millimeters, 1e-9);
            Assert.Equal(996.35, zipper.Choice.Run.Millimeters, 1e-9);
            Assert.Equal(-550 + 78.25, zipper.Start.X, 1e-9);
            Assert.Equal(550 - 25.4, zipper.Stop.X, 1e-9);
        });

        // Another way, from the two outlines (NetTopologySuite): the mouth slants, so 10 along the edge are 10 / √2 straight across.
        var pocket = mounted.Fastened.Pockets[0];
        Assert.Equal(10 / Math.Sqrt(2), Witness.DistanceMm(pocket.Outline, Outline.Of(mounted.Fastened.Zippers[0].Band)), 1e-6);
    }

    /// <summary>Heading to starboard, forward is to the left: the forward zipper's half on the top, which has the box, is its left one.</summary>
    [Theory]
    [InlineData(Side.Port, -1, true)]
    [InlineData(Side.Starboard, 1, false)]
    public void Both_zippers_start_at_the_side_that_is_named_and_are_a_left_and_a_right_one(Side start, int sign, bool forwardIsLeft)
    {
        var zippers = MountedShape.Of(Job.With(zipper: SampleJobs.Zipper with { Start = start }), LongSide.Athwart).Fastened.Zippers;

        Assert.All(zippers, zipper => Assert.Equal(sign, Math.Sign(zipper.Start.X)));
        Assert.All(zippers, zipper => Assert.Equal(start, zipper.StartSide));
        Assert.Equal([forwardIsLeft, !forwardIsLeft], zippers.Select(zipper => zipper.BoxIsLeft));
    }

    [Fact]
    public void A_zipper_at_a_side_starts_forward()
    {
        var job = Job.HeldAtSides(MountKind.Zipper, MountKind.Zipper);
        var sides = MountedShape.Of(job, LongSide.Athwart).Fastened.Zippers.Where(zipper => !zipper.IsEnd).ToList();

        Assert.Equal(2, sides.Count);
        Assert.All(sides, zipper => Assert.True(zipper.Start.Y > zipper.Stop.Y));
    }

    [Theory]
    [InlineData(78.25, Verdict.Pass)]
    [InlineData(78.2, Verdict.Caution)]
    public void A_start_under_a_pocket_is_told(double setback, Verdict verdict)
    {
        var job = SampleJobs.Plain.With(zipper: SampleJobs.Zipper with { StartSetback = SampleJobs.Mm(setback) });
        var results = JobChecks.Of(PatternSet.Of(job, MountedShape.Of(job, LongSide.Athwart).At(new(SampleJobs.Mm(800), SampleJobs.Mm(0)))))
            .Where(result => result.Code == CheckCodes.ZipperStart)
            .ToList();

        Assert.Equal(2, results.Count);
        Assert.All(results, result => Assert.Equal((verdict, 78.25), (result.Verdict, Math.Round(result.Measured.Limit!.Value.Millimeters, 6))));
    }

    [Fact]
    public void The_start_is_drawn_on_the_carrier_and_marked_on_the_top()
    {
        var mounted = MountedShape.Of(Job, LongSide.Athwart);
        var patterns = PatternSet.Of(Job, mounted.At(new(SampleJobs.Mm(800), SampleJobs.Mm(0))));
        var marks = patterns.WholeCarrier.Lines.Where(line => line.Text == "zipper starts here: pin").ToList();

        Assert.Equal(2, marks.Count);
        Assert.All(marks, mark => Assert.Equal(-550 + 78.25, mark.Points[0].X, 1e-9));
        Assert.Equal(
            ["forward zipper, chain, port end, where it starts", "aft zipper, chain, port end, where it starts"],
            TopMarks.Of(patterns.Mounted).Where(mark => mark.Name.Contains("starts", StringComparison.Ordinal)).Select(mark => mark.Name));
    }
}
