using System.Text;
using System.Text.Json;
using CanvasCut.Design;
using CanvasCut.Export.Hpgl;
using CanvasCut.Geometry;
using CanvasCut.Job;
using CanvasCut.Tests.Export;

namespace CanvasCut.Tests.Job;

/// <summary>The files for a shop's cutter, plotter or pattern program, of whole jobs.</summary>
public sealed class CutterFilesTests
{
    private const double ExchangeErrorMm = 0.005 * 1.5;
    private const double PlotterUnitMm = 0.025;

    [Theory]
    [MemberData(nameof(ExampleTests.Examples), MemberType = typeof(ExampleTests))]
    public void Every_piece_is_one_block_inserted_once_with_one_grain_line(string example)
    {
        var outcome = ExampleTests.OutcomeOf(example);
        var (pieces, read) = (outcome.Content.Patterns.Pieces, Exchanged(outcome));

        Assert.Equal(pieces.Length, read.Blocks.Length);
        Assert.Equal(read.Blocks.Select(block => block.Name), read.Modelspace.Where(entity => entity.Kind == "INSERT").Select(insert => insert.Pairs[2]));
        Assert.All(pieces.Zip(read.Blocks), pair =>
        {
            var (piece, entities) = (pair.First, pair.Second.Entities);
            var boundary = Assert.Single(entities, entity => entity is { Kind: "POLYLINE", Layer: 1 });
            var outline = new Outline(boundary.Vertices);
            var texts = ExchangeReader.TextsOf(entities);
            var grain = Assert.Single(entities, entity => entity.Layer == 7);
            Assert.Equal(pair.Second.Name, $"{texts["Piece Name"].Single()}_{texts["Size"].Single()}");
            Assert.Equal($"{piece.Title.Quantity}", texts["Quantity"].Single());
            Assert.True(boundary.IsClosed);
            Assert.Equal(piece.Shape.Cut.AreaMm2, outline.AreaMm2, piece.Shape.Cut.PerimeterMm * ExchangeErrorMm);
            Assert.Equal(piece.Warp == WarpDirection.ForeAft, Math.Abs(grain.At(10).X - grain.At(11).X) < 0.001);
            Assert.True(Witness.IsValid(outline));
            Assert.All([grain.At(10), grain.At(11)], end => Assert.All(outline.InnerSides, side => Assert.True(side.InsideMm(end) > 0)));
        });
    }

    [Theory]
    [MemberData(nameof(ExampleTests.Examples), MemberType = typeof(ExampleTests))]
    public void All_turn_and_curve_points_lie_on_lines_and_all_lines_have_theirs(string example) =>
        Assert.All(Exchanged(ExampleTests.OutcomeOf(example)).Blocks, block =>
        {
            var points = block.Entities.Where(entity => entity is { Kind: "POINT", Layer: 2 or 3 }).Select(point => point.At(10));
            var onLines = block.Entities.Where(entity => entity is { Kind: "POLYLINE" or "LINE", Layer: 1 or 8 or 14 })
                .SelectMany(line => line.Kind == "LINE" ? [line.At(10), line.At(11)] : line.Vertices);

            Assert.Equal(onLines.ToHashSet(), points.ToHashSet());
        });

    /// <summary>A slit begins on the cut line, across from a tick on the finished edge, and ends well before that edge.</summary>
    [Theory]
    [MemberData(nameof(ExampleTests.Examples), MemberType = typeof(ExampleTests))]
    public void A_notch_stays_within_the_allowance(string example)
    {
        var outcome = ExampleTests.OutcomeOf(example);
        var notches = 0;
        Assert.All(outcome.Content.Patterns.Pieces.Zip(Exchanged(outcome).Blocks), pair =>
        {
            var shape = pair.First.Shape;
            var shift = new Point(0, 0) - shape.Cut.Bounds.LowerLeft;
            var (finished, cut) = (Witness.ToPolygon(shape.Finished.MovedBy(shift)), Witness.ToPolygon(shape.Cut.MovedBy(shift)));
            foreach (var notch in pair.Second.Entities.Where(entity => entity.Layer == 4))
            {
                notches++;
                var angle = notch.Number(50) * Math.PI / 180;
                var end = notch.At(10) + (new Step(Math.Cos(angle), Math.Sin(angle)) * notch.Number(30));
                Assert.InRange(notch.Number(30), 0.9, 4);
                Assert.True(cut.ExteriorRing.Distance(PointOf(notch.At(10))) <= 0.01);
                Assert.True(cut.Contains(PointOf(end)));
                Assert.True(finished.Distance(PointOf(end)) >= notch.Number(30));
            }
        });
        Assert.True(notches > 0);
    }

    [Fact]
    public void The_cable_exit_is_a_hole_to_drill_on_the_carrier_and_on_its_patch()
    {
        var blocks = Exchanged(ExampleTests.OutcomeOf("three-bow-middle-tube")).Blocks;

        Assert.Equal(["CARRIER_ONE", "CABLE-EXIT-PATCH_ONE"], blocks.Where(block => block.Entities.Count(entity => entity.Layer == 13) == 1).Select(block => block.Name));
        Assert.Contains(blocks[0].Entities, entity => entity is { Layer: 15, Text: "zipper end" });
    }

    /// <summary>ezdxf (MIT licence, Debian package python3-ezdxf): no error, the same blocks and areas.</summary>
    [Theory]
    [MemberData(nameof(ExampleTests.Examples), MemberType = typeof(ExampleTests))]
    public void Ezdxf_reads_the_exchange_file_of_an_example(string example)
    {
        var outcome = ExampleTests.OutcomeOf(example);
        using var folder = new TemporaryFolder();
        var file = folder.PathOf("pieces-pattern.dxf");
        File.WriteAllText(file, Text(outcome, "pieces-pattern.dxf"));
        var read = JsonElement.Parse(OutsideTool.Run(OutsideTool.PythonWithEzdxf(), Repository.PathOf("tests/CanvasCut.Tests/Export/read_exchange.py"), file));
        var (blocks, pieces) = (read.GetProperty("blocks").EnumerateArray().ToList(), outcome.Content.Patterns.Pieces);

        Assert.Empty(read.GetProperty("errors").EnumerateArray());
        Assert.Equal(pieces.Length, blocks.Count);
        Assert.Equal(blocks.Select(block => block.GetProperty("name").GetString()), read.GetProperty("inserts").EnumerateArray().Select(name => name.GetString()));
        Assert.All(blocks.Zip(pieces), pair =>
        {
            Assert.Equal((1, 1, true), (pair.First.GetProperty("outlines").GetInt32(), pair.First.GetProperty("grains").GetInt32(), pair.First.GetProperty("closed").GetBoolean()));
            Assert.Equal(pair.Second.Shape.Cut.AreaMm2, Math.Abs(pair.First.GetProperty("area").GetDouble()), pair.Second.Shape.Cut.PerimeterMm * ExchangeErrorMm);
        });
    }

    [Theory]
    [MemberData(nameof(ExampleTests.Examples), MemberType = typeof(ExampleTests))]
    public void A_plotter_cuts_every_piece_true_size(string example)
    {
        var outcome = ExampleTests.OutcomeOf(example);
        var cuts = new HpglReader(Text(outcome, "pieces.hpgl")).Lines.Where(line => line.Pen == 1).ToList();
        var pieces = outcome.Content.Patterns.Pieces;

        Assert.Equal(pieces.Length, cuts.Count);
        Assert.All(cuts.Zip(pieces), pair =>
        {
            var (points, cut) = (pair.First.Points, pair.Second.Shape.Cut);
            var shift = Box.Holding(points).LowerLeft - cut.Bounds.LowerLeft;
            Assert.Equal(points[0], points[^1]);
            Assert.Equal(cut.Count, points.Length - 1);
            Assert.All(points.Zip(cut.Corners), corner => Assert.True(corner.First.DistanceMm(corner.Second + shift) <= PlotterUnitMm));
        });
    }

    [Fact]
    public void What_an_old_plotter_cannot_reach_is_said_beside_the_file()
    {
        var file = ResultFiles.Of(ExampleTests.OutcomeOf("three-bow-middle-tube")).Single(file => file.Name == "pieces.hpgl");

        Assert.Contains("too long for one with plain HP-GL", file.Tells, StringComparison.Ordinal);
        Assert.True(new HpglReader(Encoding.ASCII.GetString(file.Bytes.Span)).Lines.Max(line => line.Points.Max(point => point.X)) > HpglWriter.OldReachMm);
    }

    [Fact]
    public void Each_piece_can_have_a_dxf_of_its_own_in_inches_with_arcs()
    {
        var outcome = JobRun.Of(
            Repository.Read("patterns/three-bow-middle-tube/job.toml") + "\n[dxf]\nunits = \"in\"\narcs = true\none_file_per_piece = true\n", "job.toml").Value!;
        var files = ResultFiles.Of(outcome).ToDictionary(file => file.Name, file => Encoding.UTF8.GetString(file.Bytes.Span));

        Assert.DoesNotContain("pieces.dxf", files.Keys);
        Assert.All(outcome.Content.Patterns.Pieces, piece =>
        {
            var dxf = files[$"dxf/{piece.Key.Id}.dxf"];
            Assert.Contains("$INSUNITS\n 70\n1\n", dxf, StringComparison.Ordinal);
            using var folder = new TemporaryFolder();
            var path = folder.PathOf("piece.dxf");
            File.WriteAllText(path, dxf);
            var read = JsonElement.Parse(OutsideTool.Run(OutsideTool.PythonWithEzdxf(), Repository.PathOf("tests/CanvasCut.Tests/Export/read_dxf.py"), path));
            var cut = Assert.Single(read.GetProperty("lines").EnumerateArray(), line => line.GetProperty("layer").GetString() == "CUT");
            Assert.Empty(read.GetProperty("errors").EnumerateArray());
            Assert.True(cut.GetProperty("closed").GetBoolean());
            Assert.Equal(piece.Shape.Cut.AreaMm2, Math.Abs(cut.GetProperty("area").GetDouble()) * 25.4 * 25.4, piece.Shape.Cut.PerimeterMm * RoundedBox.SagittaMm);
            Assert.DoesNotContain(read.GetProperty("texts").EnumerateArray(), text => text.GetProperty("layer").GetString() == "CUT");
        });
        Assert.Contains("\n 42\n", files["dxf/carrier.dxf"], StringComparison.Ordinal);
    }

    private static ExchangeReader Exchanged(JobRun outcome) => new(Text(outcome, "pieces-pattern.dxf"));

    private static string Text(JobRun outcome, string name) =>
        Encoding.UTF8.GetString(ResultFiles.Of(outcome).Single(file => file.Name == name).Bytes.Span);

    private static NetTopologySuite.Geometries.Point PointOf(Point point) => new(point.X, point.Y);
}
