using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Sheets;
using CanvasCut.Tests.Job;
using UnitsNet;

namespace CanvasCut.Tests.Sheets;

public sealed class PlotSheetTests
{
    private const double MarginMm = 10;

    [Theory]
    [InlineData(914, false)]
    [InlineData(1370, false)]
    [InlineData(914, true)]
    public void A_roll_holds_every_piece_once_true_size_and_apart(double widthMm, bool isSingleStroke)
    {
        var (drawings, sheets) = Roll("three-bow-middle-tube", widthMm, isSingleStroke);
        var sheet = Assert.Single(sheets);
        ImmutableArray<Outline> cuts = [.. sheet.Figures.OfType<Stroke>().Where(stroke => stroke.Role == LineRole.Cut).Select(stroke => new Outline(stroke.Points))];

        Assert.Equal(widthMm, sheet.WidthMm);
        Assert.Equal(drawings.Select(drawing => drawing.Piece.Shape.Cut.AreaMm2), cuts.Select(cut => cut.AreaMm2), (one, other) => Math.Abs(one - other) < 1e-3);
        Assert.True(new Box(0, 0, sheet.WidthMm, sheet.HeightMm).Grown(-MarginMm + 1e-6).Holds(Figures.BoundsOf(sheet.Figures)));
        foreach (var (one, i) in cuts.Select((cut, i) => (cut, i)))
        {
            Assert.All(cuts.Skip(i + 1), other => Assert.True(Witness.ToPolygon(one).Distance(Witness.ToPolygon(other)) >= 10 - 1e-6));
        }

        Assert.Equal(isSingleStroke, !sheet.Figures.OfType<Lettering>().Any());
    }

    /// <summary>Nothing but the squares is 100 mm and 101.6 mm on both sides.</summary>
    [Fact]
    public void Both_test_squares_stand_on_every_sheet()
    {
        var (drawings, roll) = Roll("two-bow-small-top", 914, isSingleStroke: false);
        var pages = PlotPages.Of(drawings, ExampleTests.OutcomeOf("two-bow-small-top").Context);

        Assert.Equal(drawings.Length, pages.Length);
        Assert.All(roll.AddRange(pages), sheet =>
        {
            Assert.All([100.0, 101.6], side => Assert.Contains(
                sheet.Figures.OfType<Stroke>().Select(stroke => Box.Holding(stroke.Points)),
                box => Math.Abs(box.WidthMm - side) < 1e-9 && Math.Abs(box.HeightMm - side) < 1e-9));
            Assert.Contains(sheet.Figures.OfType<Lettering>(), text => text.Text.Contains("100 %", StringComparison.Ordinal));
        });
    }

    [Theory]
    [MemberData(nameof(ExampleTests.Examples), MemberType = typeof(ExampleTests))]
    public void No_text_lies_on_another(string example)
    {
        var (drawings, roll) = Roll(example, 1600, isSingleStroke: false);

        Assert.NotEmpty(roll);
        Assert.All(roll.AddRange(PlotPages.Of(drawings, ExampleTests.OutcomeOf(example).Context)), sheet =>
        {
            ImmutableArray<Outline> texts = [.. sheet.Figures.OfType<Lettering>().Select(text => new Outline(Figures.CornersOf(text)))];
            var paper = new Box(0, 0, sheet.WidthMm, sheet.HeightMm);
            Assert.All(texts, text => Assert.True(paper.Holds(text.Bounds), sheet.Title));
            Assert.All(texts.SelectMany((one, i) => texts.Skip(i + 1).Where(other => !one.Bounds.Shared(other.Bounds).IsEmpty).Select(other => (one, other))), pair =>
                Assert.True(Witness.OverlapMm2(pair.one, pair.other) < 0.05, sheet.Title));
        });
    }

    [Fact]
    public void A_roll_too_narrow_gives_no_sheet() => Assert.Empty(Roll("inch-wide-panel", 400, isSingleStroke: false).Sheets);

    /// <summary>Twelve times the pieces: more than the 5080 mm that PDF viewers show true to size.</summary>
    [Fact]
    public void What_is_longer_than_a_page_goes_on_several_sheets_in_the_order_of_the_pieces()
    {
        var outcome = ExampleTests.OutcomeOf("three-bow-middle-tube");
        var drawings = PieceDrawing.All(outcome.Content.Patterns, outcome.Context);
        ImmutableArray<PieceDrawing> many = [.. Enumerable.Repeat(drawings, 12).SelectMany(each => each)];

        var sheets = RollSheets.Of(many, WithRoll(outcome.Content.Patterns.Job.Workshop, 914, isSingleStroke: false), outcome.Context);

        Assert.True(sheets.Length > 1);
        Assert.All(sheets, sheet => Assert.True(sheet.HeightMm <= PlotPages.LongestMm));
        Assert.Equal(
            many.Select(drawing => drawing.Piece.Shape.Cut.AreaMm2),
            sheets.SelectMany(sheet => sheet.Figures.OfType<Stroke>().Where(stroke => stroke.Role == LineRole.Cut)).Select(stroke => new Outline(stroke.Points).AreaMm2),
            (one, other) => Math.Abs(one - other) < 1e-3);
    }

    /// <summary>5061 mm and a margin of 10 mm at both ends are 1 mm too long.</summary>
    [Theory]
    [InlineData(5059, false)]
    [InlineData(5061, true)]
    public void A_piece_too_long_for_any_page_leaves_the_pages_out(double lengthMm, bool isOut)
    {
        var outcome = ExampleTests.OutcomeOf("two-bow-small-top");
        var drawings = PieceDrawing.All(outcome.Content.Patterns, outcome.Context);
        ImmutableArray<PieceDrawing> longOne =
        [
            .. drawings,
            drawings[0] with { Size = new(0, 0, lengthMm, 50), Figures = [Stroke.Closed(LineRole.Cut, Outline.Of(new(0, 0, lengthMm, 50)))] },
        ];

        Assert.Equal(isOut, PlotPages.Of(longOne, outcome.Context).IsEmpty);
        Assert.Empty(RollSheets.Of(longOne, WithRoll(outcome.Content.Patterns.Job.Workshop, 914, isSingleStroke: false), outcome.Context));
    }

    private static (ImmutableArray<PieceDrawing> Drawings, ImmutableArray<Sheet> Sheets) Roll(string example, double widthMm, bool isSingleStroke)
    {
        var outcome = ExampleTests.OutcomeOf(example);
        var drawings = PieceDrawing.All(outcome.Content.Patterns, outcome.Context);
        return (drawings, RollSheets.Of(drawings, WithRoll(outcome.Content.Patterns.Job.Workshop, widthMm, isSingleStroke), outcome.Context));
    }

    private static Workshop WithRoll(Workshop workshop, double widthMm, bool isSingleStroke) =>
        workshop with { Plot = new(Length.FromMillimeters(widthMm), isSingleStroke) };
}
