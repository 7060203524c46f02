using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Checks;

/// <summary>Every seam, zipper, row of stitches and fastener of a job, where it lies on the top.</summary>
internal static class HardParts
{
    /// <summary>Round the end of a zipper lie its stop, its slider when open, and the cap over the tape: 1 in, common practice, no source.</summary>
    private const double EndMm = 25.4;

    /// <summary>The widest part of a felled seam lies within half an inch of its line.</summary>
    private const double SeamHalfMm = 12.7;

    /// <summary>All of them; tubes are looked at by <see cref="FitChecks"/>.</summary>
    public static IEnumerable<HardPart> Of(PatternSet patterns) =>
    [
        .. Seams(patterns),
        .. patterns.Mounted.Fastened.Zippers.Select(zipper => new HardPart(CheckCodes.SupportZipper, Say.Of($"{Words.Of(zipper.Side)} zipper's teeth"), HardPart.LinesOf(Teeth(zipper, patterns)))),
        .. CarrierRows(patterns),
        .. TopRows(patterns),
        .. patterns.Mounted.Fastened.Zippers.Select(zipper => new HardPart(CheckCodes.Fastener, Say.Of($"ends of the {Words.Of(zipper.Side)} zipper"), Ends(zipper))),
        .. patterns.Mounted.Fastened.Flaps.Select(flap => new HardPart(CheckCodes.Fastener, flap.Name, Held(flap))),
    ];

    /// <summary>The rims of fasteners, on the carrier and on the top; of a sleeve the rod, of hook-and-loop the tape.</summary>
    private static ImmutableArray<(Point From, Point To)> Held(FlapPlace flap) =>
        [.. SideFasteners.RimsOf(flap).DefaultIfEmpty(flap.Rod ?? flap.OnTop).SelectMany(part => HardPart.LinesOf(part))];

    private static Box Teeth(ZipperPlace zipper, PatternSet patterns)
    {
        var half = patterns.Job.Fastenings.Zipper.Gauge.Chain.Millimeters / 2;
        return zipper.Frame.Back(zipper.AsEnd.Band with { Bottom = zipper.ChainY - half, Top = zipper.ChainY + half });
    }

    private static ImmutableArray<(Point From, Point To)> Ends(ZipperPlace zipper) =>
    [
        .. new[] { zipper.AsEnd.Band.Left, zipper.AsEnd.Band.Right }
            .SelectMany(x => HardPart.LinesOf(zipper.Frame.Back(zipper.AsEnd.Band with { Left = x - EndMm, Right = x + EndMm }))),
    ];

    private static IEnumerable<HardPart> Seams(PatternSet patterns) =>
        SeamsOf(patterns).Select((band, i) => new HardPart(CheckCodes.SupportSeam, Say.Of($"carrier's felled seam {i + 1}"), HardPart.LinesOf(band)));

    /// <summary>The bands of the carrier's felled seams; each seam is drawn on both of its widths.</summary>
    public static IEnumerable<Box> SeamsOf(PatternSet patterns) => RowsOf(patterns.CarrierPieces, patterns)
        .Where(row => row.Kind == RowKind.Felled)
        .Select(row => Box.Holding([row.From, row.To]))
        .GroupBy(box => (Math.Round(box.Center.X), Math.Round(box.Center.Y)))
        .Select(alike => alike.First())
        .Select(box => box.WidthMm > box.HeightMm
            ? box with { Bottom = box.Bottom - SeamHalfMm, Top = box.Top + SeamHalfMm }
            : box with { Left = box.Left - SeamHalfMm, Right = box.Right + SeamHalfMm });

    /// <summary>The carrier's hems and the rows that hold the zippers, by the edge they lie at.</summary>
    private static IEnumerable<HardPart> CarrierRows(PatternSet patterns)
    {
        var box = patterns.Mounted.CarrierBox;
        return RowsOf([patterns.WholeCarrier], patterns)
            .Where(row => row.Kind != RowKind.Ground)
            .GroupBy(row => EdgeOf(row, box))
            .Select(rows => new HardPart(CheckCodes.Stitch, Say.Of($"rows along the carrier's {rows.Key} edge"), [.. rows.Select(row => (row.From, row.To))]));
    }

    private static string EdgeOf((Point From, Point To, RowKind? Kind) row, Box carrier)
    {
        var (isLevel, middle) = (row.From.Y == row.To.Y, row.From.Toward(row.To, 0.5));
        return Words.Of(isLevel ? middle.Y > carrier.Center.Y ? Side.Forward : Side.Aft : middle.X > carrier.Center.X ? Side.Starboard : Side.Port);
    }

    /// <summary>The rows of what is sewn to the top or the carrier besides.</summary>
    private static IEnumerable<HardPart> TopRows(PatternSet patterns)
    {
        var mounted = patterns.Mounted;
        foreach (var (piece, at) in SewnOn(patterns))
        {
            var step = at - new Point(0, 0);
            ImmutableArray<(Point, Point)> rows = [.. piece.Lines.Where(line => line.Kind == PieceLineKind.Stitch && LiesThere(line, piece)).SelectMany(Stretches).Select(row => (row.From + step, row.To + step))];
            if (rows.Length > 0)
            {
                yield return new(CheckCodes.Stitch, Say.Of($"rows of the {Say.Within(piece.Title.Name)}"), rows);
            }
        }
    }

    /// <summary>Whether a row lies where it is drawn when all is folded; what is folded over comes to lie on the rest.</summary>
    private static bool LiesThere(PieceLine row, PatternPiece piece) =>
        piece.Shape.Finished.Bounds.Grown(1).Holds(Box.Holding([row.Points[0].Toward(row.Points[^1], 0.5)]));

    private static IEnumerable<(PatternPiece Piece, Point At)> SewnOn(PatternSet patterns)
    {
        var (mounted, pieces) = (patterns.Mounted, patterns.TopPieces.Concat(patterns.NotionPieces).ToDictionary(piece => piece.Title.Id, StringComparer.Ordinal));
        IEnumerable<(string Id, Point At)> places =
        [
            .. mounted.Fastened.Flaps.SelectMany(flap => new[]
            {
                ($"mount-flap-{Words.Id(flap.Side)}", flap.Flap.Center),
                ($"mount-strip-{Words.Id(flap.Side)}", flap.OnTop.Center),
            }),
            .. mounted.Fastened.Pockets.Select(pocket => ($"pocket-{pocket.Corner.Id}", pocket.At)),
            .. mounted.Fastened.Strips.Select(strip => ($"weather-strip-{Words.Id(strip.Side)}", strip.Finished.Center)),
            .. patterns.Job.Top.Bows.Select((bow, i) => ($"chafe-patch-bow-{i + 1}", new Point(mounted.WithSides.Center.X, -bow.Station.Millimeters))),
            .. CableHole.Of(patterns.Job, mounted) is { } hole ? [("cable-exit-patch", hole.Patch.Center)] : Array.Empty<(string, Point)>(),
        ];
        return places.Where(place => pieces.ContainsKey(place.Id)).Select(place => (pieces[place.Id], place.At));
    }

    /// <summary>The rows of the carrier on the top, shrunk to their nominal size.</summary>
    public static IEnumerable<(Point From, Point To, RowKind? Kind)> RowsOf(IEnumerable<PatternPiece> pieces, PatternSet patterns)
    {
        var (nominal, sewn) = (patterns.Mounted.CarrierBox, patterns.WholeCarrier.Shape.Finished.Bounds);
        Point OnTop(Point point) => nominal.Center + new Step(point.X * nominal.WidthMm / sewn.WidthMm, point.Y * nominal.HeightMm / sewn.HeightMm);
        return pieces
            .SelectMany(piece => piece.Lines)
            .Where(line => line.Kind == PieceLineKind.Stitch)
            .SelectMany(line => Stretches(line).Select(row => (OnTop(row.From), OnTop(row.To), line.Use?.Kind)));
    }

    private static IEnumerable<(Point From, Point To)> Stretches(PieceLine line) => line.Points.Zip(line.Points.Skip(1));
}
