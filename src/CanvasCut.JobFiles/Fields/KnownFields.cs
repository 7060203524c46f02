using System.Text.RegularExpressions;

namespace CanvasCut.JobFiles;

/// <summary>Every field there is, in the order of docs/job-file.md.</summary>
internal static partial class KnownFields
{
    public static IReadOnlyList<Field> All { get; } = [.. TopFields.All, .. PanelFields.All, .. LabelFields.All, .. CarrierFields.All, .. MountFields.All, .. WorkshopFields.All, .. ConditionFields.All, .. WorkFields.All, .. ElectricFields.All];

    private static Dictionary<string, int> Order { get; } =
        All.Select(field => field.Name).Index().ToDictionary(pair => pair.Item, pair => pair.Index, StringComparer.Ordinal);

    /// <summary>The field at a path such as top.bow[2].station, or null.</summary>
    public static Field? At(string path) => Order.TryGetValue(WithoutNumbers(path), out var index) ? All[index] : null;

    /// <summary>Where a path's field stands in the order of the documentation.</summary>
    public static int OrderOf(string path) => Order[WithoutNumbers(path)];

    /// <summary>The names that may stand in a table, fields and tables alike.</summary>
    public static IEnumerable<string> NamesIn(string table)
    {
        var prefix = table.Length == 0 ? string.Empty : WithoutNumbers(table) + ".";
        return All.Where(field => field.Name.StartsWith(prefix, StringComparison.Ordinal))
            .Select(field => field.Name[prefix.Length..].Split('.')[0])
            .Distinct();
    }

    /// <summary>The outermost table of a path; empty at the top of the file.</summary>
    public static string TableOf(string path) => path.Contains('.', StringComparison.Ordinal) ? path[..path.IndexOf('.', StringComparison.Ordinal)] : string.Empty;

    private static string WithoutNumbers(string path) => Numbers().Replace(path, "[]");

    [GeneratedRegex(@"\[[0-9]+\]")]
    private static partial Regex Numbers();
}
