using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Export.Exchange;
using CanvasCut.Geometry;

namespace CanvasCut.Tests.Export;

/// <summary>The pattern exchange file after ASTM D6673 and ANSI/AAMA-292, on made-up pieces.</summary>
public sealed class ExchangeWriterTests
{
    private static readonly Outline Rounded = RoundedBox.Of(new(0, 0, 300, 200), 30);

    private static readonly PatternBlock Flap = new(
        new("flap", 2, "cotton, 300 g/m²", ["outer face up: warp", "fold 4½ °"]),
        Rounded,
        [
            Stroke.Closed(LineRole.Stitch, RoundedBox.Of(new(10, 10, 290, 190), 20)),
            Stroke.Open(LineRole.Fold, new(20, 100), new(280, 100)),
            Stroke.Closed(LineRole.Mark, RoundedBox.Circle(new(150, 50), 8)),
        ],
        (new(150, 40), new(150, 160)),
        new([new(new(150, 0), 4, 90)], [new(150, 50)], [new Lettering("hole", new(160, 50), 2)]));

    /// <summary>The smallest whole file: one piece of 100 by 50 mm in size M.</summary>
    [Fact]
    public void A_plain_piece_is_one_block_with_all_it_must_have()
    {
        var top = new PatternBlock(new("top", 1, "canvas", []), Outline.Of(new(0, 0, 100, 50)), [], (new(20, 25), new(80, 25)), PatternMarks.None);
        var read = new ExchangeReader(Written(new("S1", "M", "somebody", [top])));

        var (name, entities) = Assert.Single(read.Blocks);
        var insert = Assert.Single(read.Modelspace, entity => entity.Kind == "INSERT");
        var boundary = Assert.Single(entities, entity => entity is { Kind: "POLYLINE", Layer: 1 });
        Assert.Equal("TOP_M", name);
        Assert.Equal(("TOP_M", 1, new Point(0, 0)), (insert.Pairs[2], insert.Layer, insert.At(10)));
        Assert.True(boundary.IsClosed);
        Assert.Equal(4, boundary.Vertices.Length);
        Assert.Equal(boundary.Vertices, entities.Where(entity => entity is { Kind: "POINT", Layer: 2 }).Select(point => point.At(10)));
        Assert.Single(entities, entity => entity is { Kind: "LINE", Layer: 7 });
        Assert.Equal("METRIC", Assert.Single(ExchangeReader.TextsOf(read.Modelspace)["Units"]));
        Assert.Equal(["HEADER", "BLOCKS", "ENTITIES"], read.Sections);
        Assert.Equal(0, read.HeaderLength);
    }

    [Fact]
    public void Texts_tell_piece_and_style_by_their_keys()
    {
        var read = Read(Flap);
        var (piece, style) = (ExchangeReader.TextsOf(read.Blocks[0].Entities), ExchangeReader.TextsOf(read.Modelspace));

        Assert.Equal(("FLAP", "ONE", "2"), (piece["Piece Name"].Single(), piece["Size"].Single(), piece["Quantity"].Single()));
        Assert.Equal("cotton, 300 g/m2", piece["Material"].Single());
        Assert.Equal(["outer face up: warp", "fold 4 1/2  deg"], piece["Annotation"]);
        Assert.Equal(("style", "ONE", "METRIC", "author 1"), (style["Style Name"].Single(), style["Sample Size"].Single(), style["Units"].Single(), style["Author"].Single()));
        Assert.Equal("D 6673-04", style["ASTM/D13Proposal 1 Version"].Single());
        Assert.Equal("0.01", style["Curve Tolerance"].Single());
    }

    [Fact]
    public void Notches_holes_and_words_stand_on_their_layers()
    {
        var entities = Read(Flap).Blocks[0].Entities;
        var notch = Assert.Single(entities, entity => entity.Layer == 4);
        var hole = Assert.Single(entities, entity => entity.Layer == 13);

        Assert.Equal((new Point(150, 0), 4, 0, 90), (notch.At(10), notch.Number(30), notch.Number(39), notch.Number(50)));
        Assert.Equal(("POINT", new Point(150, 50)), (hole.Kind, hole.At(10)));
        Assert.Equal("hole", Assert.Single(entities, entity => entity.Layer == 15).Text);
        Assert.All(entities.Where(entity => entity.Layer is 5 or 6 or 7 or 9 or 10 or 13), entity => Assert.NotEqual("POLYLINE", entity.Kind));
    }

    /// <summary>Layers 2 and 3 hold every point of layers 1, 8 and 14; where an arc begins and ends is a turn.</summary>
    [Fact]
    public void Every_point_of_a_line_is_a_turn_or_a_point_of_a_curve()
    {
        var entities = Read(Flap).Blocks[0].Entities;
        var (turns, curves) = (PointsOn(entities, 2), PointsOn(entities, 3));

        Assert.Equal(LinePoints(entities, 1, 8, 14).ToHashSet(), turns.Concat(curves).ToHashSet());
        Assert.Equal(8 + 8 + 2 + 2, turns.Count);
        Assert.Empty(turns.Intersect(curves));
    }

    /// <summary>The boundary is an ordered part of its twin on layer 84 and begins at the same vertex.</summary>
    [Theory]
    [InlineData(1, 84)]
    [InlineData(8, 85)]
    [InlineData(14, 87)]
    public void A_layer_of_lines_has_its_twin(int layer, int twin)
    {
        var entities = Read(Flap).Blocks[0].Entities;

        Assert.NotEmpty(LinePoints(entities, layer));
        Assert.Equal(LinePoints(entities, layer), LinePoints(entities, twin));
    }

    [Fact]
    public void The_file_is_plain_ASCII_with_two_decimals_and_the_same_in_any_culture()
    {
        var text = Written(new("style", "ONE", "author 1", [Flap]));

        ForeignCulture.In(() => Assert.Equal(text, Written(new("style", "ONE", "author 1", [Flap]))));
        Assert.DoesNotContain(text, character => character > '~');
        Assert.DoesNotMatch(@"\n-0\.00\n", text);
        Assert.DoesNotMatch(@"\n-?\d+\.(\d|\d{3,})\n", text);
    }

    [Fact]
    public void A_name_too_long_for_a_block_is_shortened_and_keeps_its_number()
    {
        var read = Read(Named("weather-strip-forward-width-1"), Named("a-very-long-name-without-any-end-to-it-12"));

        Assert.Equal("WEATHERSTRIPFORWARDWIDTH1_ONE", read.Blocks[0].Name);
        Assert.All(read.Blocks, block => Assert.True(block.Name.Length <= 31));
        Assert.EndsWith("12_ONE", read.Blocks[1].Name, StringComparison.Ordinal);
        Assert.All(read.Blocks, block => Assert.Equal(block.Name, ExchangeReader.TextsOf(block.Entities)["Piece Name"].Single() + "_ONE"));
    }

    [Fact]
    public void Two_pieces_of_one_name_are_refused() => Assert.Throws<ArgumentException>(() => Read(Named("flap"), Named("Flap")));

    private static PatternBlock Named(string name) => Flap with { Title = Flap.Title with { Name = name } };

    private static List<Point> PointsOn(IEnumerable<ExchangeEntity> entities, int layer) =>
        [.. entities.Where(entity => entity.Kind == "POINT" && entity.Layer == layer).Select(point => point.At(10))];

    private static List<Point> LinePoints(IEnumerable<ExchangeEntity> entities, params int[] layers) =>
    [
        .. entities.Where(entity => layers.Contains(entity.Kind is "POLYLINE" or "LINE" ? entity.Layer : -1))
            .SelectMany(line => line.Kind == "LINE" ? [line.At(10), line.At(11)] : line.Vertices),
    ];

    private static ExchangeReader Read(params ImmutableArray<PatternBlock> blocks) => new(Written(new("style", "ONE", "author 1", blocks)));

    private static string Written(PatternStyle style)
    {
        using var output = new StringWriter();
        ExchangeWriter.Write(style, output);
        return output.ToString();
    }
}
