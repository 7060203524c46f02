using System.Text.Json;

namespace CanvasCut.Language;

/// <summary>The printed strings of one language.</summary>
internal sealed class Table
{
    private readonly Dictionary<string, string> _texts;
    private readonly Func<string, string> _otherwise;

    private Table(Dictionary<string, string> texts, Func<string, string> otherwise) => (_texts, _otherwise) = (texts, otherwise);

    /// <summary>A table that changes every text by a rule.</summary>
    public static Table By(Func<string, string> rule) => new([], rule);

    /// <summary>The table of a language that comes with the program.</summary>
    /// <exception cref="InvalidOperationException">It is not embedded.</exception>
    public static Table Read(string code)
    {
        using var stream = typeof(Table).Assembly.GetManifestResourceStream($"{code}.json") ?? throw new InvalidOperationException($"{code}.json is not embedded.");
        using var table = JsonDocument.Parse(stream);
        return new(table.RootElement.EnumerateObject().ToDictionary(entry => entry.Name, entry => entry.Value.GetString()!, StringComparer.Ordinal), text => text);
    }

    /// <summary>The text in this language; where there is none, the text itself.</summary>
    public string Find(string english) => _texts.TryGetValue(english, out var text) ? text : _otherwise(english);
}
