using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
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
    public static string Of(JobRun outcome, IEnumerable<string> files) => JsonText.Of(Root(outcome, files));

    private static Dictionary<string, object?> Root(JobRun outcome, IEnumerable<string> files)
    {
        var (content, mounted) = (outcome.Content, outcome.Content.Patterns.Mounted);
        return WithoutAbsentMounts(new()
        {
            ["format"] = Format,
            ["version"] = outcome.Context.Version,
            ["language"] = Languages.Code,
            ["job"] = outcome.Context.JobName,
            ["files"] = files,
            ["failed"] = outcome.HasFailed,
            ["notices"] = outcome.Notices,
            ["checks"] = content.Checks.Select(Check),
            ["position"] = Place(Plan.PlaceOf(mounted.CarrierBox.Center)),
            ["position_chosen_by_program"] = content.Fit.IsPlaceChosen,
            ["options"] = content.Fit.Options.Select(option => new
            {
                long_side = option.LongSide == LongSide.Athwart ? "athwart" : "fore-aft",
                position = Place(option.Place),
                spare_mm = Mm(option.Spare),
                may_bend = option.MayBend,
            }),
            ["pieces"] = content.Patterns.Pieces.Select(Piece),
            ["kept_pieces"] = content.Patterns.Kept.Select(Piece),
            ["sewn"] = mounted.Fastened.HasEndZippersOnly ? SewnJson.Root(content.Patterns) : null,
            ["zippers"] = mounted.Fastened.Zippers.Select(Zipper),
            ["mounts"] = mounted.Fastened.HasEndZippersOnly ? null : MountJson.Of(mounted.Fastened.Flaps),
            ["pockets"] = mounted.Fastened.Pockets.Select(pocket => new
            {
                corner = pocket.Corner.ToString(),
                leg_mm = Mm(pocket.Leg),
                covers_mm = Mm(pocket.Covers),
            }),
            ["cut_plan"] = CutPlanJson.Of(content.Plan),
            ["order"] = OrderJson.Lines(content),
            ["cost"] = OrderJson.Cost(content),
            ["seams"] = OrderJson.Seams(content),
            ["materials"] = OrderJson.Materials(content),
            ["work"] = WorkJson.Root(outcome),
            ["care"] = CareJson.Root(content.Patterns.Job),
            ["marks"] = TopMarks.Of(mounted).Select(mark => new { name = mark.Name, station_mm = Mm(mark.Place.Station), offset_mm = Mm(mark.Place.Offset) }),
            ["diagonals"] = TopMarks.Diagonals(mounted).Select(diagonal => new { name = diagonal.Name, distance_mm = Mm(diagonal.Distance) }),
            ["paper"] = Paper(content.Patterns.Job.Workshop.Paper),
            ["defaults"] = content.Patterns.Job.Defaults.Select(used => new { field = used.Field, value = used.Value, source = used.Source }),
        });
    }

    /// <summary>A job with zippers alone has the form it always had.</summary>
    private static Dictionary<string, object?> WithoutAbsentMounts(Dictionary<string, object?> root) =>
        new(root.Where(entry => entry.Key != "mounts" || entry.Value is not null));

    private static object Check(CheckResult check) => new
    {
        code = check.Code,
        subject = check.Subject,
        verdict = check.Verdict switch
        {
            Verdict.Pass => "pass",
            Verdict.Caution => "caution",
            Verdict.Fail => "fail",
            _ => "not-checked",
        },
        value_mm = Mm(check.Measured.Value),
        limit_mm = Mm(check.Measured.Limit),
        value = Number(check.Measured.Reading?.Value ?? check.Measured.Value),
        limit = Number(check.Measured.Reading?.Limit ?? check.Measured.Limit),
        unit = (check.Measured.Reading?.Value ?? check.Measured.Value) is { } found ? QuantityWords.Plain(found).Unit : null,
        limit_is = check.Measured.IsAtLeast ? "at-least" : "at-most",
        source = check.Source,
        advice = check.Advice,
    };

    private static object Piece(PatternPiece piece) => new
    {
        id = piece.Key.Id,
        name = piece.Title.Name,
        quantity = piece.Title.Quantity,
        hand = piece.Title.Hand switch
        {
            Hand.Port => "port",
            Hand.Starboard => "starboard",
            _ => "neither",
        },
        face = piece.Title.Face,
        warp = piece.Warp == WarpDirection.ForeAft ? "fore-aft" : "athwart",
        finished_mm = Points(piece.Shape.Finished),
        cut_mm = Points(piece.Shape.Cut),
        lines = piece.Lines.Select(line => new { kind = KindOf(line), closed = line.IsClosed, text = line.Text, points_mm = Points(line.Points) }),
        notes = piece.Notes,
    };

    /// <summary>The name of a line's role, as a layer of pieces.dxf, in small letters.</summary>
    internal static string KindOf(PieceLine line) => line.Kind switch
    {
        PieceLineKind.Stitch => "stitch",
        PieceLineKind.Fold => "fold",
        PieceLineKind.Mark => "mark",
        _ => "hole",
    };

    private static object Zipper(ZipperPlace zipper) => new
    {
        edge = Words.Id(zipper.Side),
        kind = zipper.Choice.Kind == ZipperKind.Separating ? "separating" : "continuous",
        buy_mm = Mm(zipper.Choice.Buy),
        run_mm = Mm(zipper.Choice.Run),
        setback_mm = Mm(zipper.Choice.Setback),
        ticks_from_middle_mm = zipper.Choice.Ticks.Select(tick => Mm(tick)),
    };

    private static object Paper(PaperSpec paper) => new { name = paper.Name, read_x_mm = Mm(paper.Readings?.X), read_y_mm = Mm(paper.Readings?.Y) };

    private static object Place(TopPlace place) => new { station_mm = Mm(place.Station), offset_mm = Mm(place.Offset) };

    private static double[][] Points(CanvasCut.Geometry.Outline outline) => Points(outline.Corners);

    /// <summary>Points as they are written.</summary>
    internal static double[][] Points(ImmutableArray<CanvasCut.Geometry.Point> points) => [.. points.Select(point => new[] { Mm(point.X), Mm(point.Y) })];

    private static double? Number(IQuantity? quantity) => quantity is null ? null : Math.Round(QuantityWords.Plain(quantity).Number, JsonText.Digits) + 0.0;

    private static double? Mm(Length? length) => length is { } value ? Mm(value.Millimeters) : null;

    private static double Mm(double millimetres) => JsonText.Mm(millimetres);
}
