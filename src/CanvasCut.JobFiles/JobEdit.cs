using System.Collections.Immutable;
using CanvasCut.Design;

namespace CanvasCut.JobFiles;

/// <summary>A value that was exchanged in a job file.</summary>
/// <param name="Path">Its field, as in <c>top.bow[2].station</c>.</param>
/// <param name="Old">What stood there.</param>
/// <param name="New">What stands there now.</param>
public sealed record ExchangedValue(string Path, string Old, string New);

/// <summary>A job file's text with other values in the places of some: nothing but the characters of these values changes.</summary>
/// <param name="Text">The new text.</param>
/// <param name="Exchanged">Which values are new, in the order asked for; those that were the same already are not among them.</param>
/// <param name="Absent">The fields that do not stand in the text, so that there was nothing to exchange.</param>
public sealed record JobEdit(string Text, ImmutableArray<ExchangedValue> Exchanged, ImmutableArray<string> Absent)
{
    /// <summary>How many tables of bows a text has; null when it is no TOML, or has a field twice.</summary>
    public static int? BowsIn(string text) => Root(text) is { } root ? JobValues.TablesIn(root, "top.bow").Count() : null;

    /// <summary>Whether a text gives the top's width at stations.</summary>
    public static bool HasWidths(string text) => Root(text) is { } root && JobValues.TablesIn(root, "top.width_at").Any();

    /// <summary>Exchanges texts in quotes by their fields.</summary>
    /// <param name="text">A job file, right or wrong in its values, but TOML.</param>
    /// <param name="values">Fields and what should stand there, without quotes and without characters that quotes would need.</param>
    /// <exception cref="ArgumentException">The text is no TOML.</exception>
    public static JobEdit Of(string text, IEnumerable<(string Path, string Value)> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        var root = Root(text) ?? throw new ArgumentException("The text is no TOML.", nameof(text));
        var asked = values.Select(value => (value.Path, value.Value, Node: FieldPath.Find(root, value.Path).Node as TomlScalar)).ToList();
        var found = asked.Where(value => value.Node is { Value: string }).ToList();
        var changed = found.Where(value => (string)value.Node!.Value! != value.Value).ToList();
        var edited = changed.OrderByDescending(value => value.Node!.Characters.Start.Value)
            .Aggregate(text, (before, value) => $"{before[..value.Node!.Characters.Start]}\"{value.Value}\"{before[value.Node.Characters.End..]}");
        return new(
            edited,
            [.. changed.Select(value => new ExchangedValue(value.Path, (string)value.Node!.Value!, value.Value))],
            [.. asked.Except(found).Select(value => value.Path)]);
    }

    private static TomlTable? Root(string text)
    {
        var log = new ProblemLog();
        var (root, _) = TomlText.Read(text, string.Empty, log);
        return log.IsEmpty ? root : null;
    }
}
