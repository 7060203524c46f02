namespace CanvasCut.Language;

/// <summary>The words that are printed, in the language of the moment.</summary>
/// <remarks>
/// What stands in the code is the English text, and with it the key under which every language's table has its own. A text that
/// no table has, such as a name the user gave, is printed as it is.
/// </remarks>
public static class Say
{
    /// <summary>A text without gaps.</summary>
    /// <param name="english">The English text.</param>
    public static string Of(string english) => Languages.Current.Find(english);

    /// <summary>A text with gaps; each language puts what fills them where it wants, the numbers always with a point.</summary>
    /// <param name="english">The English text.</param>
    public static string Of(Sentence english) => english.In(Languages.Current);

    /// <summary>A name as it stands within a sentence: with a small letter, unless the language writes its nouns with capitals.</summary>
    /// <param name="name">As it begins a line, in the language of the moment.</param>
    public static string Within(string name) =>
        name.Length == 0 || Languages.Code == "de" ? name : char.ToLowerInvariant(name[0]) + name[1..];

    /// <summary>A text that is put into words only where it is printed, by <see cref="Of(string)"/>; here for the table's sake.</summary>
    /// <param name="english">The English text.</param>
    public static string Later(string english) => english;
}
