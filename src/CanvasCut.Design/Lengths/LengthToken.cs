using System.Globalization;
using System.Text;

namespace CanvasCut.Design;

/// <summary>What a token of a length is.</summary>
internal enum LengthTokenKind
{
    Number,
    Unit,
    Slash,
    Dash,
    Other,
}

/// <summary>One token of a length.</summary>
internal readonly record struct LengthToken(LengthTokenKind Kind, string Text)
{
    /// <summary>Every token of a text, after typographic signs have become plain ones.</summary>
    public static List<LengthToken> AllOf(string text)
    {
        var plain = Plain(text);
        var tokens = new List<LengthToken>();
        for (var at = 0; at < plain.Length;)
        {
            var end = EndOf(plain, at);
            if (plain[at] != ' ')
            {
                tokens.Add(new(KindOf(plain[at]), plain[at..end]));
            }

            at = end;
        }

        return tokens;
    }

    private static LengthTokenKind KindOf(char first) => first switch
    {
        >= '0' and <= '9' or '.' => LengthTokenKind.Number,
        '\'' or '"' => LengthTokenKind.Unit,
        '/' => LengthTokenKind.Slash,
        '-' => LengthTokenKind.Dash,
        _ => char.IsLetter(first) ? LengthTokenKind.Unit : LengthTokenKind.Other,
    };

    private static int EndOf(string text, int start)
    {
        var end = start + 1;
        if (KindOf(text[start]) == LengthTokenKind.Number)
        {
            while (end < text.Length && KindOf(text[end]) == LengthTokenKind.Number)
            {
                end++;
            }
        }
        else if (char.IsLetter(text[start]))
        {
            while (end < text.Length && char.IsLetter(text[end]))
            {
                end++;
            }

            // "41 in." ends in a point that belongs to the unit.
            end += text[end..] == "." ? 1 : 0;
        }

        return end;
    }

    private static string Plain(string text)
    {
        var plain = new StringBuilder();
        foreach (var character in text.Trim().Replace("''", "\"", StringComparison.Ordinal))
        {
            plain.Append(Plain(character));
        }

        return plain.ToString();
    }

    private static string Plain(char character) => character switch
    {
        '½' => " 1/2 ",
        '⅓' => " 1/3 ",
        '⅔' => " 2/3 ",
        '¼' => " 1/4 ",
        '¾' => " 3/4 ",
        '⅕' => " 1/5 ",
        '⅖' => " 2/5 ",
        '⅗' => " 3/5 ",
        '⅘' => " 4/5 ",
        '⅙' => " 1/6 ",
        '⅚' => " 5/6 ",
        '⅛' => " 1/8 ",
        '⅜' => " 3/8 ",
        '⅝' => " 5/8 ",
        '⅞' => " 7/8 ",
        '′' or '’' or '‘' or 'ʹ' => "'",
        '″' or '”' or '“' or 'ʺ' => "\"",
        '−' or '‐' or '‑' or '‒' or '–' => "-",
        '⁄' or '∕' => "/",
        _ => char.GetUnicodeCategory(character) == UnicodeCategory.SpaceSeparator || character == '\t' ? " " : character.ToString(),
    };
}
