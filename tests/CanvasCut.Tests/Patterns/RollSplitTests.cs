using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;

namespace CanvasCut.Tests.Patterns;

public sealed class RollSplitTests
{
    private static readonly Gen<CarrierJob> WideJob = Gen.Select(
        Gen.Double[900, 2600], Gen.Double[300, 800], Gen.Double[450, 900], Gen.Bool, Gen.Bool).Select((length, width, roll, isFull, isAthwart) =>
            (SampleJobs.Plain with { Panel = SampleJobs.Panel(length, width) }).On(SampleJobs.Cloth with
            {
                Roll = new(SampleJobs.Mm(roll), SampleJobs.Mm(10), SampleJobs.Mm(100)),
                Lay = SampleJobs.Cloth.Lay with { Warp = isAthwart ? WarpDirection.Athwart : WarpDirection.ForeAft },
                Join = isFull ? FelledSeam.Full : FelledSeam.Semi,
            }));

    /// <summary>
    /// Every width fits the roll, the finished widths tile the finished piece without gap or overlap (areas and overlap by
    /// NetTopologySuite), and the cut widths take as much more cloth as the seams' allowances along their length.
    /// </summary>
    [Fact]
    public void The_widths_fit_the_roll_and_make_up_the_piece() =>
        WideJob.Sample(job =>
        {
            var patterns = PatternSet.Of(job, MountedShape.Of(job, LongSide.Athwart));
            var (whole, widths) = (patterns.WholeCarrier, patterns.CarrierPieces);

            Assert.All(widths, piece => Assert.InRange(piece.AcrossWarp.Millimeters, 0, job.Workshop.Cloth.Roll.UsableWidth.Millimeters + 1e-6));
            Assert.All(widths, CarrierPieceTests.AssertSound);
            Assert.Equal(whole.Shape.Finished.AreaMm2, widths.Sum(piece => Witness.ToPolygon(piece.Shape.Finished).Area), 1e-3);
            Assert.All(widths.Zip(widths.Skip(1)), pair => Assert.True(Witness.OverlapMm2(pair.First.Shape.Finished, pair.Second.Shape.Finished) < 1e-6));
            var taken = job.Workshop.Cloth.Join == FelledSeam.Full ? 38.1 : 25.4;
            var added = widths.Sum(piece => piece.AcrossWarp.Millimeters) - whole.AcrossWarp.Millimeters;
            Assert.Equal(taken * (widths.Length - 1), added, 1e-6);
        });

    /// <summary>A full felled seam: one width takes 1/2 in and the other 1 in (published sewing instructions for canopies).</summary>
    [Fact]
    public void A_full_felled_seam_takes_half_an_inch_and_an_inch()
    {
        var job = SampleJobs.Plain.On(SampleJobs.Cloth with { Roll = new(SampleJobs.Mm(900), SampleJobs.Mm(10), SampleJobs.Mm(100)) });
        var widths = PatternSet.Of(job, MountedShape.Of(job, LongSide.Athwart)).CarrierPieces;

        Assert.Equal(2, widths.Length);
        Assert.Equal(12.7, widths[0].Shape.Cut.Bounds.Right - widths[0].Shape.Finished.Bounds.Right, 1e-9);
        Assert.Equal(25.4, widths[1].Shape.Finished.Bounds.Left - widths[1].Shape.Cut.Bounds.Left, 1e-9);
    }

    [Fact]
    public void A_seam_keeps_clear_of_box_and_cable_where_it_can()
    {
        var panel = SampleJobs.Panel(1100, 550) with
        {
            Fittings = new(Sides.All(SampleJobs.Mm(15)), new(SampleJobs.Mm(500), SampleJobs.Mm(20), SampleJobs.Mm(100), SampleJobs.Mm(60), SampleJobs.Mm(15)), null),
        };
        var job = (SampleJobs.Plain with { Panel = panel }).On(SampleJobs.Cloth with { Roll = new(SampleJobs.Mm(900), SampleJobs.Mm(10), SampleJobs.Mm(100)) });
        var mounted = MountedShape.Of(job, LongSide.Athwart);
        var seam = PatternSet.Of(job, mounted).CarrierPieces[0].Shape.Finished.Bounds.Right;

        // The box lies from -50 to 50 about the middle, where the seam would go; 25.4 mm clear of it.
        Assert.InRange(Math.Abs(seam), 50 + 25.4, 85);
    }

    [Fact]
    public void A_piece_that_may_be_turned_on_the_roll_is_not_split()
    {
        var lay = SampleJobs.Cloth.Lay with { Turns = RollTurns.Quarter };
        var job = SampleJobs.Plain.On(SampleJobs.Cloth with { Roll = new(SampleJobs.Mm(900), SampleJobs.Mm(10), SampleJobs.Mm(100)), Lay = lay });

        Assert.Single(PatternSet.Of(job, MountedShape.Of(job, LongSide.Athwart)).CarrierPieces);
    }
}
