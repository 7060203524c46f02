using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.JobFiles;

/// <summary>Reads a materials file into the grades that are known already.</summary>
internal sealed class MaterialFileReader(string fileName, ProblemLog log)
{
    private const string Yours = "yours";
    private readonly SideReader _reader = new(fileName, log);

    public void Read(string text, Dictionary<string, MaterialEntry> entries)
    {
        var (root, isWhole) = TomlText.Read(text, fileName, log);
        _reader.CheckFormat(root);
        _reader.Unknown(root, string.Empty, ["format", .. MaterialFields.OfKind.Keys]);
        foreach (var kind in MaterialFields.OfKind.Keys)
        {
            if (root[kind] is TomlTable grades)
            {
                ReadKind(kind, grades, isWhole, entries);
            }
            else if (root[kind] is { } node)
            {
                _reader.Report(ProblemCode.WrongType, node.Place, kind, Say.Of($"must be tables, each with a name of its own: begin each with [{kind}.a-name]."));
            }
        }

        CheckNeedles(entries);
    }

    private void ReadKind(string kind, TomlTable grades, bool isWhole, Dictionary<string, MaterialEntry> entries)
    {
        foreach (var (id, place) in grades.Keys)
        {
            var path = $"{kind}.{id}";
            if (!IsPlain(id))
            {
                _reader.Report(ProblemCode.Grade, place, path, Say.Of("A grade's name has only lower-case letters, digits and hyphens."));
            }
            else if (entries.GetValueOrDefault(id) is { } known && known.Kind != kind)
            {
                _reader.Report(ProblemCode.Twice, place, path, Say.Of($"is a {known.Kind} already; give this {kind} another name."));
            }
            else if (grades[id] is not TomlTable table)
            {
                _reader.Report(ProblemCode.WrongType, place, path, Say.Of("must be a table with the fields of the grade."));
            }
            else
            {
                entries[id] = ReadEntry(kind, id, (table, isWhole), entries.GetValueOrDefault(id));
            }
        }
    }

    private MaterialEntry ReadEntry(string kind, string id, (TomlTable Table, bool IsWhole) from, MaterialEntry? known)
    {
        var (fields, path) = (MaterialFields.OfKind[kind], $"{kind}.{id}");
        _reader.Unknown(from.Table, path, [.. fields.Select(field => field.Name)]);
        var written = fields
            .Select(field => (field.Name, Value: _reader.Read(from.Table, path, field)))
            .Where(pair => pair.Value is not null)
            .ToDictionary(pair => pair.Name, pair => pair.Value!, StringComparer.Ordinal);
        var values = new Dictionary<string, object>(known?.Values ?? new Dictionary<string, object>(), StringComparer.Ordinal)
        {
            ["source"] = known is null ? Say.Of("your materials file") : Say.Of($"your materials file; the rest: {known.Text("source")}"),
            ["confidence"] = Yours,
        };
        foreach (var (name, value) in written)
        {
            values[name] = value;
        }

        var place = _reader.At(from.Table.Place, path);
        foreach (var field in fields.Where(field => from.IsWhole && field.Presence == Presence.Required && !values.ContainsKey(field.Name) && from.Table[field.Name] is null))
        {
            log.Report(ProblemCode.Missing, place with { Field = $"{path}.{field.Name}" }, Say.Of($"is missing; write it as in {Example(field)}."));
        }

        return new(kind, id, place, values);
    }

    /// <summary>A thread may name any needle there is, in the program or in the file.</summary>
    private void CheckNeedles(Dictionary<string, MaterialEntry> entries)
    {
        foreach (var thread in entries.Values.Where(entry => entry.Kind == "thread" && entry.Values.ContainsKey("needle")))
        {
            var needle = thread.Text("needle");
            if (entries.GetValueOrDefault(needle) is not { Kind: "needle" })
            {
                var known = entries.Values.Where(entry => entry.Kind == "needle").Select(entry => entry.Id);
                log.Report(ProblemCode.Grade, thread.Place with { Field = $"thread.{thread.Id}.needle" }, GradeText.Unknown("needle", needle, known));
            }
        }
    }

    private static bool IsPlain(string id) => id.Length is > 0 and <= 40 && id.All(letter => char.IsAsciiLetterLower(letter) || char.IsAsciiDigit(letter) || letter == '-');

    private static string Example(Field field) => field.Kind switch
    {
        FieldKind.Flag => $"{field.Name} = false",
        FieldKind.Count => $"{field.Name} = 5",
        FieldKind.Word => $"{field.Name} = \"{field.Words[0]}\"",
        FieldKind.Length => $"{field.Name} = \"{field.Range.From}\"",
        _ => $"{field.Name} = \"...\"",
    };
}

/// <summary>Says that a grade is not known, and which is near.</summary>
internal static class GradeText
{
    public static string Unknown(string kind, string id, IEnumerable<string> known)
    {
        string[] all = [.. known];
        return Say.Of($"There is no {kind} \"{id}\"{(NearestWord.To(id, all) is { } near ? Say.Of($"; did you mean \"{near}\"?") : Say.Of($"; known are {string.Join(", ", all)}."))}");
    }
}
