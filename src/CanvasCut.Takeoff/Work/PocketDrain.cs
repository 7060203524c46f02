using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Takeoff;

/// <summary>Where water that gets into a pocket must run out of it.</summary>
internal static class PocketDrain
{
    /// <summary>What is said where the top's heights are not given.</summary>
    public static string Unknown => Say.Of("Which corner that is was not worked out, for the top's heights are not given: pour a cup of water on the stretched top and see.");

    /// <summary>The lowest corner of a pocket as it lies on the top; null where the top's heights are not given.</summary>
    public static string? LowestOf(PatternSet patterns, PocketPlace pocket)
    {
        if (patterns.Surface.Surface is not { } surface)
        {
            return null;
        }

        var (end, hand) = (Words.Of(pocket.Corner.End), Words.Of(pocket.Corner.Hand));
        var corners = new[]
        {
            (pocket.At, Name: Say.Of("its square corner")),
            (pocket.EndAthwart, Name: Say.Of($"the end of its {end} leg")),
            (pocket.EndForeAft, Name: Say.Of($"the end of its {hand} leg")),
        };
        return corners.MinBy(corner => Math.Round(surface.PointAt(Plan.PlaceOf(corner.Item1)).Z, 1)).Name;
    }
}
