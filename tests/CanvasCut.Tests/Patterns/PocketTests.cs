using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;

namespace CanvasCut.Tests.Patterns;

public sealed class PocketTests
{
    private static readonly Gen<CarrierJob> AnyJob =
        Gen.Select(Gen.Double[5, 40], Gen.Double[0, 60].Array[4], Gen.Double[3, 30], Gen.Bool, Gen.Double[5, 30]).Select((dead, borders, ease, over, mouth) =>
            (SampleJobs.Plain with
            {
                Panel = SampleJobs.Panel(1100, 550, dead),
                Carrier = SampleJobs.Carrier with { Border = new(SampleJobs.Mm(borders[0]), SampleJobs.Mm(borders[1]), SampleJobs.Mm(borders[2]), SampleJobs.Mm(borders[3])) },
            }).With(pocket: new(null, SampleJobs.Mm(ease), new(SampleJobs.Mm(mouth), SampleJobs.Mm(mouth)), SampleJobs.Mm(12), over)));

    /// <summary>
    /// The largest pocket stays 3 mm (measured along the edges, so 3/√2 square to the mouth) from the cells: measured by
    /// NetTopologySuite between the drawn outlines. A pocket 1 mm larger in leg comes nearer by 1/√2.
    /// </summary>
    [Fact]
    public void The_largest_pocket_shades_nothing_and_a_larger_one_comes_nearer() =>
        AnyJob.Sample(job =>
        {
            var mounted = MountedShape.Of(job, LongSide.Athwart);
            foreach (var pocket in mounted.Fastened.Pockets.Where(pocket => pocket.Covers.Millimeters > 0))
            {
                if (pocket.Covers.Millimeters >= 25.4)
                {
                    // No larger than it must be to hold or than can be fitted.
                    Assert.True(Witness.DistanceMm(pocket.Outline, Outline.Of(mounted.CellBox)) >= (3 / Math.Sqrt(2)) - 1e-6);
                    continue;
                }

                var cells = Outline.Of(mounted.CellBox);
                Assert.Equal(3 / Math.Sqrt(2), Witness.DistanceMm(pocket.Outline, cells), 1e-6);
                Assert.Equal(2 / Math.Sqrt(2), Witness.DistanceMm((pocket with { Leg = pocket.Leg + SampleJobs.Mm(1) }).Outline, cells), 1e-6);
            }
        });

    /// <summary>The mouth crosses each edge of the carrier as far from its corner as the pocket says it covers.</summary>
    [Fact]
    public void A_pocket_covers_as_much_of_both_edges_as_it_says() =>
        AnyJob.Sample(job =>
        {
            var mounted = MountedShape.Of(job, LongSide.Athwart);
            foreach (var pocket in mounted.Fastened.Pockets.Where(pocket => pocket.Covers.Millimeters > 1))
            {
                var overlap = Witness.ToPolygon(Outline.Of(mounted.CarrierBox)).Intersection(Witness.ToPolygon(pocket.Outline));
                Assert.Equal(pocket.Covers.Millimeters, overlap.EnvelopeInternal.Width, 1e-6);
                Assert.Equal(pocket.Covers.Millimeters, overlap.EnvelopeInternal.Height, 1e-6);
                Assert.Equal(pocket.Covers.Millimeters * pocket.Covers.Millimeters / 2, overlap.Area, 1e-6);
            }
        });

    /// <summary>Worked by hand: 12.7 + 15 along one edge and 0 + 15 along the other, less 3, is 39.7 covered.</summary>
    [Theory]
    [InlineData(true, 39.7 + 12.35 + 40.9)]
    [InlineData(false, 39.7 + 12.35 + 12.35)]
    public void The_automatic_leg_is_what_a_hand_calculation_gives(bool overZipper, double leg)
    {
        var job = SampleJobs.Plain.With(pocket: SampleJobs.Pocket with { OverZipper = overZipper });

        Assert.All(MountedShape.Of(job, LongSide.Athwart).Fastened.Pockets, pocket => Assert.Equal(leg, pocket.Leg.Millimeters, 1e-9));
    }

    [Fact]
    public void Port_and_starboard_pockets_are_mirror_images_drawn_separately() =>
        AnyJob.Sample(job =>
        {
            var pieces = PatternSet.Of(job with { Carrier = job.Carrier with { Border = Sides.All(SampleJobs.Mm(12)) } }, MountedShape.Of(job, LongSide.Athwart)).TopPieces;
            var (port, starboard) = (Find(pieces, "pocket-forward-port"), Find(pieces, "pocket-forward-starboard"));
            Assert.Equal((Hand.Port, Hand.Starboard), (port.Title.Hand, starboard.Title.Hand));
            if (Math.Abs(port.FinishedSize.Athwart.Millimeters - starboard.FinishedSize.Athwart.Millimeters) < 1e-9)
            {
                Assert.True(Witness.ToPolygon(port.Shape.Cut.Mirrored()).EqualsTopologically(Witness.ToPolygon(starboard.Shape.Cut))
                    || Witness.ToPolygon(port.Shape.Cut.Mirrored()).SymmetricDifference(Witness.ToPolygon(starboard.Shape.Cut)).Area < 1e-6);
            }
        });

    /// <summary>
    /// The cut pocket by NetTopologySuite: valid, round the finished one, the seam allowance beyond each leg, the mouth's
    /// allowance beyond the mouth, and no acute tip left further out than the seam allowance.
    /// </summary>
    [Fact]
    public void A_cut_pocket_lies_its_allowances_outside() =>
        AnyJob.Sample(job =>
        {
            // A hem deeper than the pocket is high, which the checks refuse, has no tips left to trim.
            var mouth = job.Fastenings.Pocket.Mouth.Allowance.Millimeters;
            foreach (var piece in PatternSet.Of(job, MountedShape.Of(job, LongSide.Athwart)).TopPieces.Where(piece =>
                piece.Key.Id.StartsWith("pocket", StringComparison.Ordinal) && piece.FinishedSize.Athwart.Millimeters > mouth * Math.Sqrt(2)))
            {
                CarrierPieceTests.AssertSound(piece);
                var (finished, cut) = (piece.Shape.Finished.Bounds, piece.Shape.Cut.Bounds);
                Assert.Equal(12, finished.Left - cut.Left, 1e-9);
                Assert.Equal(12, cut.Right - finished.Right, 1e-9);
                Assert.Equal(12, finished.Bottom - cut.Bottom, 1e-9);
                Assert.Equal(12, cut.Top - finished.Top, 1e-9);
                Assert.Equal(5, piece.Shape.Cut.Count);
                Assert.Equal(mouth, MouthAllowance(piece), 1e-9);
            }
        });

    private static double MouthAllowance(PatternPiece piece)
    {
        var finished = piece.Shape.Finished.Corners.Where(corner => corner != new Point(0, 0)).ToList();
        var along = (finished[1] - finished[0]).Unit();
        return piece.Shape.Cut.Corners.Max(corner => Math.Abs(along.Cross(corner - finished[0]))
            * Math.Sign(along.Cross(corner - finished[0]) * -along.Cross(new Point(0, 0) - finished[0])));
    }

    private static PatternPiece Find(IEnumerable<PatternPiece> pieces, string id) => pieces.Single(piece => piece.Key.Id == id);
}
