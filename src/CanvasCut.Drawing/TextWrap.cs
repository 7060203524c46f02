using System.Collections.Immutable;
using System.Text;

namespace CanvasCut.Drawing;

/// <summary>Breaks text into lines.</summary>
public static class TextWrap
{
    /// <summary>The lines of a text, each no wider than allowed.</summary>
    /// <param name="text">Words; a line break in it stays one.</param>
    /// <param name="widthMm">The widest line allowed. A single letter wider than that still gets a line.</param>
    /// <param name="heightMm">The height of a capital letter.</param>
    /// <param name="isBold">Whether in bold letters.</param>
    /// <returns>At least one line; a word wider than a line is broken between letters.</returns>
    public static ImmutableArray<string> Lines(string text, double widthMm, double heightMm, bool isBold) =>
    [
        .. text.ReplaceLineEndings("\n").Split('\n')
            .SelectMany(paragraph => LinesOf(paragraph, part => TextWidth.Of(part, heightMm, isBold) <= widthMm)),
    ];

    private static List<string> LinesOf(string paragraph, Func<string, bool> fits)
    {
        var lines = new List<string>();
        var line = string.Empty;
        foreach (var word in paragraph.Split(' ', StringSplitOptions.RemoveEmptyEntries).SelectMany(word => Broken(word, fits)))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && !fits(longer))
            {
                lines.Add(line);
                longer = word;
            }

            line = longer;
        }

        lines.Add(line);
        return lines;
    }

    private static IEnumerable<string> Broken(string word, Func<string, bool> fits)
    {
        if (fits(word))
        {
            yield return word;
            yield break;
        }

        var part = new StringBuilder();
        foreach (var character in word.EnumerateRunes())
        {
            if (part.Length > 0 && !fits($"{part}{character}"))
            {
                yield return part.ToString();
                part.Clear();
            }

            part.Append(character);
        }

        yield return part.ToString();
    }
}
