using System.Globalization;
using System.Text;

namespace CanvasCut.Language;

/// <summary>Text from a person's file made fit for a terminal: what would move its cursor, colour it or turn its letters round is shown and not done.</summary>
public static class VisibleText
{
    /// <summary>The text with every control character as it is written in JSON and TOML, such as \u001b; tabs stay.</summary>
    /// <param name="text">Any text.</param>
    public static string OfLine(string text) => Of(text, keepsLineEnds: false);

    /// <summary>The same of a text of several lines.</summary>
    /// <param name="text">Any text.</param>
    public static string OfLines(string text) => Of(text, keepsLineEnds: true);

    private static string Of(string text, bool keepsLineEnds)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (!text.Any(IsControl))
        {
            return text;
        }

        var shown = new StringBuilder(text.Length + 16);
        for (var i = 0; i < text.Length; i++)
        {
            var isLineEnd = text[i] == '\n' || (text[i] == '\r' && i + 1 < text.Length && text[i + 1] == '\n');
            _ = IsControl(text[i]) && text[i] != '\t' && !(keepsLineEnds && isLineEnd)
                ? shown.Append(CultureInfo.InvariantCulture, $"\\u{(int)text[i]:x4}")
                : shown.Append(text[i]);
        }

        return shown.ToString();
    }

    /// <summary>The controls of ISO 6429, the ends of lines and paragraphs of Unicode, and its marks that turn the order of letters.</summary>
    private static bool IsControl(char letter) =>
        char.IsControl(letter) || letter is '\u2028' or '\u2029' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');
}
