using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Patterns;

namespace CanvasCut.Sheets;

/// <summary>Turns the ticks of a piece into notches of its cut edge.</summary>
/// <remarks>
/// A tick stands on the finished edge, but a notch is a slit, and a slit there would weaken the fold. So the notch is
/// where the tick, carried on outward, meets the cut edge; it goes a third of the way to the finished edge and no deeper
/// than 4 mm, so that the hem hides it. There is none where the cut edge is the finished edge, as under a binding, nor on
/// a trimmed corner. The tick itself stays a line to be drawn.
/// </remarks>
internal static class ExchangeNotches
{
    /// <summary>About what files in use have, 0.1574 in.</summary>
    private const double DeepestMm = 4;

    private const double PartOfAllowance = 1 / 3.0;
    private const double NarrowestAllowanceMm = 3;
    private const double SameMm = 1e-6;

    /// <summary>The notches of a piece, in its own plane.</summary>
    public static IEnumerable<PatternNotch> Of(PatternPiece piece) => piece.Lines
        .Where(line => line is { Kind: PieceLineKind.Mark, IsClosed: false, Points.Length: 2 })
        .Select(line => Notch(piece.Shape, line.Points[0], (line.Points[1] - line.Points[0]).Unit()))
        .OfType<PatternNotch>()
        .DistinctBy(notch => (Math.Round(notch.At.X, 3), Math.Round(notch.At.Y, 3)));

    private static PatternNotch? Notch(PieceShape shape, Point tick, Step inward)
    {
        if (!EdgesAt(shape.Finished, tick).Any(edge => IsSquare(edge, inward)))
        {
            return null;
        }

        foreach (var edge in Enumerable.Range(0, shape.Cut.Count).Select(i => (From: shape.Cut[i], To: shape.Cut[i + 1])).Where(edge => IsSquare(edge, inward)))
        {
            var along = (edge.To - edge.From).Unit();
            var part = along.Dot(tick - edge.From);
            var mouth = edge.From + (along * part);
            var allowance = inward.Dot(tick - mouth);
            if (part > 0 && part < edge.From.DistanceMm(edge.To) && allowance >= NarrowestAllowanceMm)
            {
                return new(mouth, Math.Min(DeepestMm, allowance * PartOfAllowance), Math.Atan2(inward.Y, inward.X) * 180 / Math.PI);
            }
        }

        return null;
    }

    /// <summary>The edges on which a point lies.</summary>
    private static IEnumerable<(Point From, Point To)> EdgesAt(Outline outline, Point point) =>
        Enumerable.Range(0, outline.Count)
            .Select(i => (From: outline[i], To: outline[i + 1]))
            .Where(edge => Math.Abs(edge.From.DistanceMm(point) + point.DistanceMm(edge.To) - edge.From.DistanceMm(edge.To)) <= SameMm);

    /// <summary>Whether the inside of an edge lies straight in a direction.</summary>
    private static bool IsSquare((Point From, Point To) edge, Step inward) => edge.From != edge.To && (edge.To - edge.From).Unit().Left.Dot(inward) > 1 - SameMm;
}
