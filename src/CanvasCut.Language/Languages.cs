using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Globalization;

namespace CanvasCut.Language;

/// <summary>The languages there are, and the one of the moment.</summary>
/// <remarks>
/// The language is that of <see cref="CultureInfo.CurrentUICulture"/>, which every task and thread inherits. Nothing else of a
/// culture is used: numbers, dates and the order of words sorted are the same in every language.
/// </remarks>
public static class Languages
{
    /// <summary>What is spoken unless another language is asked for.</summary>
    public const string English = "en";

    /// <summary>Every letter that can has an accent: what is printed without is in no table. For those who write tables.</summary>
    public const string Accented = "qps";

    private static readonly ConcurrentDictionary<string, Table> Tables = new(StringComparer.Ordinal);

    /// <summary>The codes of ISO 639-1 of the languages that are complete.</summary>
    public static ImmutableArray<string> Known { get; } = [English, "de"];

    /// <summary>The code of the language of the moment; English where the system's culture is none of those there are.</summary>
    public static string Code => CodeOf(CultureInfo.CurrentUICulture.Name);

    internal static Table Current => Tables.GetOrAdd(Code, code => code == Accented ? Table.By(AccentedText.Of) : Table.Read(code));

    /// <summary>A region's language is that of the name without it, as de-AT is de.</summary>
    private static string CodeOf(string culture) =>
        Has(culture) ? culture
        : culture.LastIndexOf('-') is > 0 and var end ? CodeOf(culture[..end])
        : English;

    /// <summary>Whether there is such a language.</summary>
    public static bool Has(string code) => code == Accented || Known.Contains(code, StringComparer.Ordinal);

    /// <summary>Speaks a language in this task, and in those that it begins, until the speech is disposed of.</summary>
    /// <param name="code">One of <see cref="Known"/>, or <see cref="Accented"/>.</param>
    /// <exception cref="ArgumentException">There is no such language.</exception>
    public static Speech Speak(string code) => Has(code)
        ? new(code == English ? CultureInfo.InvariantCulture : CultureInfo.GetCultureInfo(code))
        : throw new ArgumentException($"There is no table for \"{code}\".", nameof(code));
}
