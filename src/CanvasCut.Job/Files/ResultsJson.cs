using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Patterns;
using CanvasCut.Takeoff;
using UnitsNet;

namespace CanvasCut.Job;

/// <summary>Writes all results for programs; docs/results.md tells the form.</summary>
public static class ResultsJson
{
    /// <summary>The value of "format": what tells our results from anyone else's file of that name.</summary>
    public const string Format = "canvascut-results-1";

    /// <summary>The file's text.</summary>
    /// <param name="outcome">The results.</param>
    /// <param name="files">The names of all files written with it, itself included.</param>
    public static string Of(JobRun outcome, IEnumerable<string> files)
    {
        ArgumentNullException.ThrowIfNull(outcome);
        return TextOf(outcome, files, outcome.Content.Purchase);
    }

    /// <summary>The same without what waits for the cut plan, as <c>check --json</c> prints it.</summary>
    /// <param name="outcome">The results.</param>
    public static string OfChecks(JobRun outcome)
    {
        ArgumentNullException.ThrowIfNull(outcome);
        return TextOf(outcome, [], null);
    }

    private static string TextOf(JobRun outcome, IEnumerable<string> files, Purchase? bought) =>
        outcome.Spoken(() => JsonText.Of(Root(outcome, files, bought), ResultsContext.Default.ResultsDocument));

    private static ResultsDocument Root(JobRun outcome, IEnumerable<string> files, Purchase? bought)
    {
        var (patterns, fit) = (outcome.Pieces, outcome.Placed);
        var mounted = patterns.Mounted;
        var isZippedAtEndsOnly = mounted.Fastened.HasEndZippersOnly;
        return new(
            Format,
            outcome.Context.Version,
            outcome.Language,
            outcome.Context.JobName,
            [.. files],
            outcome.HasFailed,
            outcome.Notices,
            [.. outcome.Checks.Select(Check)],
            Place(Plan.PlaceOf(mounted.CarrierBox.Center)),
            fit.IsPlaceChosen,
            [.. fit.Options.Select(option => new OptionPart(LongSideWord(option.LongSide), Place(option.Place), Mm(option.Spare), option.MayBend))],
            [.. patterns.Pieces.Select(Piece)],
            [.. patterns.Kept.Select(Piece)],
            isZippedAtEndsOnly ? SewnJson.Of(patterns) : null,
            [.. mounted.Fastened.Zippers.Select(Zipper)],
            isZippedAtEndsOnly ? null : MountJson.Of(mounted.Fastened.Flaps),
            [.. mounted.Fastened.Pockets.Select(pocket => new PocketPart(pocket.Corner.ToString(), Mm(pocket.Leg), Mm(pocket.Covers)))],
            bought is null ? null : CutPlanJson.Of(bought.Plan),
            bought is null ? null : OrderJson.Lines(bought.Order),
            OrderJson.Cost(bought?.Cost),
            OrderJson.Seams(bought?.Seams ?? Purchase.SeamsOf(MadeTogether.Of(patterns))),
            OrderJson.Materials(MadeTogether.Of(patterns)),
            WorkJson.Part(outcome.Job.Work.Order, outcome.Work),
            CareJson.Of(patterns.Job),
            [.. TopMarks.Of(mounted).Select(mark => new MarkPart(mark.Name, Mm(mark.Place.Station), Mm(mark.Place.Offset)))],
            [.. TopMarks.Diagonals(mounted).Select(diagonal => new DiagonalPart(diagonal.Name, Mm(diagonal.Distance)))],
            Paper(patterns.Job.Workshop.Paper),
            [.. patterns.Job.Defaults.Select(used => new DefaultPart(used.Field, used.Value, used.Source))]);
    }

    /// <summary>Which way a long side lies, as a job file writes it.</summary>
    internal static string LongSideWord(LongSide side) => side == LongSide.Athwart ? "athwart" : "fore-aft";

    internal static CheckPart Check(CheckResult check) => new(
        check.Code,
        check.Subject,
        [.. check.About.Parts.Select(part => part.Id)],
        check.Verdict switch
        {
            Verdict.Pass => "pass",
            Verdict.Caution => "caution",
            Verdict.Fail => "fail",
            _ => "not-checked",
        },
        Mm(check.Measured.Value),
        Mm(check.Measured.Limit),
        Number(check.Measured.Reading?.Value ?? check.Measured.Value),
        Number(check.Measured.Reading?.Limit ?? check.Measured.Limit),
        (check.Measured.Reading?.Value ?? check.Measured.Value) is { } found ? QuantityWords.Plain(found).Unit : null,
        check.Measured.IsAtLeast ? "at-least" : "at-most",
        check.Source,
        check.Advice);

    private static PiecePart Piece(PatternPiece piece) => new(
        piece.Key.Id,
        piece.Title.Name,
        piece.Title.Quantity,
        piece.Title.Hand switch
        {
            Hand.Port => "port",
            Hand.Starboard => "starboard",
            _ => "neither",
        },
        piece.Title.Face,
        piece.Warp == WarpDirection.ForeAft ? "fore-aft" : "athwart",
        Points(piece.Shape.Finished),
        Points(piece.Shape.Cut),
        [.. piece.Lines.Select(line => new LinePart(KindOf(line), line.IsClosed, line.Text, Points(line.Points)))],
        piece.Notes);

    /// <summary>The name of a line's role, as a layer of pieces.dxf, in small letters.</summary>
    internal static string KindOf(PieceLine line) => line.Kind switch
    {
        PieceLineKind.Stitch => "stitch",
        PieceLineKind.Fold => "fold",
        PieceLineKind.Mark => "mark",
        _ => "hole",
    };

    private static ZipperPart Zipper(ZipperPlace zipper) => new(
        Words.Id(zipper.Side),
        zipper.Choice.Kind == ZipperKind.Separating ? "separating" : "continuous",
        Mm(zipper.Choice.Buy),
        Mm(zipper.Choice.Run),
        Mm(zipper.Choice.Setback),
        Words.Id(zipper.StartSide),
        Mm(zipper.Choice.StartSetback),
        [.. zipper.Choice.Ticks.Select(tick => Mm(tick))]);

    private static PaperPart Paper(PaperSpec paper) => new(paper.Name, Mm(paper.Readings?.X), Mm(paper.Readings?.Y));

    private static PlacePart Place(TopPlace place) => new(Mm(place.Station), Mm(place.Offset));

    private static ImmutableArray<PointPart> Points(CanvasCut.Geometry.Outline outline) => Points(outline.Corners);

    /// <summary>Points as they are written.</summary>
    internal static ImmutableArray<PointPart> Points(ImmutableArray<CanvasCut.Geometry.Point> points) =>
        [.. points.Select(point => new PointPart(JsonText.Mm(point.X), JsonText.Mm(point.Y)))];

    private static double? Number(IQuantity? quantity) => quantity is null ? null : Math.Round(QuantityWords.Plain(quantity).Number, JsonText.Digits) + 0.0;

    private static double? Mm(Length? length) => length is { } value ? Mm(value) : null;

    private static double Mm(Length length) => JsonText.Mm(length.Millimeters);
}
