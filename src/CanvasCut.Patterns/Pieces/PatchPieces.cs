using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>The small pieces that protect and strengthen: chafe patches, zipper end caps, the cable exit's patch.</summary>
internal static class PatchPieces
{
    /// <summary>How much of a zipper's end a cap covers; about 1 in, common practice, no source.</summary>
    public static readonly Length CapLength = Length.FromInches(1);

    /// <summary>One patch for each tube that the carrier or a zipper lies on, to go between the top and the tube.</summary>
    public static IEnumerable<PatternPiece> Chafe(CarrierJob job, MountedShape mounted)
    {
        var spec = job.Fastenings.Chafe;
        foreach (var (index, bow) in job.Top.Bows.Index().Where(each => mounted.LiesOn(Plan.BandOf(job.Top, each.Item))))
        {
            var width = bow.Diameter + (spec.WidthBeyondTube * 2);
            yield return Patch(
                job,
                (new(PieceKind.ChafePatch, Bow: index + 1), new(Say.Of($"Chafe patch, bow {index + 1}"), 1, Hand.Neither, PieceTitle.OuterFaceUp) { KindName = Say.Of("Chafe patch") }),
                (Length.FromMillimeters(mounted.WithSides.WidthMm), width),
                spec.TurnUnder).LyingAt(PlaneMap.To(new(mounted.WithSides.Center.X, Plan.BandOf(job.Top, bow).Center.Y)));
        }
    }

    /// <summary>A cap folded over each cut tape end: the stop end of a separating zipper, both ends of a continuous one; none without zippers.</summary>
    public static IEnumerable<PatternPiece> EndCaps(CarrierJob job, MountedShape mounted) =>
        mounted.Fastened.Zippers.IsEmpty ? [] : [EndCap(job, mounted)];

    /// <summary>The cap of a job with zippers.</summary>
    public static PatternPiece EndCap(CarrierJob job, MountedShape mounted)
    {
        var ends = job.Fastenings.Zipper.Kind == ZipperKind.Separating ? 1 : 2;
        var halves = 2 * mounted.Fastened.Zippers.Length;
        var cap = Patch(
            job,
            (new(PieceKind.EndCap), new(Say.Of("Zipper end cap"), halves * ends, Hand.Neither, PieceTitle.OuterFaceUp)),
            (CapLength * 2, job.Fastenings.Zipper.Gauge.OverallWidth / 2),
            job.Fastenings.Zipper.CapTurn);
        var half = cap.Shape.Cut.Bounds.HeightMm / 2;
        return cap.FoldedAlong(cap.Folds.Add(new(new(0, 0), new(0, 1)))) with
        {
            Lines = [.. cap.Lines, PieceLine.Straight(PieceLineKind.Fold, new(0, -half), new(0, half), LineShows.FoldOverEnd)],
        };
    }

    /// <summary>The patch round the hole of each cable; none when there is no hole.</summary>
    public static IEnumerable<PatternPiece> CableExit(CarrierJob job, MountedShape mounted)
    {
        foreach (var hole in CableHole.All(job, mounted))
        {
            yield return CableExit(job, hole);
        }
    }

    private static PatternPiece CableExit(CarrierJob job, CableHole hole)
    {
        var name = hole.Panel.IsOnly ? Say.Of("Cable exit patch") : Say.Of($"Cable exit patch of panel \"{hole.Panel}\"");
        var patch = Patch(
            job,
            (new(PieceKind.ExitPatch) { Panel = hole.Panel }, new(name, 1, Hand.Neither, PieceTitle.OuterFaceUp) { KindName = Say.Of("Cable exit patch") }),
            (Length.FromMillimeters(hole.Patch.WidthMm), Length.FromMillimeters(hole.Patch.HeightMm)),
            job.Fastenings.Chafe.TurnUnder);
        var circle = RoundedBox.Circle(new Point(0, 0) + (hole.Middle - hole.Patch.Center), hole.Radius.Millimeters);
        return patch.LyingAt(PlaneMap.To(hole.Patch.Center)) with { Lines = [.. patch.Lines, PieceLine.Round(PieceLineKind.Hole, circle, LineShows.CableExit)] };
    }

    private static PatternPiece Patch(CarrierJob job, (PieceKey Key, PieceTitle Title) which, (Length Athwart, Length ForeAft) finished, Length turnUnder)
    {
        var box = Box.Around(new(0, 0), finished.Athwart.Millimeters, finished.ForeAft.Millimeters);
        var hemmed = new HemmedBox(box, Sides.All(EdgeTurn.Once(turnUnder)), CornerKind.Square);
        return new PatternPiece(
            which.Key,
            which.Title,
            new(hemmed.Finished, hemmed.Cut),
            job.Workshop.Cloth.Lay.Warp,
            [.. hemmed.Folds(), .. hemmed.EdgeRows(1)],
            [turnUnder > Length.Zero ? AllowanceText.Of(Sides.All(turnUnder), job.Units) : AllowanceText.Included(Say.Of("no turn, its edges are sealed with a hot knife"))])
            .FoldedAlong(hemmed.FoldOrder);
    }
}
