using CanvasCut.Geometry;

namespace CanvasCut.Nesting.Separation;

/// <summary>A place for a piece: in which shape, where, and how bad.</summary>
internal readonly record struct ScoredPlace(int Shape, double X, double Y, double Score);

/// <summary>Looks for the best place for a piece among all the others.</summary>
internal sealed class PlaceFinder(ShapeTable table, Arrangement at, PlaceScore score, Dice dice)
{
    private const int SamplesAnywhere = 15;
    private const int SamplesNear = 10;
    private const int SamplesTouching = 12;
    private const int Listed = 3;

    /// <summary>How far touching places are looked for, as a part of the piece's size.</summary>
    private const double Window = 0.25;

    /// <summary>To what part a move to a touching place must lessen the score for another to follow.</summary>
    private const double WorthWhile = 0.9;

    /// <summary>One in so many places anywhere is pushed to an edge of the strip.</summary>
    private const int EdgeEvery = 4;

    private readonly ScoredPlace[] _best = new ScoredPlace[Listed];
    private readonly List<double> _ends = [];
    private int _count;
    private double _nearMm;

    /// <summary>The best place found for a piece.</summary>
    public ScoredPlace Best(int piece)
    {
        var bounds = table.Shapes[at.Shape[piece]].Bounds;
        _nearMm = Math.Min(bounds.WidthMm, bounds.HeightMm) / 10;
        _count = 0;
        TryNear(piece);
        TryAnywhere(piece);
        TryTouching(piece);
        var sizeMm = Math.Min(bounds.WidthMm, bounds.HeightMm);
        var best = default(ScoredPlace?);
        for (var i = 0; i < _count; i++)
        {
            var refined = Refined(piece, _best[i], sizeMm * 0.25, sizeMm * 0.02);
            best = best is { } than && than.Score <= refined.Score ? than : refined;
        }

        var found = best ?? throw new InvalidOperationException("A piece fits the strip in some pose.");
        return found.Score > 0 ? Touching(piece, Refined(piece, found, sizeMm * 0.01, sizeMm * 0.0005)) : found;
    }

    /// <summary>Moves along the strip and across it to where the piece just touches another, as long as that gains.</summary>
    private ScoredPlace Touching(int piece, ScoredPlace place)
    {
        var isDown = dice.Below(2) == 0;
        for (var idle = 0; idle < 2 && place.Score > 0; isDown = !isDown)
        {
            var better = BestEnd(piece, place, isDown);
            idle = better.Score < place.Score * WorthWhile ? 0 : idle + 1;
            place = better;
        }

        return place;
    }

    private ScoredPlace BestEnd(int piece, ScoredPlace place, bool isDown)
    {
        _ends.Clear();
        var bounds = table.Shapes[place.Shape].Bounds;
        var (reachX, reachY) = isDown ? (0.0, bounds.HeightMm * Window) : (bounds.WidthMm * Window, 0.0);
        var window = new Box(bounds.Left + place.X - reachX, bounds.Bottom + place.Y - reachY, bounds.Right + place.X + reachX, bounds.Top + place.Y + reachY);
        for (var other = 0; other < at.All; other++)
        {
            if (other != piece && at.Left[other] < window.Right && at.Right[other] > window.Left && at.Bottom[other] < window.Top && at.Top[other] > window.Bottom)
            {
                var here = new Point(place.X - at.X[other], place.Y - at.Y[other]);
                table.Forbidden(at.Shape[other], place.Shape).Ends(here, isDown, isDown ? at.Y[other] : at.X[other], _ends);
            }
        }

        var (start, reach) = isDown ? (place.Y, reachY) : (place.X, reachX);
        var best = place;
        foreach (var end in _ends)
        {
            if (Math.Abs(end - start) <= reach)
            {
                best = Better(piece, best, isDown ? 0 : end - best.X, isDown ? end - best.Y : 0) ?? best;
            }
        }

        return best;
    }

    private void TryNear(int piece)
    {
        Try(piece, at.Shape[piece], at.X[piece], at.Y[piece]);
        var bounds = table.Shapes[at.Shape[piece]].Bounds;
        for (var i = 0; i < SamplesNear; i++)
        {
            var (x, y) = (dice.Between(-0.25, 0.25) * bounds.WidthMm, dice.Between(-0.25, 0.25) * bounds.HeightMm);
            var shape = AnyShape(piece);
            var (from, to) = (bounds.Center, table.Shapes[shape].Bounds.Center);
            Try(piece, shape, at.X[piece] + from.X - to.X + x, at.Y[piece] + from.Y - to.Y + y);
        }
    }

    private void TryAnywhere(int piece)
    {
        for (var i = 0; i < SamplesAnywhere; i++)
        {
            var shape = AnyShape(piece);
            var bounds = table.Shapes[shape].Bounds;
            var x = dice.Between(-bounds.Left, Math.Max(-bounds.Left, at.LengthMm - bounds.Right));
            var y = dice.Between(-bounds.Bottom, Math.Max(-bounds.Bottom, table.Task.StripWidthMm - bounds.Top));
            (x, y) = i % EdgeEvery != 0 ? (x, y) : dice.Below(4) switch
            {
                0 => (double.MinValue, y),
                1 => (double.MaxValue, y),
                2 => (x, double.MinValue),
                _ => (x, double.MaxValue),
            };
            Try(piece, shape, x, y);
        }
    }

    private void TryTouching(int piece)
    {
        for (var i = 0; i < SamplesTouching; i++)
        {
            var (shape, other) = (AnyShape(piece), dice.Below(at.All));
            if (other != piece)
            {
                var corners = table.Forbidden(at.Shape[other], shape).Corners;
                var corner = corners[dice.Below(corners.Length)];
                Try(piece, shape, at.X[other] + corner.X, at.Y[other] + corner.Y);
            }
        }
    }

    private int AnyShape(int piece)
    {
        var shapes = table.Choices[table.Pieces[piece]];
        return shapes.Length == 1 ? shapes[0] : shapes[dice.Below(shapes.Length)];
    }

    private void Try(int piece, int shape, double x, double y)
    {
        if (!at.Fits(shape))
        {
            return;
        }

        var place = at.Kept(shape, x, y);
        var limit = _count < Listed ? double.MaxValue : _best[^1].Score;
        var bad = score.Of(piece, shape, place.X, place.Y, limit);
        if (bad < limit)
        {
            List(new(shape, place.X, place.Y, bad));
        }
    }

    /// <summary>Keeps the list sorted, and places in it apart.</summary>
    private void List(ScoredPlace place)
    {
        for (var i = 0; i < _count; i++)
        {
            if (_best[i].Shape == place.Shape && Math.Abs(_best[i].X - place.X) + Math.Abs(_best[i].Y - place.Y) < _nearMm)
            {
                if (_best[i].Score <= place.Score)
                {
                    return;
                }

                _best.AsSpan(i + 1, _count - i - 1).CopyTo(_best.AsSpan(i));
                _count--;
                break;
            }
        }

        var rank = Math.Min(_count, Listed - 1);
        for (; rank > 0 && _best[rank - 1].Score > place.Score; rank--)
        {
            _best[rank] = _best[rank - 1];
        }

        _best[rank] = place;
        _count = Math.Min(_count + 1, Listed);
    }

    /// <summary>Steps to and fro along one way or another, longer after a gain, shorter after none.</summary>
    private ScoredPlace Refined(int piece, ScoredPlace place, double stepMm, double leastMm)
    {
        var (stepX, stepY) = (stepMm, stepMm);
        while ((stepX > leastMm || stepY > leastMm) && place.Score > 0)
        {
            var way = dice.Below(4);
            var (x, y) = (way == 1 ? 0 : stepX, way == 0 ? 0 : way == 3 ? -stepY : stepY);
            var better = Better(piece, place, x, y) ?? Better(piece, place, -x, -y);
            place = better ?? place;
            var factor = better is null ? way < 2 ? 0.5 : 0.7 : 1.1;
            (stepX, stepY) = (way == 1 ? stepX : stepX * factor, way == 0 ? stepY : stepY * factor);
        }

        return place;
    }

    private ScoredPlace? Better(int piece, ScoredPlace than, double x, double y)
    {
        var place = at.Kept(than.Shape, than.X + x, than.Y + y);
        var bad = score.Of(piece, than.Shape, place.X, place.Y, than.Score);
        return bad < than.Score ? new(than.Shape, place.X, place.Y, bad) : null;
    }
}
