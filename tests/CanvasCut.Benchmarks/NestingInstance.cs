using System.Collections.Immutable;
using System.Text.Json;
using CanvasCut.Geometry;
using CanvasCut.Nesting;

namespace CanvasCut.Benchmarks;

/// <summary>A published task with its name.</summary>
internal sealed record NestingInstance(string Name, NestingTask Task)
{
    /// <summary>Reads every task of a folder: one irregular task a file, or a set of tasks of rectangles a file.</summary>
    /// <param name="folder">Where the files lie.</param>
    /// <param name="mayTurn">Whether rectangles may be turned by quarters; the files do not tell.</param>
    public static ImmutableArray<NestingInstance> In(string folder, bool mayTurn = false) =>
        [.. Directory.EnumerateFiles(folder, "*.json").Order(StringComparer.Ordinal).SelectMany(file => Of(file, mayTurn ? AllowedTurns.Quarter : AllowedTurns.None))];

    private static IEnumerable<NestingInstance> Of(string file, AllowedTurns turns)
    {
        using var document = JsonDocument.Parse(File.ReadAllText(file));
        var root = document.RootElement;
        return root.ValueKind != JsonValueKind.Object ? []
            : root.TryGetProperty("instances", out var set) ? (NestingInstance[])[.. set.EnumerateArray().Select(each => Rectangles(each, turns))]
            : root.TryGetProperty("strip_height", out _) ? [Irregular(root)]
            : [];
    }

    private static NestingInstance Irregular(JsonElement root) => new(
        root.GetProperty("name").GetString()!,
        new([.. root.GetProperty("items").EnumerateArray().Select(ItemOf)], root.GetProperty("strip_height").GetDouble(), 0));

    private static NestingItem ItemOf(JsonElement item) => new(
        $"item {item.GetProperty("id").GetInt32()}",
        new(item.GetProperty("shape").GetProperty("data").EnumerateArray().Select(point => new Point(point[0].GetDouble(), point[1].GetDouble()))),
        item.GetProperty("demand").GetInt32(),
        [.. item.GetProperty("allowed_orientations").EnumerateArray().Select(degrees => new Pose((int)degrees.GetDouble()))]);

    /// <summary>The files give the width across the strip first, then the height along it.</summary>
    private static NestingInstance Rectangles(JsonElement root, AllowedTurns turns) => new(
        root.GetProperty("name").GetString()!,
        new([.. root.GetProperty("items").EnumerateArray().Select((item, index) => RectangleOf(item, index, turns))], root.GetProperty("strip_width").GetDouble(), 0));

    private static NestingItem RectangleOf(JsonElement item, int index, AllowedTurns turns) => new(
        $"rectangle {index}", Outline.Of(new(0, 0, item[1].GetDouble(), item[0].GetDouble())), item[2].GetInt32(), turns);
}
