using System.Text.RegularExpressions;

namespace CanvasCut.Language;

/// <summary>A language that every text has: the English one with an accent on each vowel.</summary>
internal static partial class AccentedText
{
    private const string Plain = "aeiouyAEIOUY";
    private const string Marked = "áéíóúýÁÉÍÓÚÝ";

    /// <summary>The text with its accents; gaps stay as they are.</summary>
    public static string Of(string english) => Gap().Replace(english, match => match.Value is [var letter] ? $"{Marked[Plain.IndexOf(letter, StringComparison.Ordinal)]}" : match.Value);

    [GeneratedRegex(@"\{[0-9]+(:[^}]*)?\}|[aeiouyAEIOUY]")]
    private static partial Regex Gap();
}
