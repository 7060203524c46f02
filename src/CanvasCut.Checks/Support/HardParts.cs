using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;
using CanvasCut.Placing;

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
        .. SeamsOnTop(patterns),
        .. patterns.Mounted.Fastened.Zippers.Select(zipper => new HardPart(CheckCodes.SupportZipper, KeysOf(patterns).Fastening(zipper.Side), Say.Of($"{Words.Of(zipper.Side)} zipper's teeth"), HardPart.LinesOf(Teeth(zipper, patterns)))),
        .. CarrierRows(patterns),
        .. TopRows(patterns),
        .. patterns.Mounted.Fastened.Zippers.Select(zipper => new HardPart(CheckCodes.Fastener, KeysOf(patterns).Fastening(zipper.Side), Say.Of($"ends of the {Words.Of(zipper.Side)} zipper"), Ends(zipper))),
        .. patterns.Mounted.Fastened.Flaps.Select(flap => new HardPart(CheckCodes.Fastener, KeysOf(patterns).Fastening(flap.Side), flap.Name, Held(flap))),
    ];

    /// <summary>What holds an edge is drawn and known as one, whatever it is sewn of.</summary>
    private static PartKey PartOf(PieceKey whole, PartKeys keys) =>
        whole is { Kind: PieceKind.MountFlap or PieceKind.MountStrip, Side: { } side } ? keys.Fastening(side) : PartKey.Of(whole);

    private static PartKeys KeysOf(PatternSet patterns) => new(patterns.Job);

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
        SeamsOf(patterns).Select((band, i) => new HardPart(CheckCodes.SupportSeam, KeysOf(patterns).Carrier, Say.Of($"carrier's felled seam {i + 1}"), HardPart.LinesOf(band)));

    /// <summary>The bands of the carrier's felled seams; each seam is drawn on both of its widths.</summary>
    public static IEnumerable<Box> SeamsOf(PatternSet patterns) => RowsOf(patterns.CarrierPieces)
        .Where(row => row.Kind == RowKind.Felled)
        .Select(row => Box.Holding([row.From, row.To]))
        .GroupBy(box => (Math.Round(box.Center.X), Math.Round(box.Center.Y)))
        .Select(alike => alike.First())
        .Select(Ridge);

    /// <summary>A felled seam as wide as it is, round its line.</summary>
    private static Box Ridge(Box line) => line.WidthMm > line.HeightMm
        ? line with { Bottom = line.Bottom - SeamHalfMm, Top = line.Top + SeamHalfMm }
        : line with { Left = line.Left - SeamHalfMm, Right = line.Right + SeamHalfMm };

    /// <summary>The felled seams of what was split for the roll, where they lie when all is folded.</summary>
    private static IEnumerable<HardPart> SeamsOnTop(PatternSet patterns)
    {
        foreach (var (whole, widths) in SewnBesides(patterns))
        {
            ImmutableArray<(Point, Point)> seams =
            [
                .. from piece in widths
                   from line in piece.Lines
                   where line.Use?.Kind == RowKind.Felled
                   from part in whole.Shape.Finished.Inside(line.Points)
                   from side in HardPart.LinesOf(Ridge(Box.Holding(part.Select(piece.At!.Value.Of))))
                   select side,
            ];
            if (seams.Length > 0)
            {
                yield return new(CheckCodes.SupportSeam, PartOf(whole.Key, KeysOf(patterns)), Say.Of($"felled seams of the {Say.Within(whole.Title.Name)}"), seams);
            }
        }
    }

    /// <summary>What is sewn to the top or the carrier besides: each piece as a whole, and what is cut of it.</summary>
    private static IEnumerable<(PatternPiece Whole, IEnumerable<PatternPiece> Widths)> SewnBesides(PatternSet patterns) =>
        patterns.TopPieces.Concat(patterns.NotionPieces)
            .Where(piece => piece.At is not null)
            .GroupBy(piece => piece.Key.Whole)
            .Select(widths => (patterns.Wholes.Single(piece => piece.Key == widths.Key), widths.AsEnumerable()));

    /// <summary>The carrier's hems and the rows that hold the zippers, by the edge they lie at.</summary>
    private static IEnumerable<HardPart> CarrierRows(PatternSet patterns)
    {
        var box = patterns.Mounted.CarrierBox;
        return RowsOf([patterns.WholeCarrier])
            .Where(row => row.Kind != RowKind.Ground)
            .GroupBy(row => EdgeOf(row, box))
            .Select(rows => new HardPart(CheckCodes.Stitch, KeysOf(patterns).CarrierEdge(rows.Key), Say.Of($"rows along the carrier's {Words.Of(rows.Key)} edge"), [.. rows.Select(row => (row.From, row.To))]));
    }

    private static Side EdgeOf((Point From, Point To, RowKind? Kind) row, Box carrier)
    {
        var (isLevel, middle) = (row.From.Y == row.To.Y, row.From.Toward(row.To, 0.5));
        return isLevel ? middle.Y > carrier.Center.Y ? Side.Forward : Side.Aft : middle.X > carrier.Center.X ? Side.Starboard : Side.Port;
    }

    /// <summary>The rows of what is sewn to the top or the carrier besides.</summary>
    private static IEnumerable<HardPart> TopRows(PatternSet patterns)
    {
        foreach (var (whole, widths) in SewnBesides(patterns))
        {
            ImmutableArray<(Point, Point)> rows = [.. widths.SelectMany(piece => RowsOnTop(piece, whole.Shape.Finished))];
            if (rows.Length > 0)
            {
                yield return new(CheckCodes.Stitch, PartOf(whole.Key, KeysOf(patterns)), Say.Of($"rows of the {Say.Within(whole.Title.Name)}"), rows);
            }
        }
    }

    /// <summary>Whether a row lies where it is drawn when all is folded; what is folded over comes to lie on the rest.</summary>
    private static bool LiesThere(PieceLine row, Outline finished) =>
        finished.Bounds.Grown(1).Holds(Box.Holding([row.Points[0].Toward(row.Points[^1], 0.5)]));

    /// <summary>The rows of a piece, or of a width of it, on the top; what of a joining seam is turned under lies on the rest.</summary>
    private static IEnumerable<(Point From, Point To)> RowsOnTop(PatternPiece piece, Outline finished) =>
        from line in piece.Lines
        where line.Kind == PieceLineKind.Stitch && line.Use?.Kind != RowKind.Felled && LiesThere(line, finished)
        from part in finished.Inside(line.Points)
        from row in Stretches((line with { Points = part }).Mapped(piece.At!.Value.Of))
        select row;

    /// <summary>The rows of the carrier on the top.</summary>
    public static IEnumerable<(Point From, Point To, RowKind? Kind)> RowsOf(IEnumerable<PatternPiece> pieces) =>
        from piece in pieces
        from line in piece.Lines
        where line.Kind == PieceLineKind.Stitch
        from row in Stretches(line.Mapped(piece.At!.Value.Of))
        select (row.From, row.To, line.Use?.Kind);

    private static IEnumerable<(Point From, Point To)> Stretches(PieceLine line) => line.Points.Zip(line.Points.Skip(1));
}
