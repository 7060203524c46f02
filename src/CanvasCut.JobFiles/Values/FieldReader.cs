using System.Globalization;
using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.JobFiles;

/// <summary>Reads every known field of a file, takes the defaults, and reports what is wrong or missing.</summary>
/// <remarks>What is missing from half a file may stand in the other half, and is not reported.</remarks>
internal sealed class FieldReader((TomlTable Root, bool IsWhole) file, string fileName, SupplyChoice supplies, ProblemLog log)
{
    private readonly TomlTable _root = file.Root;
    private readonly Dictionary<string, object> _values = new(StringComparer.Ordinal);
    private readonly List<DefaultUsed> _defaults = [];
    private readonly HashSet<string> _accepted = new(AcceptedFields.Of(file.Root), StringComparer.Ordinal);
    private readonly bool _isImperial = file.Root["prints"] is TomlScalar { Value: "imperial" };

    /// <summary>The defaults taken, in the order of docs/job-file.md.</summary>
    public IEnumerable<DefaultUsed> Defaults => _defaults.OrderBy(used => KnownFields.OrderOf(used.Field));

    public JobValues ReadAll() => ReadAll(KnownFields.All);

    /// <summary>The same of some fields alone.</summary>
    public JobValues ReadAll(IEnumerable<Field> fields)
    {
        foreach (var (field, path) in FieldPath.All(_root, fields))
        {
            Read(field, path);
        }

        return new(_root, fileName, _values);
    }

    /// <summary>Whether every one of some fields has its value, but for those that need none.</summary>
    public bool HasAll(IEnumerable<Field> fields) =>
        FieldPath.All(_root, fields).All(each => each.Field.Presence == Presence.Optional || _values.ContainsKey(each.Path) || (each.Field.Presence != Presence.Defaulted && !IsMissing(each.Field, each.Path)));

    private void Read(Field field, string path)
    {
        var (node, written, isBlocked) = FieldPath.Find(_root, path);
        if (node is not null)
        {
            Keep(path, Written(new(field, PlaceAt(written, node.Place), node, log)));
        }
        else if (field.Default is not null && !isBlocked)
        {
            TakeDefault(field, path);
        }
        else if (file.IsWhole && !isBlocked && IsMissing(field, path))
        {
            var example = FieldExample.Of(field);
            log.Report(ProblemCode.Missing, PlaceAt(path, FieldPath.PlaceOf(_root, path)), Say.Of($"is missing; write it as in {example}."));
        }
    }

    private object? Written(Located located) =>
        RangeCheck.Check(located, ValueParser.Parse(located), _accepted.Contains(FieldPath.WithoutItem(located.Place.Field, located.Field)));

    private bool IsMissing(Field field, string path) => field.Presence switch
    {
        Presence.Required => !IsReplaced(field),
        Presence.RequiredInTable => FieldPath.Find(_root, path[..path.LastIndexOf('.')]).Node is TomlTable,
        _ => false,
    };

    private bool IsReplaced(Field field) => field.ReplacedBy is { } list && JobValues.TablesIn(_root, list).Any();

    private void TakeDefault(Field field, string path)
    {
        var (text, source) = supplies.DefaultOf(path) ?? (_isImperial ? field.ImperialDefault ?? field.Default! : field.Default!, field.Source);
        text = field.Kind == FieldKind.Text ? Say.Of(text) : text;
        Keep(path, ValueParser.Parse(new(field, PlaceAt(path, _root.Place), NodeOf(field, text), log)));
        _defaults.Add(new(path, text, Say.Of(source)));
    }

    private static TomlNode NodeOf(Field field, string text)
    {
        if (field.Kind is not (FieldKind.LengthList or FieldKind.WordList))
        {
            return new TomlScalar(default, field.Kind switch
            {
                FieldKind.Flag => text == "true",
                FieldKind.Count => long.Parse(text, CultureInfo.InvariantCulture),
                FieldKind.Factor => double.Parse(text, CultureInfo.InvariantCulture),
                _ => text,
            });
        }

        var list = new TomlList(default);
        list.Items.AddRange(text.Split(", ").Select(item => new TomlScalar(default, item)));
        return list;
    }

    private void Keep(string path, object? value)
    {
        if (value is not null)
        {
            _values[path] = value;
        }
    }

    private Place PlaceAt(string path, TextPlace place) => new(fileName, place.Line, place.Column, path);
}
