namespace CanvasCut.JobFiles;

/// <summary>Where in the text something begins, counted from 1.</summary>
internal readonly record struct TextPlace(int Line, int Column);

/// <summary>A value of a TOML file and where it stands.</summary>
internal abstract class TomlNode(TextPlace place)
{
    public TextPlace Place { get; } = place;
}

/// <summary>A text, a number, a flag, a date, or null for what a job file never holds (times).</summary>
internal sealed class TomlScalar(TextPlace place, object? value, Range characters = default) : TomlNode(place)
{
    public object? Value { get; } = value;

    /// <summary>Which characters of the text it is, quotes and all; empty for what was not read.</summary>
    public Range Characters { get; } = characters;
}

/// <summary>A list.</summary>
internal sealed class TomlList(TextPlace place) : TomlNode(place)
{
    public List<TomlNode> Items { get; } = [];
}

/// <summary>A table; its keys in the order of the file.</summary>
internal sealed class TomlTable(TextPlace place) : TomlNode(place)
{
    private readonly Dictionary<string, TomlNode> _nodes = new(StringComparer.Ordinal);

    /// <summary>Each key once, and where it stands.</summary>
    public List<(string Name, TextPlace Place)> Keys { get; } = [];

    public TomlNode? this[string name] => _nodes.GetValueOrDefault(name);

    /// <summary>Adds a value; a second one of the same name is dropped, for it is reported as defined twice.</summary>
    public void Add(string name, TextPlace place, TomlNode node)
    {
        if (_nodes.TryAdd(name, node))
        {
            Keys.Add((name, place));
        }
    }
}
