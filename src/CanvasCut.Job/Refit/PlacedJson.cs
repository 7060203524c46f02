using System.Text.Json;

namespace CanvasCut.Job;

/// <summary>A JSON text that knows where in it each value stands.</summary>
internal sealed class PlacedJson
{
    private readonly Dictionary<string, (int Line, int Column)> _places = new(StringComparer.Ordinal);

    private PlacedJson(JsonElement root, ReadOnlySpan<byte> text)
    {
        Root = root;
        FindPlaces(text);
    }

    /// <summary>The whole.</summary>
    public JsonElement Root { get; }

    /// <summary>Reads a text.</summary>
    /// <exception cref="JsonException">It is no JSON, or a text in it has half a letter.</exception>
    public static PlacedJson Of(byte[] text)
    {
        using var document = JsonDocument.Parse(text);
        return new(document.RootElement.Clone(), text);
    }

    /// <summary>Where a value stands, as marks[2].name; counted from 1. Of what is missing, where the nearest table round it stands.</summary>
    public (int Line, int Column) PlaceOf(string path)
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

    private void FindPlaces(ReadOnlySpan<byte> text)
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

            if (reader.TokenType is JsonTokenType.PropertyName or JsonTokenType.String)
            {
                var read = Text(ref reader, line, lineStart);
                if (reader.TokenType == JsonTokenType.PropertyName)
                {
                    name = read;
                    continue;
                }
            }

            if (reader.TokenType is JsonTokenType.EndArray or JsonTokenType.EndObject)
            {
                around.Pop();
                continue;
            }

            var path = NextPath(around, name);
            _places[path] = (line, (int)reader.TokenStartIndex - lineStart + 1);
            if (reader.TokenType is JsonTokenType.StartArray or JsonTokenType.StartObject)
            {
                around.Push((path, reader.TokenType == JsonTokenType.StartArray ? 1 : 0));
            }
        }
    }

    private static string Text(ref Utf8JsonReader reader, int line, int lineStart)
    {
        try
        {
            return reader.GetString()!;
        }
        catch (InvalidOperationException exception)
        {
            throw new JsonException("A text holds half a letter.", string.Empty, line - 1, reader.TokenStartIndex - lineStart, exception);
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
