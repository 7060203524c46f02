using CanvasCut.Design;

namespace CanvasCut.JobFiles;

/// <summary>A job file as it stands for one panel of its list: shared tables, with what the panel has of its own laid over them.</summary>
/// <param name="Root">The file as if it had this panel alone.</param>
/// <param name="Entry">The panel's own table.</param>
/// <param name="Number">Its number in the list, from 1.</param>
internal sealed record PanelView(TomlTable Root, TomlTable Entry, int Number)
{
    /// <summary>The views of a file, in its order; none when it has one panel without a list.</summary>
    public static IEnumerable<PanelView> Of(TomlTable root) =>
        root["panel"] is TomlList list
            ? list.Items.Index().Where(item => item.Item is TomlTable).Select(item => Of(root, (TomlTable)item.Item, item.Index + 1))
            : [];

    /// <summary>The text of one of the panel's own fields; null when it is not there or no text.</summary>
    public string? TextOf(string field) => Entry[field] is TomlScalar { Value: string text } && !string.IsNullOrWhiteSpace(text) ? text.Trim() : null;

    /// <summary>Where one of the panel's own fields stands; the panel's table where it is not there.</summary>
    public TextPlace PlaceOf(string field) => Entry.Keys.FirstOrDefault(key => key.Name == field) is { Name: not null } key ? key.Place : Entry.Place;

    /// <summary>A problem of the view, where it stands in the file.</summary>
    public Problem InFile(Problem problem) => problem with { Place = problem.Place with { Field = InFile(problem.Place.Field) } };

    /// <summary>The path in the file of a field of the view.</summary>
    public string InFile(string field)
    {
        var table = field.Split('.', '[')[0];
        return table == "panel" ? $"panel[{Number}]{field["panel".Length..]}"
            : OwnTables.Names.Contains(table, StringComparer.Ordinal) && FieldPath.Find(Entry, field).Node is not null ? $"panel[{Number}].{field}"
            : field;
    }

    private static PanelView Of(TomlTable root, TomlTable entry, int number)
    {
        var view = new TomlTable(root.Place);
        foreach (var (name, place) in root.Keys.Where(key => key.Name != "panel" && entry[key.Name] is null | !OwnTables.Names.Contains(key.Name, StringComparer.Ordinal)))
        {
            view.Add(name, place, root[name]!);
        }

        view.Add("panel", entry.Place, Without(entry, OwnTables.Names));
        foreach (var (name, place) in entry.Keys.Where(key => OwnTables.Names.Contains(key.Name, StringComparer.Ordinal)))
        {
            view.Add(name, place, Over(root[name], entry[name]!, name));
        }

        return new(view, entry, number);
    }

    private static TomlTable Without(TomlTable table, string[] names)
    {
        var rest = new TomlTable(table.Place);
        foreach (var (name, place) in table.Keys.Where(key => !names.Contains(key.Name, StringComparer.Ordinal)))
        {
            rest.Add(name, place, table[name]!);
        }

        return rest;
    }

    /// <summary>The shared node with the own one over it, table by table; one value for all sides counts as four.</summary>
    private static TomlNode Over(TomlNode? shared, TomlNode own, string path)
    {
        if (own is not TomlTable ownTable || Spread(shared, path) is not TomlTable sharedTable)
        {
            return own;
        }

        var both = new TomlTable(ownTable.Place);
        foreach (var (name, place) in ownTable.Keys)
        {
            both.Add(name, place, Over(sharedTable[name], ownTable[name]!, $"{path}.{name}"));
        }

        foreach (var (name, place) in sharedTable.Keys)
        {
            both.Add(name, place, sharedTable[name]!);
        }

        return both;
    }

    private static TomlNode? Spread(TomlNode? node, string path)
    {
        if (node is not TomlScalar || !SideNames.Is(path))
        {
            return node;
        }

        var sides = new TomlTable(node.Place);
        foreach (var side in SideNames.All)
        {
            sides.Add(side, node.Place, node);
        }

        return sides;
    }
}
