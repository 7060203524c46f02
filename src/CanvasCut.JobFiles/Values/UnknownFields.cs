using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.JobFiles;

/// <summary>Finds names that no field has, and tables where a value should be or the other way round.</summary>
internal sealed class UnknownFields(string fileName, ProblemLog log)
{
    public void Check(TomlTable table, string path)
    {
        var known = NamesIn(path);
        foreach (var (name, place) in table.Keys)
        {
            var full = path.Length == 0 ? name : $"{path}.{name}";
            if (known.Contains(name + "[]") || (full == "panel" && table[name] is TomlList))
            {
                CheckList(table[name]!, full);
            }
            else if (!known.Contains(name))
            {
                log.Report(ProblemCode.UnknownField, At(full, place), Say.Of($"There is no such field here{Hint(name, known)}"));
            }
            else if (KnownFields.At(OwnTables.Shared(full)) is null)
            {
                CheckTable(table[name]!, full);
            }
        }
    }

    private void CheckTable(TomlNode node, string path)
    {
        if (node is TomlTable table)
        {
            Check(table, path);
        }
        else if (!SideNames.Is(OwnTables.Shared(path)))
        {
            var names = string.Join(", ", NamesIn(path).Select(name => name.TrimEnd('[', ']')));
            log.Report(ProblemCode.WrongType, At(path, node.Place), Say.Of($"must be a table with {names}."));
        }
    }

    private void CheckList(TomlNode node, string path)
    {
        if (node is not TomlList list || list.Items.Exists(item => item is not TomlTable))
        {
            log.Report(ProblemCode.WrongType, At(path, node.Place), Say.Of($"must be a list of tables; begin each with [[{path}]]."));
            return;
        }

        foreach (var (index, item) in list.Items.Index())
        {
            Check((TomlTable)item, $"{path}[{index + 1}]");
        }
    }

    /// <summary>What may stand in a table; in a panel of a list also the tables that it may have of its own.</summary>
    private static List<string> NamesIn(string path)
    {
        var shared = OwnTables.Shared(path);
        var isOfList = shared == "panel" && path != shared;
        return [.. KnownFields.NamesIn(shared), .. isOfList ? OwnTables.Names : []];
    }

    private static string Hint(string name, IEnumerable<string> known)
    {
        var names = known.Select(word => word.TrimEnd('[', ']')).ToList();
        return NearestWord.To(name, names) is { } near ? Say.Of($"; did you mean {near}?") : Say.Of($"; known are {string.Join(", ", names)}.");
    }

    private Place At(string path, TextPlace place) => new(fileName, place.Line, place.Column, path);
}
