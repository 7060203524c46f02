using CanvasCut.Geometry;

namespace CanvasCut.Nesting;

/// <summary>Finds the leftmost, then lowest place outside every forbidden zone.</summary>
/// <remarks>
/// Such a place is a corner of a zone or of the box, or a crossing of their edges. Walking every edge from the left and
/// leaping over what the other zones cover meets just those.
/// </remarks>
internal static class FreePlace
{
    /// <summary>How much further left a place must lie to be better; above round-off, below what can be measured.</summary>
    public const double SameMm = 1e-9;

    /// <summary>The place, inside the box or on its edge; null when all of it is taken.</summary>
    /// <param name="box">The places inside the strip.</param>
    /// <param name="zones">What may not be taken.</param>
    public static Point? Find(Box box, IReadOnlyList<ForbiddenZone> zones)
    {
        Point? best = null;
        var along = new ZonesAlong(zones);
        foreach (var stretch in Stretches(box, zones))
        {
            if (IsBetter(stretch.From, best) && FirstFree(stretch, along) is { } place && IsBetter(place, best))
            {
                best = place;
            }
        }

        return best;
    }

    private static bool IsBetter(Point place, Point? best) =>
        best is not { } than || place.X < than.X - SameMm || (place.X <= than.X + SameMm && place.Y < than.Y - SameMm);

    private static IEnumerable<Stretch> Stretches(Box box, IReadOnlyList<ForbiddenZone> zones)
    {
        yield return new(box.LowerLeft, box.LowerLeft with { Y = box.Top });
        yield return new(box.LowerLeft, box.LowerLeft with { X = box.Right });
        yield return new(box.LowerLeft with { Y = box.Top }, new(box.Right, box.Top));
        yield return new(box.LowerLeft with { X = box.Right }, new(box.Right, box.Top));
        foreach (var zone in zones)
        {
            for (var i = 0; i < zone.Count; i++)
            {
                var edge = zone.Edge(i).FromTheLeft;
                if (edge.Inside(box) is { } part)
                {
                    yield return new(Kept(edge.At(part.From), box), Kept(edge.At(part.To), box));
                }
            }
        }
    }

    private static Point Kept(Point place, Box box) =>
        new(Math.Clamp(place.X, box.Left, box.Right), Math.Clamp(place.Y, box.Bottom, box.Top));

    private static Point? FirstFree(Stretch stretch, ZonesAlong zones)
    {
        var bounds = new Box(stretch.From.X, Math.Min(stretch.From.Y, stretch.To.Y), stretch.To.X, Math.Max(stretch.From.Y, stretch.To.Y));
        var covered = new List<StretchPart>();
        foreach (var zone in zones.Meeting(bounds))
        {
            if (zone.Covered(stretch) is { } part)
            {
                covered.Add(part);
            }
        }

        covered.Sort((one, other) => one.From.CompareTo(other.From));
        var touch = ForbiddenZone.TouchMm / Math.Max(stretch.LengthMm, ForbiddenZone.TouchMm);
        return FirstFree(covered, touch) is { } free ? stretch.At(free) : null;
    }

    /// <summary>The smallest part that no zone covers by more than a touch; null when there is none.</summary>
    private static double? FirstFree(List<StretchPart> covered, double touch)
    {
        var free = 0.0;
        foreach (var part in covered.TakeWhile(part => part.From < free - touch))
        {
            free = Math.Max(free, part.To);
        }

        return free <= 1 ? free : null;
    }
}
