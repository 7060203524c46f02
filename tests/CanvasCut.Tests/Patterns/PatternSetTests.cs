using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;

namespace CanvasCut.Tests.Patterns;

public sealed class PatternSetTests
{
    private static PatternSet Of(CarrierJob job, double station) =>
        PatternSet.Of(job, MountedShape.Of(job, LongSide.Athwart).At(new(SampleJobs.Mm(station), SampleJobs.Mm(0))));

    [Fact]
    public void Every_piece_is_sound_and_named_once()
    {
        var pieces = Of(SampleJobs.Plain, 800).Pieces;

        Assert.All(pieces, CarrierPieceTests.AssertSound);
        Assert.Equal(pieces.Length, pieces.Select(piece => piece.Key.Id).Distinct().Count());
        Assert.All(pieces, piece => Assert.Matches("^[a-z0-9-]+$", piece.Key.Id));
        Assert.All(pieces, piece => Assert.StartsWith("Cut line includes", piece.Notes[0], StringComparison.Ordinal));
    }

    /// <summary>The ids are in the file names of all results ever written.</summary>
    [Fact]
    public void The_ids_of_pieces_stay_what_they_were() => Assert.Equal(
        [
            "carrier", "carrier-width-2", "pocket-aft-starboard", "weather-strip-forward-width-1", "mount-strip-port", "mount-flap-aft", "chafe-patch-bow-2",
            "zipper-end-cap", "cable-exit-patch", "port-carrier-width-2",
        ],
        new PieceKey[]
        {
            new(PieceKind.Carrier), new(PieceKind.Carrier, Width: 2), new(PieceKind.Pocket, Corner: new(Side.Aft, Side.Starboard)),
            new(PieceKind.WeatherStrip, Side: Side.Forward, Width: 1), new(PieceKind.MountStrip, Side: Side.Port), new(PieceKind.MountFlap, Side: Side.Aft),
            new(PieceKind.ChafePatch, Bow: 2), new(PieceKind.EndCap), new(PieceKind.ExitPatch), new(PieceKind.Carrier, new("port"), Width: 2),
        }.Select(key => key.Id));

    /// <summary>Whatever is in widths knows its whole, and lies where the mounting has it.</summary>
    [Fact]
    public void Pieces_know_whose_they_are_what_they_are_a_width_of_and_where_they_lie()
    {
        var job = SampleJobs.Plain.On(SampleJobs.Cloth with { Roll = new(SampleJobs.Mm(900), SampleJobs.Mm(10), SampleJobs.Mm(100)), Shrink = new(0.01, 0.02) });
        var mounted = MountedShape.Of(job, LongSide.Athwart).At(new(SampleJobs.Mm(800), SampleJobs.Mm(60)));
        var patterns = PatternSet.Of(job with { Mounting = new("port") }, mounted);

        Assert.All(patterns.Pieces, piece => Assert.StartsWith("port-", piece.Key.Id, StringComparison.Ordinal));
        Assert.Equal(patterns.Wholes.Select(whole => whole.Key).ToHashSet(), patterns.Pieces.Select(piece => piece.Key.Whole).ToHashSet());
        Assert.Equal(["port-carrier-width-1", "port-carrier-width-2"], patterns.CarrierPieces.Select(piece => piece.Key.Id));
        Alike(mounted.CarrierBox, Lying(patterns.WholeCarrier));
        Assert.All(mounted.Fastened.Pockets, pocket => Alike(pocket.Outline.Bounds, Lying(patterns.Wholes.Single(piece => piece.Key.Corner == pocket.Corner))));
        Assert.All(mounted.Fastened.Strips, strip => Alike(strip.Finished, Lying(patterns.Whole(PieceKind.WeatherStrip, strip.Side)!)));

        static Box Lying(PatternPiece piece) => piece.At!.Value.Of(piece.Shape.Finished).Bounds;
        static void Alike(Box expected, Box actual)
        {
            Assert.Equal(0, expected.LowerLeft.DistanceMm(actual.LowerLeft), 1e-9);
            Assert.Equal(0, new Point(expected.Right, expected.Top).DistanceMm(new(actual.Right, actual.Top)), 1e-9);
        }
    }

    [Fact]
    public void A_tube_under_the_carrier_gets_a_chafe_patch_and_one_beside_it_does_not()
    {
        var job = SampleJobs.Plain with { Top = SampleJobs.Top(1600, 1800, [SampleJobs.BowAt(60), SampleJobs.BowAt(820), SampleJobs.BowAt(1540)]) };
        var patches = Of(job, 800).TopPieces.Where(piece => piece.Key.Id.StartsWith("chafe", StringComparison.Ordinal)).ToList();

        // 25.4 of tube and 38.1 on both sides; cut 12.7 larger all round.
        var patch = Assert.Single(patches);
        Assert.Equal("chafe-patch-bow-2", patch.Key.Id);
        Assert.Equal(101.6, patch.FinishedSize.ForeAft.Millimeters, 1e-9);
        Assert.Equal(127, patch.CutSize.ForeAft.Millimeters, 1e-9);
        Assert.Equal(1100, patch.FinishedSize.Athwart.Millimeters, 1e-9);
    }

    /// <summary>The inner of two rows, 3 + 6.35 inside the seam, lies 6 mm beyond the pockets, 40.9 from the edge; the strip reaches 15.9 over the carrier: 72.15 mm, by hand.</summary>
    [Fact]
    public void A_weather_strip_reaches_from_its_seam_over_the_tape_to_its_overlap()
    {
        var strip = Of(SampleJobs.Plain, 800).TopPieces.Single(piece => piece.Key.Id == "weather-strip-forward");

        Assert.Equal(72.15, strip.FinishedSize.ForeAft.Millimeters, 1e-9);
        Assert.Equal(1100 + 50.8, strip.FinishedSize.Athwart.Millimeters, 1e-9);
        Assert.Equal(72.15 + 12.7 + 25.4, strip.CutSize.ForeAft.Millimeters, 1e-9);
        Assert.Equal(1100 + 50.8 + 50.8, strip.CutSize.Athwart.Millimeters, 1e-9);
    }

    [Theory]
    [InlineData(ZipperKind.Separating, 4)]
    [InlineData(ZipperKind.Continuous, 8)]
    public void Every_cut_tape_end_gets_a_cap(ZipperKind kind, int caps)
    {
        var job = SampleJobs.Plain.With(zipper: SampleJobs.Zipper with { Kind = kind });

        Assert.Equal(caps, Of(job, 800).NotionPieces.Single(piece => piece.Key.Id == "zipper-end-cap").Title.Quantity);
    }

    [Fact]
    public void A_cable_exit_near_the_edge_gets_a_patch_inside_the_carrier_with_the_hole_where_it_is()
    {
        var exit = new CableExit(SampleJobs.Mm(20), SampleJobs.Mm(300), SampleJobs.Mm(14));
        var panel = SampleJobs.Plain.Panel with { Fittings = SampleJobs.Plain.Panel.Fittings with { CableExit = exit } };
        var patch = Of(SampleJobs.Plain with { Panel = panel }, 800).NotionPieces.Single(piece => piece.Key.Id == "cable-exit-patch");

        // Side 14 + 2 x 38.1 = 90.2; its middle can come no nearer to the edge than 45.1, so the hole lies 25.1 to port of it.
        Assert.Equal(90.2, patch.FinishedSize.Athwart.Millimeters, 1e-9);
        var hole = Box.Holding(patch.Lines.Single(line => line.Text == "cable exit").Points);
        Assert.Equal(-25.1, hole.Center.X, 1e-6);
        Assert.Equal(0, hole.Center.Y, 1e-6);
    }

    [Fact]
    public void Marks_stand_where_the_mounting_is_and_diagonals_are_equal_in_pairs()
    {
        var mounted = Of(SampleJobs.Plain, 800).Mounted;
        var corner = TopMarks.Of(mounted).Single(mark => mark.Name == "carrier, forward port corner").Place;
        var diagonals = TopMarks.Diagonals(mounted);

        Assert.Equal((800 - (575.4 / 2), -550), (corner.Station.Millimeters, corner.Offset.Millimeters));
        Assert.All(diagonals.Chunk(2), pair => Assert.Equal(pair[0].Distance.Millimeters, pair[1].Distance.Millimeters, 1e-9));
        Assert.Equal(double.Hypot(1100, 575.4), diagonals[0].Distance.Millimeters, 1e-9);
    }

    /// <summary>A quarter turn clockwise: forward becomes starboard. Distances to the panel's edges keep to their edge.</summary>
    [Fact]
    public void A_panel_that_is_turned_takes_its_fittings_along()
    {
        var fittings = new PanelFittings(
            new(SampleJobs.Mm(1), SampleJobs.Mm(2), SampleJobs.Mm(3), SampleJobs.Mm(4)),
            new(SampleJobs.Mm(100), SampleJobs.Mm(30), SampleJobs.Mm(90), SampleJobs.Mm(60), SampleJobs.Mm(15)),
            null);
        var panel = SampleJobs.Panel(1100, 550, longSide: null) with { Fittings = fittings };
        var turned = MountedPanel.Of(panel, LongSide.ForeAft);

        Assert.Equal(new Sides<UnitsNet.Length>(SampleJobs.Mm(3), SampleJobs.Mm(4), SampleJobs.Mm(2), SampleJobs.Mm(1)), turned.Fittings.DeadBorder);
        var box = turned.Fittings.JunctionBox!;
        Assert.Equal((550 - 30 - 60, 100, 60, 90), (box.FromPort.Millimeters, box.FromForward.Millimeters, box.Athwart.Millimeters, box.ForeAft.Millimeters));
    }
}
