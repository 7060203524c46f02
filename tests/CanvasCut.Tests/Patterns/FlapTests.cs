using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using CanvasCut.Placing;
using UnitsNet;

namespace CanvasCut.Tests.Patterns;

/// <summary>
/// What holds the edges in the place of zippers, worked by hand for the plain job: the carrier's edge is 1100 mm, so a flap
/// with 1 in of setback is 1100 - 2 x 25.4 = 1049.2 mm long.
/// </summary>
public sealed class FlapTests
{
    /// <summary>
    /// By hand: a flap's corner is trimmed 2 mm outside its fold, so where both turned edges meet the needle finds the cloth, one turned edge and what was kept, 3, and
    /// folded in half 6; the carrier's edge has 2 plies there, the top one: 8 and 7, of 0.5 mm no more than 4 mm. Square corners had 8 and so 10 and 9.
    /// </summary>
    [Theory]
    [InlineData(MountKind.Snaps)]
    [InlineData(MountKind.Twist)]
    [InlineData(MountKind.Lacing)]
    [InlineData(MountKind.HookAndLoop)]
    [InlineData(MountKind.Sleeve)]
    public void No_flap_is_too_thick_for_the_needle(MountKind kind)
    {
        var job = SampleJobs.Plain.Held(kind, kind);
        var patterns = PatternSet.Of(job, MountedShape.Of(job, LongSide.Athwart));
        var seams = JobSeams.Of(patterns).Where(seam => seam.Kind == SeamKind.Mount || seam.Pieces.Any(key => key.Kind is PieceKind.MountFlap or PieceKind.MountStrip)).ToList();
        int Most(Func<SewnSeam, bool> isMeant) => seams.Where(isMeant).Max(seam => seam.Thickest(job.Workshop.Supplies).Plies);

        Assert.Equal(8, Most(seam => seam.Pieces.Any(key => key.Kind == PieceKind.Carrier)));
        Assert.All(seams, seam => Assert.True(seam.Thickest(job.Workshop.Supplies).Thickness(job.Workshop.Supplies).Millimeters <= 4 + 1e-9, seam.Name));
        if (kind is MountKind.Lacing or MountKind.Sleeve)
        {
            Assert.Equal(7, Most(seam => seam.Kind == SeamKind.Edges));
        }
    }

    /// <summary>A pitch, an end distance and a run, all whole millimetres.</summary>
    private static readonly Gen<(int Pitch, int End, int Run)> AnyRow = Gen.Select(Gen.Int[10, 400], Gen.Int[0, 150], Gen.Int[1, 2500])
        .Select((pitch, end, between) => (pitch, end, between + (2 * end)));

    private static readonly Gen<(MountKind Forward, MountKind Aft, FastenerSpec Spec)> AnyMount = Gen.Select(
        Gen.Int[0, 4], Gen.Int[0, 4], Gen.Int[20, 200], Gen.Int[10, 200], Gen.Int[16, 60])
        .Select((forward, aft, pitch, end, width) => ((MountKind)forward, (MountKind)aft, new FastenerSpec(Mm(width), new(Mm(pitch), Mm(end)), Mm(15), null)));

    /// <summary>
    /// Snaps: 1049.2 - 2 x 63.5 = 922.2; by 101.6 9.08, so 10 spaces of 92.22 and 11 snaps. Twist: 1049.2 - 2 x 76.2 = 896.8;
    /// by 203.2 4.41, so 5 spaces of 179.36. Lacing: 1049.2 - 2 x 114.3 = 820.6; by 101.6 8.08, so 9 spaces of 91.18.
    /// </summary>
    [Theory]
    [InlineData(MountKind.Snaps, 11, 92.22)]
    [InlineData(MountKind.Twist, 6, 179.36)]
    [InlineData(MountKind.Lacing, 10, 91.178)]
    public void Fasteners_are_spread_as_worked_out_by_hand(MountKind kind, int count, double pitch)
    {
        var row = FlapOf(kind).Fasteners!;

        Assert.Equal(count, row.Count);
        Assert.Equal(pitch, row.Pitch.Millimeters, 1e-3);
    }

    /// <summary>No fewer spaces would keep to the pitch; the first and last lie at the end distance; all spaces are alike.</summary>
    [Fact]
    public void Any_row_has_the_fewest_equal_spaces_that_keep_to_the_pitch() => AnyRow.Sample(each =>
    {
        var row = FastenerRow.Along(Mm(each.Run), new(Mm(each.Pitch), Mm(each.End)));
        double[] at = [.. row.Offsets.Select(offset => offset.Millimeters)];

        Assert.Equal(row.Count, at.Length);
        Assert.Equal(each.End - (each.Run / 2.0), at[0], 1e-6);
        Assert.Equal((each.Run / 2.0) - each.End, at[^1], 1e-6);
        Assert.All(at.Zip(at.Skip(1)), pair => Assert.Equal(row.Pitch.Millimeters, pair.Second - pair.First, 1e-6));
        Assert.InRange(row.Pitch.Millimeters, 1e-9, each.Pitch + 1e-6);
        var (between, spaces) = (each.Run - (2 * each.End), row.Count - 1);
        Assert.True(spaces == 1 || between > (spaces - 1) * each.Pitch);
    });

    /// <summary>
    /// Each centre on the carrier lies at the offset of its counterpart on the top, at the same place for snaps and twist,
    /// across the gap for lacing; and so do the crosses on the templates.
    /// </summary>
    [Fact]
    public void Marks_on_the_carrier_and_on_the_top_agree() => AnyMount.Sample(each =>
    {
        var job = With(each.Forward, each.Aft, each.Spec);
        var mounted = MountedShape.Of(job, LongSide.Athwart).MovedBy(new(12.5, -700));
        var patterns = PatternSet.Of(job, mounted);
        foreach (var flap in mounted.Fastened.Flaps.Where(flap => flap.Fasteners is not null))
        {
            var (carrier, top) = (flap.CentresOnCarrier, flap.CentresOnTop);
            Assert.Equal(flap.Fasteners!.Count, carrier.Length);
            Assert.Equal(carrier.Select(point => point.X), top.Select(point => point.X));
            var apart = flap.Kind == MountKind.Lacing ? each.Spec.Width.Millimeters + job.Fastenings.Mount.Figures.LacingGap.Millimeters : 0;
            Assert.All(carrier.Zip(top), pair => Assert.Equal(flap.Outward * apart, pair.Second.Y - pair.First.Y, 1e-6));
            Assert.All(carrier, point => Assert.Equal(each.Spec.Width.Millimeters / 2, Math.Abs(point.Y - EdgeOf(mounted, flap)), 1e-6));
            AssertCrosses(patterns, $"mount-flap-{Words.Of(flap.Side)}", flap.Flap.Center, carrier);
            AssertCrosses(patterns, $"mount-strip-{Words.Of(flap.Side)}", flap.OnTop.Center, top);
        }
    });

    /// <summary>
    /// By hand: finished 12.7 under the edge and 25.4 beyond it; folded in half and 12.7 turned in all round, so 1049.2 + 25.4 by
    /// 2 x 38.1 + 25.4. The strip is as wide as the flap shows; the lacing's other flap has no lap.
    /// </summary>
    [Theory]
    [InlineData(MountKind.Snaps, "mount-flap-forward", 38.1, 101.6)]
    [InlineData(MountKind.Snaps, "mount-strip-forward", 25.4, 50.8)]
    [InlineData(MountKind.Twist, "mount-flap-forward", 50.8, 127)]
    [InlineData(MountKind.HookAndLoop, "mount-flap-forward", 50.8, 127)]
    [InlineData(MountKind.Lacing, "mount-flap-forward", 38.1, 101.6)]
    [InlineData(MountKind.Lacing, "mount-strip-forward", 25.4, 76.2)]
    public void A_flap_is_cut_as_worked_out_by_hand(MountKind kind, string id, double deep, double cut)
    {
        var piece = PatternsOf(kind, MountKind.Zipper).Pieces.Single(piece => piece.Key.Id == id);

        Assert.Equal((1049.2, deep), (piece.FinishedSize.Athwart.Millimeters, piece.FinishedSize.ForeAft.Millimeters), new Pair(1e-6));
        Assert.Equal((1074.6, cut), (piece.CutSize.Athwart.Millimeters, piece.CutSize.ForeAft.Millimeters), new Pair(1e-6));
    }

    /// <summary>From the edge out: snaps 25.4; twist and hook-and-loop 38.1; lacing 25.4 + 25.4 + 25.4; and the pockets' ease of 12.35 beyond; the strip's inner row of two 6 beyond that.</summary>
    [Theory]
    [InlineData(MountKind.Snaps, 25.4)]
    [InlineData(MountKind.Twist, 38.1)]
    [InlineData(MountKind.HookAndLoop, 38.1)]
    [InlineData(MountKind.Lacing, 76.2)]
    public void Pockets_and_strips_go_round_what_holds_the_edge(MountKind kind, double outside)
    {
        var mounted = MountedShape.Of(SampleJobs.Plain.Held(kind, MountKind.Zipper), LongSide.Athwart);
        var (band, pocket, strip) = (mounted.Fastened.Edges[0].Band, mounted.Fastened.Pockets[0], mounted.Fastened.Strips[0]);

        Assert.Equal(outside, band.Top - mounted.CarrierBox.Top, 1e-6);
        Assert.Equal(outside + 12.35, pocket.OutY.Millimeters, 1e-6);
        Assert.Equal(outside + 18.35 + 9.35, strip.Seam.From.Y - mounted.CarrierBox.Top, 1e-6);
        Assert.Equal(40.9, mounted.Fastened.Pockets[2].OutY.Millimeters, 1e-6);
    }

    /// <summary>
    /// Through a folded flap away from its edges and ends go 2 plies, and 4 within the 12.7 mm that its raw edges are turned in.
    /// That is the lap, in which both rows lie, 3 and 9.7 in; there the carrier's hem has 2, for what is turned under in it
    /// begins 12.7 in.
    /// </summary>
    [Fact]
    public void Plies_under_a_flaps_rows_are_those_counted_by_hand()
    {
        var seams = JobSeams.Of(PatternsOf(MountKind.HookAndLoop, MountKind.Snaps));

        Assert.Equal(new LayerCount(2 + 4), Seam(seams, "aft snaps, flap on the carrier").Usual);
        Assert.Equal(new LayerCount(2, HookAndLoop: 1), Seam(seams, "forward hook-and-loop, hook tape on its flap").Usual);
        Assert.Equal(new LayerCount(1, HookAndLoop: 1), Seam(seams, "forward hook-and-loop, loop tape on the top").Usual);
    }

    /// <summary>By hand: cover and plug 2, four corners 4; a zipper 1; 11 snaps; 6 twist fasteners; hook-and-loop 1; a knot and 10 eyelets.</summary>
    [Theory]
    [InlineData(MountKind.Zipper, MountKind.Zipper, 8)]
    [InlineData(MountKind.Snaps, MountKind.Zipper, 18)]
    [InlineData(MountKind.Twist, MountKind.HookAndLoop, 13)]
    [InlineData(MountKind.Lacing, MountKind.Lacing, 28)]
    public void Movements_to_take_it_off_are_counted(MountKind forward, MountKind aft, int movements) =>
        Assert.Equal(movements, RemovalActions.Of(MountedShape.Of(SampleJobs.Plain.Held(forward, aft), LongSide.Athwart).Fastened));

    [Fact]
    public void A_zipper_and_a_flap_share_a_carrier()
    {
        var patterns = PatternsOf(MountKind.Zipper, MountKind.Snaps);

        Assert.Equal(2, patterns.NotionPieces.Single(piece => piece.Key.Id == "zipper-end-cap").Title.Quantity);
        Assert.Contains(patterns.NotionPieces, piece => piece.Key.Id == "mount-flap-aft");
        Assert.DoesNotContain(PatternsOf(MountKind.Lacing, MountKind.Snaps).Pieces, piece => piece.Key.Id.StartsWith("zipper", StringComparison.Ordinal));
    }

    private static void AssertCrosses(PatternSet patterns, string id, Point middle, IEnumerable<Point> centres)
    {
        var piece = patterns.Pieces.FirstOrDefault(piece => piece.Key.Id == id);
        if (piece is null)
        {
            Assert.Contains(patterns.Pieces, part => part.Key.Whole.Id == id);
            return;
        }

        var upright = piece.Lines
            .Where(line => line.Kind == PieceLineKind.Mark && line.Text.Length == 0 && line.Points[0].X == line.Points[1].X)
            .Select(line => line.Points[0].Toward(line.Points[1], 0.5) + (middle - new Point(0, 0)));
        Assert.All(centres.Zip(upright), pair => Assert.Equal(0, pair.First.DistanceMm(pair.Second), 1e-6));
        Assert.Equal(centres.Count(), upright.Count());
    }

    private static double EdgeOf(MountedShape mounted, FlapPlace flap) => flap.Side == Side.Forward ? mounted.CarrierBox.Top : mounted.CarrierBox.Bottom;

    private static SewnSeam Seam(IEnumerable<SewnSeam> seams, string name) => Assert.Single(seams, seam => seam.Name == name);

    private static PatternSet PatternsOf(MountKind forward, MountKind aft)
    {
        var job = SampleJobs.Plain.Held(forward, aft);
        return PatternSet.Of(job, FitChoice.For(job).Mounted);
    }

    private static FlapPlace FlapOf(MountKind kind) => MountedShape.Of(SampleJobs.Plain.Held(kind, MountKind.Zipper), LongSide.Athwart).Fastened.Flaps.Single();

    private static CarrierJob With(MountKind forward, MountKind aft, FastenerSpec spec)
    {
        var job = SampleJobs.Plain.Held(forward, aft);
        var figures = job.Fastenings.Mount.Figures with { Snaps = spec, Twist = spec, Eyelets = spec };
        return job with { Fastenings = job.Fastenings with { Mount = job.Fastenings.Mount with { Figures = figures } } };
    }

    private static Length Mm(double value) => SampleJobs.Mm(value);

    /// <summary>Two lengths that may differ by round-off.</summary>
    private sealed class Pair(double within) : IEqualityComparer<(double First, double Second)>
    {
        public bool Equals((double First, double Second) x, (double First, double Second) y) =>
            Math.Abs(x.First - y.First) <= within && Math.Abs(x.Second - y.Second) <= within;

        public int GetHashCode((double First, double Second) obj) => 0;
    }
}
