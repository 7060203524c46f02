using CanvasCut.Drawing;
using CanvasCut.Geometry;

namespace CanvasCut.Sheets;

/// <summary>A few lines of words, put where there is room for them, level or reading upward.</summary>
internal static class WordBlock
{
    private const double Pitch = 1.6;
    private const double Descent = 0.3;

    /// <summary>The first wording that finds room, level before upright; nothing when none does.</summary>
    /// <param name="wordings">The same in different numbers of lines, the best first.</param>
    /// <param name="heightMm">The height of a capital.</param>
    /// <param name="free">Where there is room.</param>
    /// <param name="near">The words are to stand near this.</param>
    public static IEnumerable<Figure> Fitting(IEnumerable<string[]> wordings, double heightMm, FreePlace free, Point near)
    {
        foreach (var lines in wordings)
        {
            var (along, up) = (lines.Max(line => TextWidth.Of(line, heightMm, isBold: false)), heightMm * (1 + Descent + ((lines.Length - 1) * Pitch)));
            if (free.Find(along, up, near) is { } place)
            {
                return lines.Select((line, i) => new Lettering(line, place + new Step(0, heightMm * (Descent + ((lines.Length - 1 - i) * Pitch))), heightMm));
            }

            if (free.Find(up, along, near) is { } upright)
            {
                return lines.Select((line, i) => new Lettering(line, upright + new Step(heightMm * (1 + (i * Pitch)), 0), heightMm, TurnDegrees: 90));
            }
        }

        return [];
    }
}
