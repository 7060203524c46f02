using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;

namespace CanvasCut.Tests.Patterns;

/// <summary>What holds the port and the starboard edge: the same as at an end, a quarter turned.</summary>
public sealed class SideEdgeTests
{
    private static readonly Gen<(MountKind Kind, double Size)> AnyEdge = Gen.Select(Gen.Int[0, 5], Gen.Double[400, 1500])
        .Select((kind, size) => ((MountKind)kind, size));

    /// <summary>On a square carrier starboard is forward turned clockwise, and port is aft: (x, y) comes to (y, -x).</summary>
    [Fact]
    public void A_side_of_a_square_carrier_is_its_end_turned() => AnyEdge.Sample(each =>
    {
        var fastened = MountedShape.Of(Square(each.Size, each.Kind), LongSide.Athwart).Fastened;
        Assert.Equal([Side.Forward, Side.Aft, Side.Port, Side.Starboard], fastened.Edges.Select(edge => edge.Side));
        foreach (var (end, side) in new[] { (fastened.Edges[0], fastened.Edges[3]), (fastened.Edges[1], fastened.Edges[2]) })
        {
            AssertTurned(end.Band, side.Band);
            Assert.Equal((end.Run.Millimeters, end.LineY), (side.Run.Millimeters, side.LineY), new Close());
            Assert.Equal(Clockwise(end.Line.From), Rounded(side.Line.From));
            if (end is FlapPlace flap && side is FlapPlace turned)
            {
                AssertTurned(flap.Flap, turned.Flap);
                AssertTurned(flap.OnTop, turned.OnTop);
                Assert.Equal(flap.CentresOnCarrier.Select(Clockwise), turned.CentresOnCarrier.Select(Rounded));
                Assert.Equal(flap.CentresOnTop.Select(Clockwise), turned.CentresOnTop.Select(Rounded));
            }
        }
    });

    /// <summary>What is drawn on the carrier and on the flaps at a side is what is drawn at the end, turned; ticks and rows alike.</summary>
    [Fact]
    public void Pieces_and_marks_of_a_side_are_those_of_the_end_turned() => AnyEdge.Sample(each =>
    {
        var job = Square(each.Size, each.Kind);
        var patterns = PatternSet.Of(job, MountedShape.Of(job, LongSide.Athwart).MovedBy(new(20, -900)));
        var rows = patterns.WholeCarrier.Lines.Where(line => line.Use?.Edge is not null).ToLookup(line => line.Use!.Edge!.Value);
        Assert.Equal(Points(rows[Side.Forward]).Select(Clockwise), Points(rows[Side.Starboard]));
        Assert.Equal(Points(rows[Side.Aft]).Select(Clockwise), Points(rows[Side.Port]));
        foreach (var (id, turned) in new[] { ("mount-flap-forward", "mount-flap-starboard"), ("mount-strip-aft", "mount-strip-port") })
        {
            var (end, side) = (patterns.Pieces.SingleOrDefault(piece => piece.Key.Id == id), patterns.Pieces.SingleOrDefault(piece => piece.Key.Id == turned));
            Assert.Equal(end is null, side is null);
            if (end is not null)
            {
                Assert.Equal(Points(end.Lines).Select(Clockwise), Points(side!.Lines));
                Assert.Equal(end.Shape.Cut.AreaMm2, side.Shape.Cut.AreaMm2, 1e-6);
                Assert.Equal(end.Warp, side.Warp);
            }
        }
    }, iter: 40);

    /// <summary>The needle goes through the same plies at a side as at an end, the carrier's hems being alike.</summary>
    [Fact]
    public void Seams_of_a_side_are_as_long_and_as_thick_as_those_of_the_end() => AnyEdge.Sample(each =>
    {
        var job = Square(each.Size, each.Kind);
        var seams = JobSeams.Of(PatternSet.Of(job, MountedShape.Of(job, LongSide.Athwart).MovedBy(new(0, -900)))).ToLookup(seam => seam.Name);
        foreach (var end in seams.SelectMany(group => group).Where(seam => seam.Kind is SeamKind.Zipper or SeamKind.Mount && seam.Name.StartsWith("forward ", StringComparison.Ordinal)))
        {
            var side = Assert.Single(seams[$"starboard {end.Name["forward ".Length..]}"]);
            Assert.Equal(end.Sewn.Millimeters, side.Sewn.Millimeters, 1e-6);
            Assert.Equal(end.Usual, side.Usual);
        }
    }, iter: 40);

    /// <summary>By hand: a flap of 25.4 to each side of 1100, and the pockets' legs 12.35 beyond that; the forward leg as without.</summary>
    [Fact]
    public void Pockets_go_round_what_holds_a_side()
    {
        var mounted = MountedShape.Of(SampleJobs.Plain.HeldAtSides(MountKind.Snaps, null), LongSide.Athwart);

        Assert.Equal(550 + 25.4, -mounted.Fastened.Sides.Single().Band.Left, 1e-9);
        Assert.Equal((37.75, 40.9), (Math.Round(mounted.Fastened.Pockets[0].OutX.Millimeters, 9), Math.Round(mounted.Fastened.Pockets[0].OutY.Millimeters, 9)));
        Assert.Equal((12.35, 40.9), (Math.Round(mounted.Fastened.Pockets[1].OutX.Millimeters, 9), Math.Round(mounted.Fastened.Pockets[1].OutY.Millimeters, 9)));
    }

    /// <summary>A patch between top and tube reaches as far as what lies on the tube.</summary>
    [Fact]
    public void A_chafe_patch_reaches_under_what_holds_a_side()
    {
        var job = SampleJobs.Plain.HeldAtSides(MountKind.HookAndLoop, MountKind.Zipper) with { Top = SampleJobs.Top(1600, 1800, [SampleJobs.BowAt(60), SampleJobs.BowAt(800), SampleJobs.BowAt(1540)]) };
        var patterns = PatternSet.Of(job, MountedShape.Of(job, LongSide.Athwart).MovedBy(new(0, -800)));

        Assert.Equal(1100 + 38.1 + 28.55, patterns.TopPieces.Single(piece => piece.Key.Id == "chafe-patch-bow-2").FinishedSize.Athwart.Millimeters, 1e-9);
    }

    [Fact]
    public void Without_anything_at_the_sides_there_are_two_edges()
    {
        var fastened = MountedShape.Of(SampleJobs.Plain, LongSide.Athwart).Fastened;

        Assert.True(fastened.HasEndZippersOnly);
        Assert.Equal([Side.Forward, Side.Aft], fastened.Edges.Select(edge => edge.Side));
    }

    private static CarrierJob Square(double size, MountKind kind)
    {
        var job = SampleJobs.Plain.Held(kind, kind).HeldAtSides(kind, kind);
        var figures = job.Fastenings.Mount.Figures;
        FastenerSpec Near(FastenerSpec spec) => spec with { Spacing = spec.Spacing with { EndDistance = SampleJobs.Mm(30) } };
        return job with
        {
            Panel = SampleJobs.Panel(size, size),
            Carrier = SampleJobs.Carrier with { Border = Sides.All(SampleJobs.Mm(0)) },
            Fastenings = job.Fastenings with
            {
                Mount = job.Fastenings.Mount with { Figures = figures with { Snaps = Near(figures.Snaps), Twist = Near(figures.Twist), Eyelets = Near(figures.Eyelets) } },
            },
        };
    }

    /// <summary>Two numbers that may differ by round-off.</summary>
    private sealed class Close : IEqualityComparer<(double First, double Second)>
    {
        public bool Equals((double First, double Second) x, (double First, double Second) y) =>
            Math.Abs(x.First - y.First) <= 1e-9 && Math.Abs(x.Second - y.Second) <= 1e-9;

        public int GetHashCode((double First, double Second) obj) => 0;
    }

    private static IEnumerable<Point> Points(IEnumerable<PieceLine> lines) => lines.SelectMany(line => line.Points).Select(Rounded);

    private static Point Clockwise(Point point) => Rounded(new(point.Y, -point.X));

    private static Point Rounded(Point point) => new(Math.Round(point.X, 6) + 0.0, Math.Round(point.Y, 6) + 0.0);

    private static void AssertTurned(Box end, Box side) =>
        Assert.Equal(0, Math.Max(Math.Max(Math.Abs(side.Left - end.Bottom), Math.Abs(side.Right - end.Top)), Math.Max(Math.Abs(side.Top + end.Left), Math.Abs(side.Bottom + end.Right))), 1e-9);
}
