using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Job;

/// <summary>What results.json tells of one carrier.</summary>
internal static class MountingJson
{
    /// <param name="top">All carriers.</param>
    /// <param name="run">The one.</param>
    public static MountingPart Of(TopRun top, JobRun run)
    {
        var (patterns, fit) = (run.Pieces, run.Placed);
        var mounted = patterns.Mounted;
        return new(
            run.Job.Mounting.IsOnly ? null : run.Job.Mounting.Text,
            top.Top.Twins.FirstOrDefault(twin => twin.Name == run.Job.Mounting)?.Of.Text,
            top.IsOnlyOne ? null : TopFiles.FolderOf(run),
            run.HasFailed,
            run.Notices,
            [.. run.Checks.Select(ResultsJson.Check)],
            mounted.Panel.LongSide,
            Place(Plan.PlaceOf(mounted.CarrierBox.Center)),
            fit.IsPlaceChosen,
            Mm(fit.Options[0].Spare),
            [.. fit.Options.Select(option => new OptionPart(option.LongSide, Place(option.Place), Mm(option.Spare), option.MayBend))],
            [.. patterns.Pieces.Select(Piece)],
            [.. patterns.Kept.Select(Piece)],
            mounted.Fastened.HasEndZippersOnly ? SewnJson.Of(patterns) : null,
            [.. mounted.Fastened.Zippers.Select(Zipper)],
            MountJson.Of(mounted.Fastened.Flaps),
            [.. mounted.Fastened.Pockets.Select(pocket => new PocketPart(pocket.Corner.Id, Mm(pocket.Leg), Mm(pocket.Covers)))],
            [.. TopMarks.Of(mounted).Select(mark => new MarkPart(mark.Key.Id, mark.Name, Mm(mark.Place.Station), Mm(mark.Place.Offset)))],
            [.. TopMarks.Diagonals(mounted).Select(diagonal => new DiagonalPart(diagonal.From.Id, diagonal.To.Id, diagonal.Name, Mm(diagonal.Distance)))],
            CareJson.Of(patterns.Job),
            [.. patterns.Job.Defaults.Select(used => new DefaultPart(used.Field, used.Value, used.Source))]);
    }

    private static PiecePart Piece(PatternPiece piece) => new(
        piece.Key.Id,
        piece.Key.Word,
        piece.Key.Side,
        piece.Key.Corner?.Id,
        piece.Key.Bow,
        piece.Key.Width,
        piece.Title.Name,
        piece.Title.Quantity,
        piece.Title.Hand,
        piece.Title.Face,
        piece.Warp,
        Points(piece.Shape.Finished),
        Points(piece.Shape.Cut),
        [.. piece.Lines.Select(line => new LinePart(line.Kind, line.Shows, line.IsClosed, line.Text, ResultsJson.Points(line.Points)))],
        piece.Notes);

    private static ZipperPart Zipper(ZipperPlace zipper) => new(
        zipper.Side,
        zipper.Choice.Kind,
        Mm(zipper.Choice.Buy),
        Mm(zipper.Choice.Run),
        Mm(zipper.Choice.Setback),
        zipper.StartSide,
        Mm(zipper.Choice.StartSetback),
        [.. zipper.Choice.Ticks.Select(Mm)]);

    private static PlacePart Place(TopPlace place) => new(Mm(place.Station), Mm(place.Offset));

    private static System.Collections.Immutable.ImmutableArray<PointPart> Points(Outline outline) => ResultsJson.Points(outline.Corners);

    private static double Mm(Length length) => JsonText.Mm(length.Millimeters);
}
