using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Patterns;

/// <summary>What bonds the panel, drawn on the carrier.</summary>
internal static class BondLines
{
    /// <summary>The edges of tape, webbing and patch as marks, and the rows that hold what is sewn on before any hem is folded.</summary>
    public static IEnumerable<PieceLine> Of(BondPlan bond) =>
    [
        .. bond.Tape.Select(strip => PieceLine.Round(PieceLineKind.Mark, Outline.Of(strip.Box), bond.Webbing.Any(webbing => webbing.Box == strip.Box) ? Say.Of("webbing, foam tape on it") : Say.Of("foam tape"))),
        .. bond.Webbing.Where(webbing => bond.Tape.All(tape => tape.Box != webbing.Box)).Select(strip => PieceLine.Round(PieceLineKind.Mark, Outline.Of(strip.Box), Say.Of("webbing"))),
        .. bond.Patch is { } patch ? [PieceLine.Round(PieceLineKind.Mark, Outline.Of(patch), Say.Of("coated patch"))] : Array.Empty<PieceLine>(),
        .. bond.Rows.Select(row => PieceLine.Row(row.From, row.To, new(RowKind.Ground, AfterFolds: 0))),
    ];
}
