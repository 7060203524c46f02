namespace CanvasCut.Export.Common;

/// <summary>Text for devices and readers that know no more than the 95 printable characters of ASCII.</summary>
internal static class SevenBitText
{
    private static readonly (string Sign, string Plain)[] Signs =
    [
        ("×", "x"), ("·", "-"), ("–", "-"), ("—", "-"), ("−", "-"), ("→", "->"), ("°", " deg"), ("½", " 1/2"), ("¼", " 1/4"), ("¾", " 3/4"),
        ("’", "'"), ("‘", "'"), ("‚", ","), ("“", "\""), ("”", "\""), ("„", "\""), ("²", "2"), ("µ", "u"), ("±", "+/-"),
        ("ä", "ae"), ("ö", "oe"), ("ü", "ue"), ("ß", "ss"), ("å", "aa"), ("æ", "ae"), ("ø", "oe"), ("é", "e"), ("è", "e"), ("ê", "e"),
        ("à", "a"), ("á", "a"), ("â", "a"), ("ã", "a"), ("ç", "c"), ("í", "i"), ("ñ", "n"), ("ó", "o"), ("õ", "o"), ("ú", "u"), ("ý", "y"),
    ];

    /// <summary>The text with signs and letters written plainly, and a question mark for what has no plain form.</summary>
    public static string Of(string text)
    {
        foreach (var (sign, plain) in Signs)
        {
            text = text.Replace(sign, plain, StringComparison.Ordinal).Replace(sign.ToUpperInvariant(), plain.ToUpperInvariant(), StringComparison.Ordinal);
        }

        return string.Concat(text.EnumerateRunes().Select(rune => rune.Value switch
        {
            < ' ' => ' ',
            <= '~' => (char)rune.Value,
            _ => '?',
        }));
    }
}
