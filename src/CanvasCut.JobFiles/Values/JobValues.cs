using System.Collections.Immutable;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>The values of all fields by their paths; what was wrong or left out without a default is null.</summary>
internal sealed class JobValues(TomlTable root, string fileName, Dictionary<string, object> values)
{
    /// <summary>The panels that share its panel's carrier; null where it is alone.</summary>
    public RowValues? Row { get; private init; }

    /// <summary>The same with panels that share the carrier.</summary>
    public JobValues WithRow(RowValues row) => new(root, fileName, values) { Row = row };

    public Length? Length(string path) => Value(path) as Length?;

    public (Length From, Length To)? Pair(string path) => Value(path) as (Length, Length)?;

    public ImmutableArray<Length>? Lengths(string path) => Value(path) as ImmutableArray<Length>?;

    public ImmutableArray<string>? Words(string path) => Value(path) as ImmutableArray<string>?;

    public string? Text(string path) => Value(path) as string;

    public T? Quantity<T>(string path)
        where T : struct => Value(path) as T?;

    public PaperSpec? Paper(string path) => Value(path) as PaperSpec;

    /// <summary>Whether something is written at a path, right or wrong.</summary>
    public bool IsWritten(string path) => FieldPath.Find(root, path).Node is not null;

    /// <summary>Whether an unusual value at a path was said to be meant.</summary>
    public bool IsAccepted(string path) => AcceptedFields.Of(root).Contains(path, StringComparer.Ordinal);

    /// <summary>The paths of the tables of a list, as top.bow[1], top.bow[2].</summary>
    public IEnumerable<string> Tables(string list) => TablesIn(root, list);

    public Place PlaceOf(string path)
    {
        var place = FieldPath.PlaceOf(root, path);
        return new(fileName, place.Line, place.Column, path);
    }

    public static IEnumerable<string> TablesIn(TomlTable root, string list) =>
        FieldPath.Find(root, list).Node is TomlList found
            ? found.Items.Index().Where(item => item.Item is TomlTable).Select(item => $"{list}[{item.Index + 1}]")
            : [];

    private object? Value(string path) => values.GetValueOrDefault(path);
}

/// <summary>The values of panels that lie in a row with another.</summary>
/// <param name="Axis">Which way the row runs.</param>
/// <param name="After">Those after the first, in their order; of each only what stands in its own table.</param>
internal sealed record RowValues(RowAxis Axis, ImmutableArray<JobValues> After);
