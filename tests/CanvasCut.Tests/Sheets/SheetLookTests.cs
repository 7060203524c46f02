using CanvasCut.Drawing;
using CanvasCut.Drawing.Pages;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Sheets;
using CanvasCut.Tests.Job;

namespace CanvasCut.Tests.Sheets;

/// <summary>What can be told of a sheet's look by numbers: no text on text, none off the paper, none across a cut line.</summary>
public sealed class SheetLookTests
{
    public static TheoryData<string, string> InEveryLanguage { get; } =
        [.. ExampleTests.Examples.SelectMany(_ => Languages.Known, (example, language) => (example.Data, language))];

    [Theory]
    [MemberData(nameof(InEveryLanguage))]
    public void No_text_lies_on_another_or_off_the_sheet(string example, string language)
    {
        using var speech = Languages.Speak(language);
        var outcome = ExampleTests.OutcomeOf(example);
        var content = outcome.Content;
        Sheet[] sheets =
        [
            .. PieceDrawing.All(content.Patterns, outcome.Context).Select(drawing => drawing.ToSheet()),
            .. ReportSheets.Of(content, outcome.Context, ShapeSheet.Of(content.Patterns, outcome.Context)),
            RemovalCard.Of(content.Patterns, outcome.Context),
            .. CareSheets.Of(content.Patterns, outcome.Context),
            PlacementSheet.Of(content.Patterns, outcome.Context),
            TopSheet.Of(outcome.Job.Top, outcome.Context),
            CutPlanSheet.Of(content.Plan, outcome.Context),
            .. ShapeSheet.Of(content.Patterns, outcome.Context) is { } shape ? [shape] : Array.Empty<Sheet>(),
            MeasuringSheet.Of(PaperSize.A4, outcome.Context.Footer),
        ];

        Assert.All(sheets, sheet =>
        {
            var paper = new Box(0, 0, sheet.WidthMm, sheet.HeightMm);
            var words = sheet.Figures.OfType<Lettering>().Where(text => text.Text.Length > 0).ToList();
            Assert.All(words, text => Assert.True(paper.Holds(Figures.BoundsOf(text)), $"{sheet.Name}: {text.Text}"));
            foreach (var (first, second) in words.SelectMany((first, i) => words.Skip(i + 1).Select(second => (first, second))))
            {
                Assert.True(Overlap(first, second) < 0.05, $"{sheet.Name}: \"{first.Text}\" and \"{second.Text}\"");
            }
        });
    }

    /// <summary>On its own sheet and as wide as the report has room for: no words on words, and none across the edge of a piece.</summary>
    [Theory]
    [MemberData(nameof(InEveryLanguage))]
    public void Words_on_the_roll_keep_clear_of_each_other_and_of_the_pieces(string example, string language)
    {
        using var speech = Languages.Speak(language);
        var outcome = ExampleTests.OutcomeOf(example);
        foreach (var widthMm in new[] { 273.0, 187.9, 182 })
        {
            var picture = CutPlanSheet.Picture(outcome.Content.Plan, outcome.Context, widthMm);
            var words = picture.Figures.OfType<Lettering>().ToList();
            var pieces = picture.Figures.OfType<Stroke>().Where(stroke => stroke is { IsClosed: true, Role: LineRole.Mark }).ToList();

            Assert.Equal(outcome.Content.Plan.Placed.Length, pieces.Count);
            Assert.All(words, text => Assert.True(new Box(0, 0, widthMm, picture.HeightMm).Holds(Figures.BoundsOf(text)), text.Text));
            Assert.All(words.Where(text => !text.IsBold), text => Assert.All(pieces, piece =>
                Assert.False(Witness.ToPolygon(new(piece.Points)).Boundary.Intersects(Witness.ToPolygon(new(Figures.CornersOf(text)))), text.Text)));
            foreach (var (first, second) in words.SelectMany((first, i) => words.Skip(i + 1).Select(second => (first, second))))
            {
                Assert.True(Overlap(first, second) < 0.05, $"\"{first.Text}\" and \"{second.Text}\"");
            }

            Assert.Contains(words, text => text.Text.Contains(Say.Of("from the cut end"), StringComparison.Ordinal));
        }
    }

    [Theory]
    [MemberData(nameof(InEveryLanguage))]
    public void No_text_crosses_a_cut_line(string example, string language)
    {
        using var speech = Languages.Speak(language);
        var outcome = ExampleTests.OutcomeOf(example);

        Assert.All(PieceDrawing.All(outcome.Content.Patterns, outcome.Context), drawing =>
        {
            var cut = Witness.ToPolygon(drawing.Piece.Shape.Cut.MovedBy(drawing.Shift));
            Assert.All(drawing.Figures.OfType<Lettering>(), text =>
                Assert.False(cut.Boundary.Intersects(Witness.ToPolygon(new(Figures.CornersOf(text)))), $"{drawing.Title}: {text.Text}"));
        });
    }

    [Fact]
    public void The_dxf_sheet_holds_one_closed_cut_line_for_each_piece()
    {
        var outcome = ExampleTests.OutcomeOf("three-bow-middle-tube");
        var drawings = PieceDrawing.All(outcome.Content.Patterns, outcome.Context);
        var cuts = DxfSheet.Of(drawings).Figures.OfType<Stroke>().Where(stroke => stroke.Role == LineRole.Cut).ToList();

        Assert.Equal(drawings.Length, cuts.Count);
        Assert.All(cuts, cut => Assert.True(cut.IsClosed));
        Assert.All(
            cuts.Zip(drawings),
            pair => Assert.Equal(pair.Second.Piece.Shape.Cut.AreaMm2, new Outline(pair.First.Points).AreaMm2, 1e-6));
    }

    private static double Overlap(Lettering first, Lettering second) =>
        Figures.BoundsOf(first).Shared(Figures.BoundsOf(second)).IsEmpty
            ? 0
            : Witness.OverlapMm2(new(Figures.CornersOf(first)), new(Figures.CornersOf(second)));
}
