using System.Text;
using System.Text.Json;

namespace CanvasCut.Job;

/// <summary>Where in a JSON text each value stands.</summary>
internal sealed class JsonPlaces
{
    private readonly Dictionary<string, (int Line, int Column)> _places = new(StringComparer.Ordinal);
    private readonly HashSet<string> _tables = new(StringComparer.Ordinal);

    private JsonPlaces()
    {
    }

    /// <summary>Reads a text as far as it is JSON.</summary>
    public static JsonPlaces Of(ReadOnlySpan<byte> text)
    {
        var places = new JsonPlaces();
        try
        {
            places.Find(text);
        }
        catch (JsonException)
        {
            // What stands before the break has its place.
        }

        return places;
    }

    /// <summary>The first item of a list that is null; null when there is none.</summary>
    public string? NullItem { get; private set; }

    /// <summary>Whether a value is there; by its path, as marks[2].name, items counted from 1.</summary>
    public bool Has(string path) => _places.ContainsKey(path);

    /// <summary>Whether a value is a table.</summary>
    public bool IsTable(string path) => _tables.Contains(path);

    /// <summary>Where a value stands, line and column counted from 1. Of what is missing, where the nearest table round it stands.</summary>
    public (int Line, int Column) Of(string path)
    {
        while (path.Length > 0)
        {
            if (_places.TryGetValue(path, out var place))
            {
                return place;
            }

            path = path[..Math.Max(path.LastIndexOfAny(['.', '[']), 0)];
        }

        return (1, 1);
    }

    private void Find(ReadOnlySpan<byte> text)
    {
        var reader = new Utf8JsonReader(text);
        var (line, lineStart, seen) = (1, 0, 0);
        var around = new Stack<(string Path, int Index)>();
        var name = string.Empty;
        while (reader.Read())
        {
            for (; seen < reader.TokenStartIndex; seen++)
            {
                (line, lineStart) = text[seen] == '\n' ? (line + 1, seen + 1) : (line, lineStart);
            }

            if (reader.TokenType == JsonTokenType.PropertyName)
            {
                // As it is written: a name of ours has nothing to undo, and one that cannot be undone is none of ours.
                name = Encoding.UTF8.GetString(reader.ValueSpan);
                continue;
            }

            if (reader.TokenType is JsonTokenType.EndArray or JsonTokenType.EndObject)
            {
                around.Pop();
                continue;
            }

            var path = NextPath(around, name);
            _places[path] = (line, (int)reader.TokenStartIndex - lineStart + 1);
            if (reader.TokenType == JsonTokenType.Null && path.EndsWith(']'))
            {
                NullItem ??= path;
            }

            if (reader.TokenType == JsonTokenType.StartObject)
            {
                _tables.Add(path);
            }

            if (reader.TokenType is JsonTokenType.StartArray or JsonTokenType.StartObject)
            {
                around.Push((path, reader.TokenType == JsonTokenType.StartArray ? 1 : 0));
            }
        }
    }

    /// <summary>The path of the next value; items of a list are counted from 1.</summary>
    private static string NextPath(Stack<(string Path, int Index)> around, string name)
    {
        if (!around.TryPop(out var outer))
        {
            return string.Empty;
        }

        around.Push((outer.Path, outer.Index > 0 ? outer.Index + 1 : 0));
        return outer.Index > 0 ? FormattableString.Invariant($"{outer.Path}[{outer.Index}]")
            : outer.Path.Length > 0 ? $"{outer.Path}.{name}"
            : name;
    }
}
