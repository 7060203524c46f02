using Tomlyn.Syntax;

namespace CanvasCut.JobFiles;

/// <summary>Turns Tomlyn's syntax tree, whose tables lie one after the other, into tables within tables.</summary>
internal static class TomlTree
{
    public static TomlTable Of(DocumentSyntax document)
    {
        var root = new TomlTable(new(1, 1));
        AddAll(root, document.KeyValues);
        foreach (var table in document.Tables)
        {
            if (table.Name is { } name && TableAt(root, name, isInList: table is TableArraySyntax) is { } target)
            {
                AddAll(target, table.Items);
            }
        }

        return root;
    }

    /// <summary>Where a node begins; Tomlyn counts from zero.</summary>
    public static TextPlace PlaceOf(SyntaxNode node) => new(node.Span.Start.Line + 1, node.Span.Start.Column + 1);

    private static void AddAll(TomlTable table, IEnumerable<KeyValueSyntax> pairs)
    {
        foreach (var pair in pairs)
        {
            if (pair is { Key: { } key, Value: { } value } && Descend(table, [.. Names(key).SkipLast(1)], PlaceOf(key)) is { } target)
            {
                target.Add(Names(key)[^1], PlaceOf(key), NodeOf(value));
            }
        }
    }

    private static TomlTable? TableAt(TomlTable root, KeySyntax name, bool isInList)
    {
        var (names, place) = (Names(name), PlaceOf(name));
        if (!isInList)
        {
            return Descend(root, names, place);
        }

        var parent = Descend(root, names[..^1], place);
        parent?.Add(names[^1], place, new TomlList(place));
        if (parent?[names[^1]] is not TomlList list)
        {
            return null;
        }

        var table = new TomlTable(place);
        list.Items.Add(table);
        return table;
    }

    /// <summary>The table some names further in, made where it is not there; null when a value stands in the way.</summary>
    private static TomlTable? Descend(TomlTable table, List<string> names, TextPlace place)
    {
        foreach (var name in names)
        {
            if (table[name] is null)
            {
                table.Add(name, place, new TomlTable(place));
            }

            var inner = table[name] is TomlList { Items: [.., var last] } ? last : table[name];
            if (inner is not TomlTable next)
            {
                return null;
            }

            table = next;
        }

        return table;
    }

    private static TomlNode NodeOf(ValueSyntax value) => value switch
    {
        ArraySyntax array => ListOf(array),
        InlineTableSyntax table => TableOf(table),
        StringValueSyntax text => new TomlScalar(PlaceOf(value), text.Value ?? string.Empty, CharactersOf(value)),
        IntegerValueSyntax number => new TomlScalar(PlaceOf(value), number.Value),
        FloatValueSyntax number => new TomlScalar(PlaceOf(value), number.Value),
        DateTimeValueSyntax { Kind: SyntaxKind.LocalDate } date => new TomlScalar(PlaceOf(value), DateOnly.FromDateTime(date.Value.DateTime.DateTime)),
        BooleanValueSyntax flag => new TomlScalar(PlaceOf(value), flag.Value),
        _ => new TomlScalar(PlaceOf(value), null),
    };

    /// <summary>Tomlyn names the last character, not the one behind it.</summary>
    private static Range CharactersOf(SyntaxNode node) => node.Span.Start.Offset..(node.Span.End.Offset + 1);

    private static TomlList ListOf(ArraySyntax array)
    {
        var list = new TomlList(PlaceOf(array));
        list.Items.AddRange(array.Items.Where(item => item.Value is not null).Select(item => NodeOf(item.Value!)));
        return list;
    }

    private static TomlTable TableOf(InlineTableSyntax syntax)
    {
        var table = new TomlTable(PlaceOf(syntax));
        AddAll(table, syntax.Items.Where(item => item.KeyValue is not null).Select(item => item.KeyValue!));
        return table;
    }

    private static List<string> Names(KeySyntax key) => [Name(key.Key), .. key.DotKeys.Select(dotted => Name(dotted.Key))];

    private static string Name(BareKeyOrStringValueSyntax? key) => key switch
    {
        StringValueSyntax text => text.Value ?? string.Empty,
        BareKeySyntax bare => bare.Key?.Text ?? string.Empty,
        _ => string.Empty,
    };
}
