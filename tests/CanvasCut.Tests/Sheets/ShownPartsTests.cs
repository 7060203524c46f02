using CanvasCut.Checks;
using CanvasCut.Drawing;
using CanvasCut.Patterns;
using CanvasCut.Sheets;
using CanvasCut.Tests.Job;

namespace CanvasCut.Tests.Sheets;

/// <summary>What a verdict is about can be found again in the drawing of the top.</summary>
public sealed class ShownPartsTests
{
    /// <summary>Under the top or on the ends of tapes, and so not to be seen from above.</summary>
    private static readonly PieceKind[] Hidden = [PieceKind.ChafePatch, PieceKind.EndCap, PieceKind.ExitPatch];

    public static TheoryData<string> Examples => ExampleTests.Examples;

    [Theory]
    [MemberData(nameof(Examples))]
    public void The_placement_shows_every_part_that_a_check_of_the_fit_is_about(string example)
    {
        var outcome = ExampleTests.OutcomeOf(example);
        var shown = PlacementSheet.Of(outcome.Content.Patterns, outcome.Context).Figures.Select(figure => figure.Shows).ToHashSet();
        var about = outcome.Content.Checks.Where(check => check.Code != CheckCodes.SeamLayers).SelectMany(check => check.About.Parts)
            .Where(part => part.Piece is not { } piece || !Hidden.Contains(piece.Kind)).Distinct().ToList();

        Assert.True(about.Count > 10, $"{about.Count} parts");
        Assert.Equal([], about.Select(part => part.Id).Except(shown));
    }

    /// <summary>No check between two things on the top leaves its parts to be read out of its words.</summary>
    [Fact]
    public void Every_check_of_a_distance_knows_its_parts()
    {
        string[] codes =
        [
            CheckCodes.Margin, CheckCodes.KeepOut, CheckCodes.TubeEdge, CheckCodes.TubeZipper, CheckCodes.TubePocket, CheckCodes.TubeCells, CheckCodes.PocketShade,
            CheckCodes.PocketHold, CheckCodes.PocketRoom, CheckCodes.StripShade, CheckCodes.SupportZipper, CheckCodes.Stitch, CheckCodes.SeamLayers,
        ];
        var checks = ExampleTests.OutcomeOf("three-bow-middle-tube").Content.Checks;

        Assert.All(codes.Except([CheckCodes.KeepOut]), code => Assert.Contains(checks, check => check.Code == code));
        Assert.All(checks.Where(check => codes.Contains(check.Code)), check => Assert.NotEmpty(check.About.Parts));
    }

    [Fact]
    public void Every_piece_and_its_place_on_the_roll_carry_its_id()
    {
        var content = ExampleTests.OutcomeOf("three-bow-middle-tube").Content;
        var context = ExampleTests.OutcomeOf("three-bow-middle-tube").Context;

        Assert.Equal(content.Patterns.Pieces.Select(piece => piece.Key.Id), PieceDrawing.All(content.Patterns, context).Select(drawing => drawing.Figures.OfType<Stroke>().Single(stroke => stroke.Role == LineRole.Cut).Shows));
        Assert.Equal(
            content.Plan.Placed.Select(placed => placed.Piece.Key.Id).Order(StringComparer.Ordinal),
            CutPlanSheet.Of(content.Plan, context).Figures.Select(figure => figure.Shows).Where(shows => shows.Length > 0).Order(StringComparer.Ordinal));
    }
}
