using CanvasCut.Drawing;
using CanvasCut.Geometry;

namespace CanvasCut.Sheets;

/// <summary>Looks inside an outline for room that no line or text takes.</summary>
internal sealed class FreePlace
{
    private const double GridMm = 4;
    private const double UsualRoomMm = 2;

    /// <summary>Words want as much room as if they were this much larger.</summary>
    private const double RoomForWords = 1.3;

    private readonly Outline _inside;
    private readonly double _roomMm;
    private readonly List<(Point From, Point To)> _lines = [];
    private readonly List<Box> _boxes = [];

    public FreePlace(Outline inside, IEnumerable<Figure> taken, double roomMm = UsualRoomMm)
    {
        (_inside, _roomMm) = (inside, roomMm);
        foreach (var figure in taken)
        {
            Take(figure);
        }
    }

    /// <summary>Takes the room of a figure.</summary>
    public void Take(Figure figure)
    {
        if (figure is Stroke stroke)
        {
            var count = stroke.IsClosed ? stroke.Points.Length : stroke.Points.Length - 1;
            _lines.AddRange(Enumerable.Range(0, count).Select(i => (stroke.Points[i], stroke.Points[(i + 1) % stroke.Points.Length])));
        }
        else
        {
            _boxes.Add(Figures.BoundsOf(figure));
        }
    }

    /// <summary>Takes the room of a box.</summary>
    public void Take(Box box) => _boxes.Add(box);

    /// <summary>The lower left corner of the free box nearest to a point; null when there is no room for it.</summary>
    public Point? Find(double widthMm, double heightMm, Point near)
    {
        var bounds = _inside.Bounds;
        return Places(bounds, widthMm, heightMm)
            .OrderBy(place => Math.Round(place.DistanceMm(near - new Step(widthMm / 2, heightMm / 2)), 6))
            .ThenBy(place => place.Y)
            .ThenBy(place => place.X)
            .Cast<Point?>()
            .FirstOrDefault(place => IsFree(new Box(place!.Value.X, place.Value.Y, place.Value.X + widthMm, place.Value.Y + heightMm).Grown(_roomMm)));
    }

    /// <summary>Whether a box lies inside the outline and no line or text takes any of it.</summary>
    public bool IsFree(Box box) =>
        IsInside(box)
        && !_boxes.Any(taken => !taken.Shared(box).IsEmpty)
        && !_lines.Any(line => Touches(line.From, line.To, box));

    /// <summary>Whether words lie inside the outline and no line or text takes any of their room, turned as they are.</summary>
    public bool IsFree(Lettering words)
    {
        var area = new Outline(Figures.CornersOf(words with { HeightMm = words.HeightMm * RoomForWords }));
        return area.Corners.All(IsInside)
            && !_boxes.Any(taken => !taken.Shared(area.Bounds).IsEmpty)
            && !_lines.Any(line => area.Inside([line.From, line.To]).Length > 0);
    }

    private IEnumerable<Point> Places(Box bounds, double widthMm, double heightMm)
    {
        for (var x = bounds.Left + _roomMm; x + widthMm <= bounds.Right - _roomMm; x += GridMm)
        {
            for (var y = bounds.Bottom + _roomMm; y + heightMm <= bounds.Top - _roomMm; y += GridMm)
            {
                yield return new(x, y);
            }
        }
    }

    /// <summary>For a convex outline it is enough that all four corners lie inside.</summary>
    private bool IsInside(Box box) => Outline.Of(box).Corners.All(IsInside);

    private bool IsInside(Point point) => _inside.InnerSides.All(side => side.InsideMm(point) >= 0);

    /// <summary>Whether a straight line passes through a box: clipped by its four sides, something is left.</summary>
    private static bool Touches(Point from, Point to, Box box)
    {
        var (enter, leave) = (0.0, 1.0);
        foreach (var (start, step, low, high) in new[] { (from.X, to.X - from.X, box.Left, box.Right), (from.Y, to.Y - from.Y, box.Bottom, box.Top) })
        {
            if (Math.Abs(step) < 1e-12)
            {
                if (start < low || start > high)
                {
                    return false;
                }

                continue;
            }

            var (one, other) = ((low - start) / step, (high - start) / step);
            (enter, leave) = (Math.Max(enter, Math.Min(one, other)), Math.Min(leave, Math.Max(one, other)));
        }

        return enter <= leave;
    }
}
