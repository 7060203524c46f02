using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Tests.Patterns;

public sealed class CarrierPieceTests
{
    private static readonly Gen<double> Allowance = Gen.Double[2, 60];

    /// <summary>
    /// US Army FM 10-16, General Fabric Repair: a canvas hem takes a turn of 1/2 in and a hem of 1 in, so 1 1/2 in
    /// (38.1 mm) an edge; 1000 mm finished with both edges hemmed is cut 1076.2 mm.
    /// </summary>
    [Fact]
    public void A_hemmed_edge_takes_the_armys_inch_and_a_half()
    {
        var carrier = CarrierOf(SampleJobs.Plain with { Panel = SampleJobs.Panel(1000, 500) });

        Assert.Equal(1000, carrier.FinishedSize.Athwart.Millimeters, 1e-9);
        Assert.Equal(1076.2, carrier.CutSize.Athwart.Millimeters, 1e-9);
        Assert.Equal(500 + 25.4 + 76.2, carrier.CutSize.ForeAft.Millimeters, 1e-9);
    }

    [Fact]
    public void A_bound_edge_is_cut_at_its_finished_size()
    {
        var edges = new Sides<EdgeFinish>(EdgeFinish.Hem, EdgeFinish.Binding, EdgeFinish.Binding, EdgeFinish.Hem);
        var carrier = CarrierOf(SampleJobs.Plain with { Carrier = SampleJobs.Carrier with { Edges = edges } });
        var (finished, cut) = (carrier.Shape.Finished.Bounds, carrier.Shape.Cut.Bounds);

        Assert.Equal([0, 0, 38.1, 38.1], Rounded(finished.Left - cut.Left, finished.Bottom - cut.Bottom, cut.Right - finished.Right, cut.Top - finished.Top));
    }

    /// <summary>The trim leaves 6 mm outside the mitre's fold: common practice, no source. It stands at 45 degrees.</summary>
    [Fact]
    public void A_mitred_corner_is_trimmed_six_millimetres_outside_the_fold()
    {
        var carrier = CarrierOf(SampleJobs.Plain);
        var corner = new Point(carrier.Shape.Finished.Bounds.Right, carrier.Shape.Finished.Bounds.Top);

        Assert.Equal(8, carrier.Shape.Cut.Count);
        var trim = Enumerable.Range(0, 8).Select(i => (From: carrier.Shape.Cut[i], To: carrier.Shape.Cut[i + 1]))
            .Single(edge => edge.From.X > corner.X - 1 && edge.To.Y > corner.Y - 1 && Math.Abs(edge.From.X - edge.To.X) > 1 && Math.Abs(edge.From.Y - edge.To.Y) > 1);
        Assert.Equal(6, Witness.ToPolygon(carrier.Shape.Cut).Boundary.Distance(PointAt(corner)), 1e-9);
        Assert.Equal(trim.From.X - trim.To.X, trim.To.Y - trim.From.Y, 1e-9);
    }

    [Fact]
    public void A_square_corner_keeps_all_its_cloth() =>
        Assert.Equal(4, CarrierOf(SampleJobs.Plain with { Carrier = SampleJobs.Carrier with { Corner = CornerKind.Square } }).Shape.Cut.Count);

    /// <summary>
    /// Whatever the borders and hems: NetTopologySuite finds both outlines valid and the finished one inside the cut one,
    /// each cut edge lies its allowance outside, and the cut area is the rectangle's less the four trimmed corners, each
    /// a right-angled triangle worked out from its two legs.
    /// </summary>
    [Fact]
    public void Every_carrier_holds_its_finished_outline_and_has_the_area_of_its_parts() =>
        Gen.Select(Gen.Double[300, 1400], Gen.Double[250, 800], Gen.Double[0, 60].Array[4], Allowance, Allowance).Sample((length, width, borders, turn, hem) =>
        {
            var spec = SampleJobs.Carrier with
            {
                Border = new(Length.FromMillimeters(borders[0]), Length.FromMillimeters(borders[1]), Length.FromMillimeters(borders[2]), Length.FromMillimeters(borders[3])),
                Hem = new(Length.FromMillimeters(turn), Length.FromMillimeters(hem)),
            };
            var carrier = CarrierOf(SampleJobs.Plain with { Panel = SampleJobs.Panel(Math.Max(length, width), Math.Min(length, width)), Carrier = spec });
            var allowance = turn + hem;

            AssertSound(carrier);
            Assert.Equal(allowance, carrier.Shape.Finished.Bounds.Left - carrier.Shape.Cut.Bounds.Left, 1e-9);
            var leg = Math.Max(0, (2 * allowance) - (6 * Math.Sqrt(2)));
            var rectangle = carrier.CutSize.Athwart.Millimeters * carrier.CutSize.ForeAft.Millimeters;
            Assert.Equal(rectangle - (4 * leg * leg / 2), Witness.ToPolygon(carrier.Shape.Cut).Area, 1e-3);
        });

    /// <summary>Finished size divided by what shrinkage leaves: 1000 mm at 2 % is cut for 1020.41 mm (arithmetic).</summary>
    [Fact]
    public void A_carrier_is_cut_larger_for_shrinkage_along_warp_and_fill()
    {
        var job = (SampleJobs.Plain with { Panel = SampleJobs.Panel(1000, 500) }).On(SampleJobs.Cloth with { Shrink = new(0.01, 0.02) });
        var carrier = CarrierOf(job);

        Assert.Equal(1020.408, carrier.FinishedSize.Athwart.Millimeters, 1e-3);
        Assert.Equal(525.4 / 0.99, carrier.FinishedSize.ForeAft.Millimeters, 1e-9);
    }

    [Fact]
    public void The_hem_row_lies_three_millimetres_inside_the_inner_fold()
    {
        var carrier = CarrierOf(SampleJobs.Plain);
        var right = carrier.Shape.Finished.Bounds.Right;

        Assert.Contains(carrier.Lines, line => line.Kind == PieceLineKind.Stitch && line.Points.All(point => Math.Abs(right - 22.4 - point.X) < 1e-9));
        Assert.Contains(carrier.Lines, line => line.Kind == PieceLineKind.Fold && line.Points.All(point => Math.Abs(right + 25.4 - point.X) < 1e-9));
    }

    internal static void AssertSound(PatternPiece piece)
    {
        Assert.True(Witness.IsValid(piece.Shape.Finished), $"{piece.Key.Id}: finished outline");
        Assert.True(Witness.IsValid(piece.Shape.Cut), $"{piece.Key.Id}: cut outline");
        Assert.True(Witness.OutsideMm2(piece.Shape.Finished, piece.Shape.Cut) < 1e-6, $"{piece.Key.Id}: finished sticks out of cut");
    }

    private static PatternPiece CarrierOf(CarrierJob job) => PatternSet.Of(job, MountedShape.Of(job, LongSide.Athwart)).WholeCarrier;

    private static double[] Rounded(params double[] values) => [.. values.Select(value => Math.Round(value, 9))];

    private static NetTopologySuite.Geometries.Point PointAt(Point point) => new(point.X, point.Y);
}
