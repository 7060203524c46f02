using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Patterns;

/// <summary>A corner pocket: a right-angled triangle, sewn to the top along its legs, open along the hemmed mouth.</summary>
internal static class PocketPiece
{
    public static PatternPiece Of(CarrierJob job, PocketPlace place)
    {
        var spec = job.Fastenings.Pocket;
        var finished = place.MovedBy(new Point(0, 0) - place.At).Outline;
        return new PatternPiece(
            new(PieceKind.Pocket, Corner: place.Corner),
            new(
                Say.Of($"Corner pocket, {place.Corner}"),
                1,
                place.Corner.Hand == Side.Port ? Hand.Port : Hand.Starboard,
                PieceTitle.OuterFaceUp)
            {
                KindName = Say.Of("Corner pocket"),
            },
            new(finished, CutOf(finished, spec)),
            job.Workshop.Cloth.Lay.Warp,
            [.. Lines(finished, spec, job.Workshop.Sewing.Rows)],
            [AllowanceText.Included(Say.Of($"legs {LengthText.Of(spec.SeamAllowance, job.Units)}; mouth {LengthText.Of(spec.Mouth.Allowance, job.Units)}"))]).FoldedAlong([.. MouthFolds(finished, spec), .. LegFolds(finished)]).LyingAt(PlaneMap.To(place.At));
    }

    /// <summary>The triangle set out edge by edge, its two acute tips cut off square to their leg at the seam allowance.</summary>
    private static Outline CutOf(Outline finished, PocketSpec spec)
    {
        var allowance = spec.SeamAllowance.Millimeters;
        var cut = Outset.By(finished, [.. Edges(finished).Select(edge => IsMouth(edge) ? spec.Mouth.Allowance.Millimeters : allowance)])
            ?? throw new InvalidOperationException("A triangle set out is a triangle.");
        return CornerTrim.By(cut, [.. Tips(finished).Select(tip => Square(tip, allowance))]);
    }

    /// <summary>The mouth is hemmed before the legs are turned under.</summary>
    private static IEnumerable<HalfPlane> MouthFolds(Outline finished, PocketSpec spec)
    {
        var (from, to) = Edges(finished).Single(IsMouth);
        var along = (to - from).Unit();
        double[] depths = spec.Mouth.TurnUnder.Millimeters > 0 ? [spec.Mouth.Width.Millimeters, 0] : [0];
        return depths.Select(depth => new HalfPlane(from - (along.Left * depth), along));
    }

    private static IEnumerable<HalfPlane> LegFolds(Outline finished) =>
        Edges(finished).Where(edge => !IsMouth(edge)).Select(edge => new HalfPlane(edge.From, edge.To - edge.From));

    private static IEnumerable<PieceLine> Lines(Outline finished, PocketSpec spec, int rows)
    {
        foreach (var (index, (from, to)) in Edges(finished).Index())
        {
            var inward = (to - from).Unit().Left;
            PieceLine Beside(PieceLineKind kind, double inMm, LineShows shows) =>
                PieceLine.Straight(kind, from + (inward * inMm), to + (inward * inMm), shows);

            if (IsMouth((from, to)))
            {
                yield return Beside(PieceLineKind.Fold, 0, LineShows.Mouth);
                yield return Beside(PieceLineKind.Fold, -spec.Mouth.Width.Millimeters, LineShows.Nothing);
                var row = Beside(PieceLineKind.Stitch, spec.Mouth.Width.Millimeters - StitchRows.FromFold.Millimeters, LineShows.Nothing);
                yield return Within(finished, row) with { Use = new(RowKind.Hem, MouthFolds(finished, spec).Count()) };
                continue;
            }

            yield return Beside(PieceLineKind.Fold, 0, LineShows.Leg);
            foreach (var row in Enumerable.Range(0, rows))
            {
                var beside = Beside(PieceLineKind.Stitch, StitchRows.DistanceFromFold(row).Millimeters, LineShows.Nothing);
                yield return Within(finished, beside) with { Use = new(RowKind.Edge, MouthFolds(finished, spec).Count() + 2, Face: index) };
            }
        }
    }

    /// <summary>The part of a straight line that lies inside the finished triangle; all of it when it only touches.</summary>
    private static PieceLine Within(Outline finished, PieceLine line) =>
        finished.Inside(line.Points) is [var part] ? line with { Points = part } : line;

    private static IEnumerable<(Point From, Point To)> Edges(Outline triangle) =>
        Enumerable.Range(0, 3).Select(i => (triangle[i], triangle[i + 1]));

    /// <summary>The mouth is the edge that does not touch the right-angled corner, which is the origin.</summary>
    private static bool IsMouth((Point From, Point To) edge) => edge.From != new Point(0, 0) && edge.To != new Point(0, 0);

    private static IEnumerable<Point> Tips(Outline triangle) => triangle.Corners.Where(corner => corner != new Point(0, 0));

    private static HalfPlane Square(Point tip, double outMm)
    {
        var outward = (tip - new Point(0, 0)).Unit();
        return new(tip + (outward * outMm), outward.Left);
    }
}
