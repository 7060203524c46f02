using System.Text.RegularExpressions;
using CanvasCut.Language;

namespace CanvasCut.Design;

/// <summary>Texts that could be meant in more than one way, or that no tape measure shows.</summary>
internal static partial class LengthDoubts
{
    /// <summary>What is wrong, or null when nothing is doubtful.</summary>
    public static string? Of(string text) =>
        NotNumber().IsMatch(text) ? Say.Of("is not a number; write one and a unit, such as \"1040 mm\"")
        : Exponent().IsMatch(text) ? Say.Of("has an exponent; write the number out")
        : Thousands().IsMatch(text) ? Say.Of($"has a comma that may part thousands or decimals; write \"{text.Replace(",", string.Empty, StringComparison.Ordinal)}\" or \"{text.Replace(',', '.')}\"")
        : DecimalComma().IsMatch(text) ? Say.Of($"has a comma; decimals have a point, \"{text.Replace(',', '.')}\"")
        : text.Contains(',', StringComparison.Ordinal) ? Say.Of("has a comma; write one length, decimals after a point")
        : SeveralPoints().IsMatch(text) ? Say.Of("has more than one point in a number; do not part thousands")
        : null;

    [GeneratedRegex(@"\b(nan|inf|infinity)\b|∞", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex NotNumber();

    [GeneratedRegex(@"[0-9.][eE][-+]?[0-9]", RegexOptions.CultureInvariant)]
    private static partial Regex Exponent();

    [GeneratedRegex(@"[0-9],[0-9]{3}(?![0-9])", RegexOptions.CultureInvariant)]
    private static partial Regex Thousands();

    [GeneratedRegex(@"^[^,]*[0-9],[0-9][^,]*$", RegexOptions.CultureInvariant)]
    private static partial Regex DecimalComma();

    [GeneratedRegex(@"\.[0-9]*\.", RegexOptions.CultureInvariant)]
    private static partial Regex SeveralPoints();
}
