using System.Collections.Immutable;
using CanvasCut.Geometry;
using CanvasCut.Patterns;

namespace CanvasCut.Takeoff;

/// <summary>What the small picture of a step shows: a piece, or the top from above, with the lines that the step is about.</summary>
/// <param name="Piece">The piece; null for the top.</param>
/// <param name="Lines">The lines, in the plane of the piece or in the plan of the top.</param>
public sealed record WorkPicture(PatternPiece? Piece, ImmutableArray<PieceLine> Lines)
{
    /// <summary>A piece with its lines of some kinds.</summary>
    internal static WorkPicture Of(PatternPiece piece, params PieceLineKind[] kinds) =>
        new(piece, [.. piece.Lines.Where(line => kinds.Contains(line.Kind))]);

    /// <summary>A piece with its cut line.</summary>
    internal static WorkPicture OfCut(PatternPiece piece) => new(piece, [Round(piece.Shape.Cut)]);

    /// <summary>A piece with outlines of things that lie on it.</summary>
    internal static WorkPicture On(PatternPiece piece, params IEnumerable<Outline> outlines) => new(piece, [.. outlines.Select(Round)]);

    /// <summary>The top with outlines of things that lie on it.</summary>
    internal static WorkPicture OnTop(params IEnumerable<Outline> outlines) => new(null, [.. outlines.Select(Round)]);

    private static PieceLine Round(Outline outline) => PieceLine.Round(PieceLineKind.Mark, outline);
}
