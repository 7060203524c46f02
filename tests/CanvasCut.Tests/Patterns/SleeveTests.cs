using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using NetTopologySuite.Geometries;
using UnitsNet;

namespace CanvasCut.Tests.Patterns;

/// <summary>
/// A rod in its sleeves, worked by hand for the plain job: run 1100 - 2 x 25.4 = 1049.2; rod 9.525, ease 12.7, so the girth is
/// 29.924 + 12.7 = 42.624, the depth 21.312 and the flap 12.7 + 6.35 + 21.312 = 40.362 deep.
/// </summary>
public sealed class SleeveTests
{
    private static readonly Gen<(double Half, double Radius)> AnyLoop = Gen.Select(Gen.Double[1, 60], Gen.Double[1, 4])
        .Select((radius, times) => (times * Math.PI * radius, radius));

    private static readonly Gen<(SleeveSpec Sleeve, double Run)> AnySleeve = Gen.Select(
        Gen.Int[40, 400], Gen.Int[0, 20], Gen.Int[4, 25], Gen.Int[8, 40], Gen.Double[1, 30])
        .Select((segment, gap, rod, ease, times) => (new SleeveSpec(Mm(rod), Mm(ease), Mm(segment), Mm(gap), null), (gap + 15) * 3 * times));

    /// <summary>The hull of the point and of a circle of 4000 corners, by NetTopologySuite, is twice the half girth round.</summary>
    [Fact]
    public void A_tight_loop_is_as_long_as_the_hull_of_its_circle_and_its_point() => AnyLoop.Sample(each =>
    {
        const int Corners = 4000;
        var middle = TautLoop.ToMiddleMm(each.Half, each.Radius);
        var circle = Enumerable.Range(0, Corners).Select(i => new Coordinate(
            middle + (each.Radius * Math.Cos(2 * Math.PI * i / Corners)), each.Radius * Math.Sin(2 * Math.PI * i / Corners)));
        var hull = new GeometryFactory().CreateMultiPointFromCoords([.. circle, new(0, 0)]).ConvexHull();

        Assert.Equal(2 * each.Half, hull.Length, each.Half * 1e-5);
    });

    [Fact]
    public void A_loop_that_does_not_go_round_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => TautLoop.ToMiddleMm(9.42, 3));

    /// <summary>By hand: 1049.2 / 101.6 = 10.33, so 11 lugs of 95.38, 6 on the carrier and 5 on the top; between them 89.03.</summary>
    [Fact]
    public void Lugs_are_divided_as_worked_out_by_hand()
    {
        var lugs = FlapOf(SampleJobs.Plain).Lugs!;

        Assert.Equal((11, 6, 5), (lugs.Count, lugs.OnCarrier, lugs.OnTop));
        Assert.Equal(95.382, lugs.Pitch.Millimeters, 1e-3);
        Assert.Equal(89.032, lugs.Lug.Millimeters, 1e-3);
    }

    /// <summary>By hand: 20 is the rod's half circumference and the ease 2 x 10, so girth 60 and depth 30.</summary>
    [Fact]
    public void Girth_and_bore_are_those_of_the_formula()
    {
        var sleeve = new SleeveSpec(Mm(40 / Math.PI), Mm(20), Mm(100), Mm(5), null);

        Assert.Equal((60, 30), (sleeve.Girth.Millimeters, sleeve.Depth.Millimeters));
        Assert.Equal(60 / Math.PI, sleeve.Bore.Millimeters, 1e-9);
        Assert.Equal(4000 / Math.PI, sleeve.LeastRadius.Millimeters, 1e-9);
    }

    /// <summary>Odd, all alike, none longer than asked unless one more would leave lugs too short, and never too short.</summary>
    [Fact]
    public void Any_run_is_divided_into_an_odd_number_of_lugs() => AnySleeve.Sample(each =>
    {
        var lugs = LugRow.Along(Mm(each.Run), each.Sleeve);

        Assert.Equal(1, lugs.Count % 2);
        Assert.InRange(lugs.Lug.Millimeters, 15 - 1e-6, each.Run);
        Assert.True(lugs.Pitch <= each.Sleeve.Segment || each.Run / (lugs.Count + 2) < each.Sleeve.Gap.Millimeters + 15);
        Assert.True(lugs.Count == 3 || each.Run / (lugs.Count - 2) > each.Sleeve.Segment.Millimeters - 1e-6);
    });

    /// <summary>No lug of the carrier lies on one of the top; all gaps measure the gap; together they fill the run.</summary>
    [Fact]
    public void Lugs_take_turns_along_the_rod() => AnySleeve.Sample(each =>
    {
        var job = With(each.Sleeve, Mm(each.Run));
        var boxes = SleeveLug.Of(FlapOf(job)).ToList();

        Assert.Equal(boxes.Select((_, i) => i % 2 == 1), boxes.Select(lug => lug.IsOnTop));
        Assert.All(boxes.Zip(boxes.Skip(1)), pair => Assert.Equal(each.Sleeve.Gap.Millimeters, pair.Second.Box.Left - pair.First.Box.Right, 1e-6));
        Assert.Equal(each.Run, boxes[^1].Box.Right - boxes[0].Box.Left, 1e-6);
        var rod = FlapOf(job).Rod!.Value;
        Assert.All(boxes, lug => Assert.True(lug.Box.Grown(1e-6).Bottom <= rod.Bottom && lug.Box.Grown(1e-6).Top >= rod.Top));
    });

    /// <summary>
    /// By hand: the carrier's sleeve 1049.2 by 40.362, cut 1049.2 + 25.4 by 2 x 40.362 + 25.4; the top's shorter at each end by a
    /// pitch and half a gap, 95.382 + 3.175.
    /// </summary>
    [Theory]
    [InlineData("mount-flap-forward", 1049.2, 1074.6, 5)]
    [InlineData("mount-strip-forward", 852.086, 877.486, 4)]
    public void A_sleeve_is_cut_as_worked_out_by_hand(string id, double run, double cut, int openings)
    {
        var piece = Piece(id);

        Assert.Equal(run, piece.FinishedSize.Athwart.Millimeters, 1e-3);
        Assert.Equal(40.362, piece.FinishedSize.ForeAft.Millimeters, 1e-3);
        Assert.Equal(cut, piece.CutSize.Athwart.Millimeters, 1e-3);
        Assert.Equal(106.124, piece.CutSize.ForeAft.Millimeters, 1e-3);
        Assert.Equal(openings, Openings(piece).Count);
    }

    /// <summary>By hand: an opening is a pitch and a gap long, 101.732, and reaches 21.312 - 3 to both sides of the fold.</summary>
    [Fact]
    public void Openings_lie_across_the_fold_and_leave_the_row_whole()
    {
        var piece = Piece("mount-flap-forward");
        var fold = piece.Shape.Finished.Bounds.Top;

        Assert.All(Openings(piece), opening =>
        {
            Assert.Equal((101.732, 36.624), (Math.Round(opening.WidthMm, 3), Math.Round(opening.HeightMm, 3)));
            Assert.Equal(fold, opening.Center.Y, 1e-9);
        });
        var row = piece.Lines.Single(line => line.Use?.Kind == RowKind.Sleeve);
        Assert.Equal(3, Openings(piece)[0].Bottom - row.Points[0].Y, 1e-9);
    }

    /// <summary>The rod's middle from the edge, by hand: 6.35 + 12.945, for √(12.945² - 4.7625²) + 4.7625 (π/2 + asin(4.7625/12.945)) = 21.312.</summary>
    [Fact]
    public void The_rod_lies_where_both_sleeves_are_tight()
    {
        var mounted = MountedShape.Of(SampleJobs.Plain.Held(MountKind.Sleeve, MountKind.Zipper), LongSide.Athwart);
        var flap = mounted.Fastened.Flaps.Single();

        Assert.Equal(19.295, flap.LineY - mounted.CarrierBox.Top, 1e-3);
        Assert.Equal(51.29, flap.Band.Top - mounted.CarrierBox.Top, 2e-3);
        Assert.Equal(1049.2 + 38.1, flap.Rod!.Value.WidthMm, 1e-9);
        Assert.Equal(51.29 + 12.35, mounted.Fastened.Pockets[0].OutY.Millimeters, 2e-3);
    }

    /// <summary>By hand: two plies of the strip at the row beside the fold, four where its ends are turned.</summary>
    [Fact]
    public void The_row_beside_the_fold_goes_through_two_plies()
    {
        var seam = Assert.Single(JobSeams.Of(PatternsOf()), seam => seam.Name == "Flap for rod sleeve, forward, row beside the fold");

        Assert.Equal(new LayerCount(2), seam.Usual);
        Assert.Equal(1049.2, seam.Sewn.Millimeters, 1e-6);
        Assert.Equal(4, seam.Thickest(SampleJobs.Supplies).Plies);
    }

    /// <summary>By hand: cover and plug 2, four corners 4, the stop and the rod 2, a zipper 1.</summary>
    [Fact]
    public void A_stop_and_a_rod_are_two_movements() => Assert.Equal(9, RemovalActions.Of(PatternsOf().Mounted.Fastened));

    private static List<Box> Openings(PatternPiece piece) =>
        [.. piece.Lines.Where(line => line.Text == "cut out").Select(line => Box.Holding(line.Points)).OrderBy(box => box.Left)];

    private static PatternPiece Piece(string id) => PatternsOf().Pieces.Single(piece => piece.Key.Id == id);

    private static PatternSet PatternsOf()
    {
        var job = SampleJobs.Plain.Held(MountKind.Sleeve, MountKind.Zipper);
        return PatternSet.Of(job, MountedShape.Of(job, LongSide.Athwart).MovedBy(new(0, -800)));
    }

    private static FlapPlace FlapOf(CarrierJob job) =>
        MountedShape.Of(job.Held(MountKind.Sleeve, MountKind.Zipper), LongSide.Athwart).Fastened.Flaps.Single();

    /// <summary>A job whose sleeve runs so far.</summary>
    private static CarrierJob With(SleeveSpec sleeve, Length run)
    {
        var mount = SampleJobs.Plain.Fastenings.Mount;
        return SampleJobs.Plain with
        {
            Panel = SampleJobs.Panel(run.Millimeters + 50.8, 550),
            Fastenings = SampleJobs.Plain.Fastenings with { Mount = mount with { Figures = mount.Figures with { Sleeve = sleeve } } },
        };
    }

    private static Length Mm(double value) => SampleJobs.Mm(value);
}
