using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Patterns;

namespace CanvasCut.Sheets;

/// <summary>A piece drawn true size with its lines and words.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Title">Its number and name.</param>
/// <param name="Figures">What is drawn, moved so that the lower left corner of all of it is the origin.</param>
/// <param name="Size">The box it takes; its lower left corner is the origin.</param>
/// <param name="Shift">The step from the piece's own plane to this one.</param>
public sealed record PieceDrawing(PatternPiece Piece, string Title, ImmutableArray<Figure> Figures, Box Size, Step Shift)
{
    private const double OutsideGapMm = 6;
    private const double RimMm = 2;

    private static readonly double[] ForwardSizes = [40, 20];
    private static readonly double[] GrainLengths = [120, 60, 30, 15];
    private static readonly double[] NumberSizes = [5, 3.5, 2.5];

    /// <summary>Those of the figures that are the words at the piece's lines.</summary>
    internal ImmutableArray<Figure> LineWords { get; private init; } = [];

    /// <summary>Draws every piece of a job.</summary>
    public static ImmutableArray<PieceDrawing> All(PatternSet patterns, SheetContext context)
    {
        var pieces = patterns.Pieces;
        return [.. pieces.Select((piece, i) => Of(new(piece, i + 1, pieces.Length, context, patterns.Job.Workshop.Cloth.Name)))];
    }

    /// <summary>The drawing as a sheet of its own, with room all round.</summary>
    public Sheet ToSheet()
    {
        const double MarginMm = 10;
        return new(
            Piece.Key.Id,
            Title,
            Size.WidthMm + (2 * MarginMm),
            Size.HeightMm + (2 * MarginMm),
            Drawing.Figures.Moved(Figures, new(MarginMm, MarginMm)));
    }

    private static PieceDrawing Of(PieceLabel label)
    {
        var piece = label.Piece;
        ImmutableArray<Figure> lines =
        [
            Stroke.Closed(LineRole.Cut, piece.Shape.Cut) with { Shows = piece.Key.Id },
            .. piece.Lines.Select(line => new Stroke(RoleOf(line.Kind), line.Points, line.IsClosed)),
        ];
        ImmutableArray<Figure> words = [.. Sheets.LineWords.Of(piece, new FreePlace(piece.Shape.Cut, lines))];
        var drawn = lines.AddRange(words);
        var all = drawn.AddRange(Placed(label, drawn));
        var bounds = Drawing.Figures.BoundsOf(all).Grown(RimMm);
        var shift = new Point(0, 0) - bounds.LowerLeft;
        return new(piece, $"{label.Number}. {piece.Title.Name}", Drawing.Figures.Moved(all, shift), bounds.MovedBy(shift), shift) { LineWords = Drawing.Figures.Moved(words, shift) };
    }

    private static LineRole RoleOf(PieceLineKind kind) => kind switch
    {
        PieceLineKind.Stitch => LineRole.Stitch,
        PieceLineKind.Fold => LineRole.Fold,
        _ => LineRole.Mark,
    };

    /// <summary>Label and arrows where there is room on the finished piece, else beside it.</summary>
    private static IEnumerable<Figure> Placed(PieceLabel label, ImmutableArray<Figure> drawn)
    {
        var piece = label.Piece;
        var (finished, free) = (piece.Shape.Finished.Bounds, new FreePlace(piece.Shape.Finished, drawn));
        var beside = new Beside(piece.Shape.Cut.Bounds.Right + OutsideGapMm, piece.Shape.Cut.Bounds.Top);
        var words = InFirstRoom(label.InColumns(), free, finished.Center);
        var arrow = InFirstRoom(ForwardSizes.Select(Arrows.Forward), free, finished.Center);
        var grain = InFirstRoom(GrainArrows(piece, finished), free, finished.Center);

        // A piece whose label stands beside it still bears its number, so that the cut template is known.
        var number = words.IsEmpty ? InFirstRoom(NumberSizes.Select(height => NumberOf(label, height)), free, finished.Center) : [];
        return
        [
            .. words.IsEmpty ? beside.Put(label.Narrow) : words,
            .. arrow.IsEmpty ? beside.Put(Arrows.Forward(ForwardSizes[^1])) : arrow,
            .. grain.IsEmpty ? beside.Put(GrainArrows(piece, finished).Last()) : grain,
            .. number,
        ];
    }

    private static IEnumerable<Block> GrainArrows(PatternPiece piece, Box finished)
    {
        var isUpright = piece.Warp == WarpDirection.ForeAft;
        var along = isUpright ? finished.HeightMm : finished.WidthMm;
        return GrainLengths.Where(length => length < along).DefaultIfEmpty(GrainLengths[^1]).Select(length => Arrows.Grain(length, isUpright));
    }

    private static Block NumberOf(PieceLabel label, double height)
    {
        var text = $"{label.Number}";
        return new([new Lettering(text, new(0, 0), height, IsBold: true)], TextWidth.Of(text, height, isBold: true), height);
    }

    /// <summary>The first block for which there is room, moved there; nothing when there is room for none.</summary>
    private static ImmutableArray<Figure> InFirstRoom(IEnumerable<Block> blocks, FreePlace free, Point near)
    {
        foreach (var block in blocks)
        {
            if (free.Find(block.WidthMm, block.HeightMm, near) is { } place)
            {
                free.Take(new Box(place.X, place.Y, place.X + block.WidthMm, place.Y + block.HeightMm));
                return Drawing.Figures.Moved(block.Figures, place - new Point(0, 0));
            }
        }

        return [];
    }

    /// <summary>The column beside a piece, filled from its top.</summary>
    private sealed class Beside(double left, double top)
    {
        private double _next = top;

        public ImmutableArray<Figure> Put(Block block)
        {
            _next -= block.HeightMm;
            var moved = Drawing.Figures.Moved(block.Figures, new(left, _next));
            _next -= OutsideGapMm;
            return moved;
        }
    }
}
