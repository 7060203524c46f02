using CanvasCut.Geometry;

namespace CanvasCut.Nesting.Separation;

/// <summary>Finds places where a piece lies without overlap and touches in two ways what is laid already.</summary>
internal sealed class ContactPlaces(ShapeTable table, Arrangement at)
{
    /// <summary>So many places are given at most: those that reach least far.</summary>
    private const int Most = 2;

    private readonly List<Point> _candidates = [];
    private readonly List<double> _ends = [];

    /// <summary>How many places were tried.</summary>
    public long Steps { get; private set; }

    /// <summary>The leftmost places, then the lowest; pushed left and down until the piece touches.</summary>
    public IEnumerable<Point> Of(int piece, int shape, double reachMm)
    {
        Gather(shape, reachMm);
        var found = new List<Point>();
        foreach (var candidate in _candidates.OrderBy(place => place.X).ThenBy(place => place.Y))
        {
            if (found.Count == Most)
            {
                break;
            }

            if (IsFree(shape, candidate) && Pushed(piece, shape, candidate) is var place && !found.Any(other => other.DistanceMm(place) < FreePlace.SameMm))
            {
                found.Add(place);
            }
        }

        return found;
    }

    /// <summary>Corners of the forbidden parts, and where their edges meet the strip's edges; with a repeat, whole multiples.</summary>
    private void Gather(int shape, double reachMm)
    {
        _candidates.Clear();
        var bounds = table.Shapes[shape].Bounds;
        var (left, low, high) = (-bounds.Left, -bounds.Bottom, table.Task.StripWidthMm - bounds.Top);
        _candidates.AddRange([new(left, low), new(left, high), new(left + reachMm + table.Task.GapMm, low)]);
        for (var other = 0; other < at.All; other++)
        {
            if (!double.IsNaN(at.Left[other]))
            {
                GatherBeside(other, shape, new(left, low, double.PositiveInfinity, high));
            }
        }
    }

    private void GatherBeside(int other, int shape, Box room)
    {
        var forbidden = table.Forbidden(at.Shape[other], shape);
        var (x, y) = (at.X[other], at.Y[other]);
        foreach (var corner in forbidden.Corners)
        {
            if (corner.X + x >= room.Left && corner.Y + y >= room.Bottom && corner.Y + y <= room.Top)
            {
                _candidates.Add(new(corner.X + x, corner.Y + y));
            }
        }

        foreach (var edge in new[] { room.Bottom, room.Top })
        {
            _ends.Clear();
            forbidden.Ends(new(0, edge - y), isDown: false, x, _ends);
            _candidates.AddRange(_ends.Where(end => end >= room.Left).Select(end => new Point(end, edge)));
        }

        _ends.Clear();
        forbidden.Ends(new(room.Left - x, 0), isDown: true, y, _ends);
        _candidates.AddRange(_ends.Where(end => end >= room.Bottom && end <= room.Top).Select(end => new Point(room.Left, end)));
    }

    private bool IsFree(int shape, Point place)
    {
        Steps++;
        var (box, gapMm) = (table.Shapes[shape].Bounds.MovedBy(place - new Point(0, 0)), table.Task.GapMm);
        for (var other = 0; other < at.All; other++)
        {
            if (at.Left[other] < box.Right + gapMm && at.Right[other] > box.Left - gapMm && at.Bottom[other] < box.Top + gapMm && at.Top[other] > box.Bottom - gapMm
                && table.Forbidden(at.Shape[other], shape).DepthMm(place.X - at.X[other], place.Y - at.Y[other]) > 0)
            {
                return false;
            }
        }

        return true;
    }

    private Point Pushed(int piece, int shape, Point place)
    {
        at.Put(piece, shape, place.X, place.Y);
        Slide.Push(table, at, piece);
        var pushed = new Point(at.X[piece], at.Y[piece]);
        at.Lift(piece);
        return pushed;
    }
}
