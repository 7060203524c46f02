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
            Piece.Title.Id,
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
            Stroke.Closed(LineRole.Cut, piece.Shape.Cut),
            .. piece.Lines.Select(line => new Stroke(RoleOf(line.Kind), line.Points, line.IsClosed)),
        ];
        ImmutableArray<Figure> drawn = [.. lines, .. LineWords.Of(piece)];
        var all = drawn.AddRange(Placed(label, drawn));
        var bounds = Drawing.Figures.BoundsOf(all).Grown(RimMm);
        var shift = new Point(0, 0) - bounds.LowerLeft;
        return new(piece, $"{label.Number}. {piece.Title.Name}", Drawing.Figures.Moved(all, shift), bounds.MovedBy(shift), shift);
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
        var outside = new Beside(piece.Shape.Cut.Bounds.Right + OutsideGapMm, piece.Shape.Cut.Bounds.Top);
        var words = Enumerable.Range(1, label.MostColumns).Select(label.InColumns);
        var isUpright = piece.Warp == WarpDirection.ForeAft;
        var along = isUpright ? finished.HeightMm : finished.WidthMm;
        return
        [
            .. InFirstRoom(words, free, outside, finished.Center),
            .. InFirstRoom(new[] { 40.0, 20 }.Select(Arrows.Forward), free, outside, finished.Center),
            .. InFirstRoom(new[] { 120.0, 60, 30, 15 }.Where(length => length < along).DefaultIfEmpty(15).Select(length => Arrows.Grain(length, isUpright)), free, outside, finished.Center),
            .. IsInside(words, piece) ? [] : ShortName(label, free),
        ];
    }

    private static bool IsInside(IEnumerable<(ImmutableArray<Figure> Figures, double WidthMm, double HeightMm)> words, PatternPiece piece) =>
        words.Any(each => new FreePlace(piece.Shape.Finished, [.. piece.Lines.Select(line => new Stroke(RoleOf(line.Kind), line.Points, line.IsClosed))])
            .Find(each.WidthMm, each.HeightMm, piece.Shape.Finished.Bounds.Center) is not null);

    /// <summary>A piece whose label stands beside it still bears its number, so that the cut template is known.</summary>
    private static IEnumerable<Figure> ShortName(PieceLabel label, FreePlace free)
    {
        foreach (var height in new[] { 5, 3.5, 2.5 })
        {
            var text = $"{label.Number}";
            var width = TextWidth.Of(text, height, isBold: true);
            if (free.Find(width, height, label.Piece.Shape.Finished.Bounds.Center) is { } place)
            {
                return [new Lettering(text, place, height, IsBold: true)];
            }
        }

        return [];
    }

    private static ImmutableArray<Figure> InFirstRoom(
        IEnumerable<(ImmutableArray<Figure> Figures, double WidthMm, double HeightMm)> sizes, FreePlace free, Beside outside, Point near)
    {
        foreach (var (figures, width, height) in sizes)
        {
            if (free.Find(width, height, near) is { } place)
            {
                free.Take(new Box(place.X, place.Y, place.X + width, place.Y + height));
                return Drawing.Figures.Moved(figures, place - new Point(0, 0));
            }
        }

        return outside.Put(sizes.First());
    }

    /// <summary>The column beside a piece, filled from its top.</summary>
    private sealed class Beside(double left, double top)
    {
        private double _next = top;

        public ImmutableArray<Figure> Put((ImmutableArray<Figure> Figures, double WidthMm, double HeightMm) block)
        {
            _next -= block.HeightMm;
            var moved = Drawing.Figures.Moved(block.Figures, new(left, _next));
            _next -= OutsideGapMm;
            return moved;
        }
    }
}
