using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Sheets;

/// <summary>The pieces of a job as data for a pattern program.</summary>
public static class ExchangeStyle
{
    /// <summary>The one size there is.</summary>
    public const string Size = "ONE";

    /// <summary>Every piece, each moved so that the lower left corner of its cut outline is the origin.</summary>
    public static PatternStyle Of(ImmutableArray<PieceDrawing> drawings, PatternSet patterns, SheetContext context) => new(
        context.JobName,
        Size,
        $"CanvasCut {context.Version}",
        [.. drawings.Select(drawing => Block(drawing, patterns.Job.Workshop.Cloth.Name, context))]);

    private static PatternBlock Block(PieceDrawing drawing, string cloth, SheetContext context)
    {
        var piece = drawing.Piece;
        var shift = new Point(0, 0) - piece.Shape.Cut.Bounds.LowerLeft;
        Point Moved(Point point) => point + shift;
        var (from, to) = GrainOf(piece);
        return new(
            new(piece.Key.Id, piece.Title.Quantity, cloth, [.. Annotations(piece, context)]),
            piece.Shape.Cut.MovedBy(shift),
            [.. piece.Lines.Select(line => new Stroke(RoleOf(line.Kind), [.. line.Points.Select(Moved)], line.IsClosed))],
            (Moved(from), Moved(to)),
            new(
                [.. ExchangeNotches.Of(piece).Select(notch => notch with { At = Moved(notch.At) })],
                [.. piece.Lines.Where(line => line is { Kind: PieceLineKind.Hole, IsClosed: true }).Select(line => Moved(Box.Holding(line.Points).Center))],
                [.. WordsOf(drawing, shift - drawing.Shift)]));
    }

    private static LineRole RoleOf(PieceLineKind kind) => kind switch
    {
        PieceLineKind.Stitch => LineRole.Stitch,
        PieceLineKind.Fold => LineRole.Fold,
        _ => LineRole.Mark,
    };

    private static IEnumerable<string> Annotations(PatternPiece piece, SheetContext context) =>
    [
        piece.Title.Hand == Hand.Neither ? piece.Title.Name : Say.Of($"{piece.Title.Name}, not to be mirrored"),
        Say.Of($"{piece.Title.Face}, warp {Words.Of(piece.Warp)}, forward is up"),
        .. piece.Notes,
        .. context.Warning.Length > 0 ? [context.Warning] : ImmutableArray<string>.Empty,
    ];

    /// <summary>The middle part of the warp's way through the middle of a piece.</summary>
    private static (Point From, Point To) GrainOf(PatternPiece piece)
    {
        const double Spared = 0.2;
        var corners = piece.Shape.Finished.Corners;
        var middle = new Point(corners.Average(corner => corner.X), corners.Average(corner => corner.Y));
        var along = piece.Warp == WarpDirection.ForeAft ? new Step(0, 1) : new Step(1, 0);
        var (from, to) = piece.Shape.Finished.Chord(new(middle, along))
            ?? throw new InvalidOperationException($"No grain line passes through {piece.Key.Id}.");
        return (from.Toward(to, Spared), to.Toward(from, Spared));
    }

    /// <summary>The words at the lines, where the drawing has them.</summary>
    private static IEnumerable<Lettering> WordsOf(PieceDrawing drawing, Step shift) => Figures.Moved(drawing.LineWords, shift).OfType<Lettering>();
}
