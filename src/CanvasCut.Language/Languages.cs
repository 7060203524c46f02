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

    /// <summary>The code of the language of the moment.</summary>
    public static string Code => CultureInfo.CurrentUICulture.Name is { Length: > 0 } name ? name : English;

    internal static Table Current => Tables.GetOrAdd(Code, code => code == Accented ? Table.By(AccentedText.Of) : Table.Read(code));

    /// <summary>Whether there is such a language.</summary>
    public static bool Has(string code) => code == Accented || Known.Contains(code, StringComparer.Ordinal);

    /// <summary>Speaks a language in this task, and in those that it begins, until the speech is disposed of.</summary>
    /// <param name="code">One of <see cref="Known"/>, or <see cref="Accented"/>.</param>
    /// <exception cref="ArgumentException">There is no such language.</exception>
    public static Speech Speak(string code) => Has(code)
        ? new(code == English ? CultureInfo.InvariantCulture : CultureInfo.GetCultureInfo(code))
        : throw new ArgumentException($"There is no table for \"{code}\".", nameof(code));
}
