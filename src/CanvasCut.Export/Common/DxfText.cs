using System.Text;

namespace CanvasCut.Export.Common;

/// <summary>Text as a release 12 file can hold it.</summary>
internal static class DxfText
{
    private const int LastPlainCharacter = 0x7E;

    private const int LastOfFirstPlane = 0xFFFF;

    /// <summary>Plain ASCII: other characters as \U+XXXX, and the signs that mean something to a reader doubled.</summary>
    public static string Escaped(string text)
    {
        var escaped = new StringBuilder();

        // "%%" begins a special sign and "%%%" is a percent sign; "^" begins a control character and "^ " is a caret.
        foreach (var character in text.Replace("%%", "%%%%%%", StringComparison.Ordinal).Replace("^", "^ ", StringComparison.Ordinal).EnumerateRunes())
        {
            escaped.Append(character.Value switch
            {
                < ' ' => " ",
                <= LastPlainCharacter => character.ToString(),
                <= LastOfFirstPlane => $"\\U+{character.Value:X4}",
                _ => "?",
            });
        }

        return escaped.ToString();
    }
}
