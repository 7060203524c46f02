namespace CanvasCut.Drawing;

/// <summary>How wide a line of text is.</summary>
public static class TextWidth
{
    /// <summary>The width of a line in millimetres: the sum of its letters' advance widths, without kerning.</summary>
    /// <param name="text">One line.</param>
    /// <param name="heightMm">The height of a capital letter.</param>
    /// <param name="isBold">Whether in bold letters.</param>
    public static double Of(string text, double heightMm, bool isBold) =>
        text.EnumerateRunes().Sum(character => LetterTable.EmsOf(character, isBold)) * EmMm(heightMm);

    /// <summary>The width of a line of text on a sheet.</summary>
    public static double Of(Lettering lettering) => Of(lettering.Text, lettering.HeightMm, lettering.IsBold);

    /// <summary>The em, which other programs call the font size, of letters whose capitals are so high.</summary>
    public static double EmMm(double heightMm) => heightMm / LetterTable.CapitalPart;

    /// <summary>The text itself, or as much of it as fits, ended by "…".</summary>
    public static string Shortened(string text, double widthMm, double heightMm, bool isBold)
    {
        var kept = text;
        while (kept.Length > 0 && Of(text.Length == kept.Length ? kept : kept + "…", heightMm, isBold) > widthMm)
        {
            // A character outside the first plane is a pair, which must not be torn.
            kept = kept[..^(char.IsLowSurrogate(kept[^1]) ? 2 : 1)].TrimEnd();
        }

        return kept.Length == text.Length ? text : kept + "…";
    }
}
