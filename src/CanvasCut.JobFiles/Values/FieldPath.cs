namespace CanvasCut.JobFiles;

/// <summary>Finds what a path such as top.bow[2].station names; tables of a list are counted from 1.</summary>
internal static class FieldPath
{
    /// <summary>The node at a path, and whether something that is no table stands in its way.</summary>
    public static (TomlNode? Node, string Path, bool IsBlocked) Find(TomlTable root, string path)
    {
        TomlNode node = root;
        var parts = path.Split('.');
        for (var i = 0; i < parts.Length; i++)
        {
            var parent = string.Join('.', parts[..i]);
            if (node is not TomlTable table)
            {
                return SideNames.Is(parent) ? (node, parent, false) : (null, path, true);
            }

            if (Step(table, parts[i]) is not { } next)
            {
                return (null, path, false);
            }

            node = next;
        }

        return (node, path, false);
    }

    /// <summary>Where each field may stand in a file; one of a list of tables once for each table that is there.</summary>
    public static IEnumerable<(Field Field, string Path)> All(TomlTable root, IEnumerable<Field> fields) => fields.SelectMany(field =>
    {
        var parts = field.Name.Split("[]");
        var paths = parts.Length == 1 ? [field.Name] : JobValues.TablesIn(root, parts[0]).Select(table => table + parts[1]);
        return paths.Select(path => (field, path));
    });

    /// <summary>Where a path stands, or else the nearest table round it.</summary>
    public static TextPlace PlaceOf(TomlTable root, string path)
    {
        for (var at = path; at.Length > 0; at = Parent(at))
        {
            if (Find(root, at).Node is { } node)
            {
                return node.Place;
            }
        }

        return root.Place;
    }

    /// <summary>A field's path without the number of an item in its list.</summary>
    public static string WithoutItem(string path, Field field) =>
        field.Kind is FieldKind.LengthList or FieldKind.WordList && path.EndsWith(']') ? path[..path.LastIndexOf('[')] : path;

    private static string Parent(string path) => path.Contains('.', StringComparison.Ordinal) ? path[..path.LastIndexOf('.')] : string.Empty;

    private static TomlNode? Step(TomlTable table, string part)
    {
        var bracket = part.IndexOf('[', StringComparison.Ordinal);
        if (bracket < 0)
        {
            return table[part];
        }

        var number = int.Parse(part.AsSpan(bracket + 1, part.Length - bracket - 2), System.Globalization.CultureInfo.InvariantCulture);
        return table[part[..bracket]] is TomlList list && number <= list.Items.Count ? list.Items[number - 1] : null;
    }
}
