using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.JobFiles;

/// <summary>Reads every known field of a measures file, takes the defaults, and reports what is wrong or unknown.</summary>
internal sealed class MeasuresReader(TomlTable root, string fileName, ProblemLog log)
{
    private readonly Dictionary<string, object> _values = new(StringComparer.Ordinal);

    public JobValues ReadAll()
    {
        CheckNames(root, string.Empty);
        CheckTables();
        foreach (var (field, path) in FieldPath.All(root, MeasureFields.All))
        {
            Read(field, path);
        }

        return new(root, fileName, _values);
    }

    private void Read(Field field, string path)
    {
        if (FieldPath.Find(root, path).Node is { } node)
        {
            var located = new Located(field, At(path, node.Place), AsList(field, node), log);

            // What is far from usual shows among the other measures; only what cannot be is refused.
            Keep(path, RangeCheck.Check(located, ValueParser.Parse(located), isAccepted: true));
        }
        else if (field.Default is { } text)
        {
            Keep(path, ValueParser.Parse(new(field, At(path, root.Place), new TomlScalar(default, text), log)));
        }
    }

    /// <summary>One reading may stand without brackets.</summary>
    private static TomlNode AsList(Field field, TomlNode node)
    {
        if (field.Kind != FieldKind.LengthList || node is not TomlScalar)
        {
            return node;
        }

        var list = new TomlList(node.Place);
        list.Items.Add(node);
        return list;
    }

    private void CheckTables()
    {
        if (root[MeasureFields.Bow] is { } bows && (bows is not TomlList list || list.Items.Exists(item => item is not TomlTable)))
        {
            log.Report(ProblemCode.WrongType, At(MeasureFields.Bow, bows.Place), Say.Of("must be a list of tables; begin each with [[bow]]."));
        }

        foreach (var (index, bow) in ((root[MeasureFields.Bow] as TomlList)?.Items ?? []).Index())
        {
            CheckNames(bow as TomlTable, $"{MeasureFields.Bow}[{index + 1}]");
        }

        foreach (var name in new[] { MeasureFields.Top, MeasureFields.Overall })
        {
            if (root[name] is { } table and not TomlTable)
            {
                log.Report(ProblemCode.WrongType, At(name, table.Place), Say.Of($"must be a table; begin it with [{name}]."));
            }

            CheckNames(root[name] as TomlTable, name);
        }
    }

    private void CheckNames(TomlTable? table, string path)
    {
        var known = MeasureFields.NamesIn(path.Split('[')[0]).ToList();
        foreach (var (name, place) in (table?.Keys ?? []).Where(key => !known.Contains(key.Name)))
        {
            var hint = NearestWord.To(name, known) is { } near ? Say.Of($"; did you mean {near}?") : Say.Of($"; known are {string.Join(", ", known)}.");
            log.Report(ProblemCode.UnknownField, At(path.Length == 0 ? name : $"{path}.{name}", place), Say.Of($"There is no such field here{hint}"));
        }
    }

    private void Keep(string path, object? value)
    {
        if (value is not null)
        {
            _values[path] = value;
        }
    }

    private Place At(string path, TextPlace place) => new(fileName, place.Line, place.Column, path);
}
