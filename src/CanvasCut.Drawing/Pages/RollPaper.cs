using System.Collections.Immutable;
using CanvasCut.Language;

namespace CanvasCut.Drawing.Pages;

/// <summary>Paper from a copy shop's roll, cut off as long as the longest piece needs.</summary>
public static class RollPaper
{
    /// <summary>PDF viewers show no page side longer than 14,400 points true to size (PDF Reference 1.6, appendix C).</summary>
    private const double LargestSideMm = 5080;

    /// <summary>Room for line widths beside the piece.</summary>
    private const double RoomMm = 1;

    /// <summary>The paper on which every piece that is narrower than the roll is printed in one.</summary>
    /// <param name="rollWidthMm">The roll's width.</param>
    /// <param name="pieces">At least one.</param>
    /// <param name="marginMm">What the printer cannot reach, on every side.</param>
    public static PaperSize For(double rollWidthMm, ImmutableArray<TilePiece> pieces, double marginMm)
    {
        var aroundMm = (2 * marginMm) + PageFooter.HeightMm + RoomMm;
        var lengthMm = pieces.Max(piece => LengthOf(piece, rollWidthMm - (2 * marginMm) - RoomMm)) + aroundMm;
        return new(Say.Of($"roll {rollWidthMm:0.#} mm"), rollWidthMm, Math.Clamp(lengthMm, rollWidthMm, LargestSideMm));
    }

    /// <summary>The side along the roll: the shorter one, where the longer fits across.</summary>
    private static double LengthOf(TilePiece piece, double acrossMm)
    {
        var (shorterMm, longerMm) = (Math.Min(piece.Bounds.WidthMm, piece.Bounds.HeightMm), Math.Max(piece.Bounds.WidthMm, piece.Bounds.HeightMm));
        return longerMm <= acrossMm ? shorterMm : longerMm;
    }
}
