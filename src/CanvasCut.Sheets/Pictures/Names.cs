using CanvasCut.Drawing;
using CanvasCut.Geometry;

namespace CanvasCut.Sheets;

/// <summary>Names of what a picture shows, each where there is room for it, with a leader to the thing.</summary>
internal static class Names
{
    /// <summary>The names that find room.</summary>
    /// <param name="named">What is named, and the point on paper that its name tells of.</param>
    /// <param name="free">Where there is room; a tint takes none, for words may stand on it.</param>
    /// <param name="heightMm">The height of the letters.</param>
    public static IEnumerable<Figure> Of(IEnumerable<(string Name, Point At)> named, FreePlace free, double heightMm)
    {
        foreach (var (name, at) in named)
        {
            var width = TextWidth.Of(name, heightMm, isBold: false);
            if (free.Find(width, heightMm, at) is not { } place)
            {
                continue;
            }

            var box = new Box(place.X, place.Y, place.X + width, place.Y + heightMm);
            free.Take(box);
            yield return new Lettering(name, place, heightMm);
            if (Leader(box.Grown(0.8), at) is { } leader)
            {
                yield return leader;
            }
        }
    }

    /// <summary>From the nearest point of a name to what it names; none when they are near enough without.</summary>
    private static Stroke? Leader(Box name, Point to)
    {
        const double NearMm = 3;
        var from = new Point(Math.Clamp(to.X, name.Left, name.Right), Math.Clamp(to.Y, name.Bottom, name.Top));
        return from.DistanceMm(to) > NearMm ? Stroke.Open(LineRole.Note, from, to) : null;
    }
}
