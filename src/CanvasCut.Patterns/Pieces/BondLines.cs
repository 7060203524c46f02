using CanvasCut.Geometry;

namespace CanvasCut.Patterns;

/// <summary>What bonds the panel, drawn on the carrier.</summary>
internal static class BondLines
{
    /// <summary>The edges of tape, webbing and patch as marks, and the rows that hold what is sewn on before any hem is folded.</summary>
    public static IEnumerable<PieceLine> Of(BondPlan bond) =>
    [
        .. bond.Tape.Select(strip => PieceLine.Round(PieceLineKind.Mark, Outline.Of(strip.Box), bond.Webbing.Any(webbing => webbing.Box == strip.Box) ? LineShows.TapeOnWebbing : LineShows.FoamTape)),
        .. bond.Webbing.Where(webbing => bond.Tape.All(tape => tape.Box != webbing.Box)).Select(strip => PieceLine.Round(PieceLineKind.Mark, Outline.Of(strip.Box), LineShows.Webbing)),
        .. bond.Patches.Select(patch => PieceLine.Round(PieceLineKind.Mark, Outline.Of(patch), LineShows.CoatedPatch)),
        .. Faces(bond).SelectMany((rows, face) => rows.Select(row => PieceLine.Row(row.From, row.To, new(RowKind.Ground, AfterFolds: 0, Face: face)))),
    ];

    /// <summary>The rows that hold the same two faces: of a strip of webbing both, of a patch each edge's own.</summary>
    private static IEnumerable<IEnumerable<(Point From, Point To)>> Faces(BondPlan bond)
    {
        var ofWebbing = bond.Webbing.Sum(strip => strip.Rows.Length);
        return bond.Webbing.Select(strip => strip.Rows.AsEnumerable()).Concat(bond.Rows.Skip(ofWebbing).Select(row => new[] { row }.AsEnumerable()));
    }
}
