using System.Collections.Immutable;
using System.Globalization;
using CanvasCut.Design;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>Turns a written value into what its field is for; null when it is wrong, which is reported.</summary>
internal static class ValueParser
{
    private static string FillIn => Say.Of("is left blank; fill this in");
    private const int MostOfAnything = 1000;

    public static object? Parse(Located value) => value.Field.Kind switch
    {
        FieldKind.LengthPair => Pair(value),
        FieldKind.LengthList => Items<Length>(value, LengthOf),
        FieldKind.WordList => Items<string>(value, WordOf),
        FieldKind.NameList => Items<string>(value, item => TextOf(item, Say.Of("a field's name in quotes"))),
        FieldKind.Flag => (value.Node as TomlScalar)?.Value as bool? ?? value.Report(ProblemCode.WrongType, Say.Of("must be true or false, without quotes.")),
        FieldKind.Count => CountOf(value),
        FieldKind.Factor => FactorOf(value),
        FieldKind.Word => WordOf(value),
        FieldKind.Paper => PaperOf(value),
        FieldKind.Text => TextOf(value, Say.Of("a text in quotes")),
        FieldKind.Date => DateOf(value),
        FieldKind.Length => LengthOf(value),
        var kind => QuantityOf(value, FieldKinds.QuantityIn(kind)!),
    };

    private static object? LengthOf(Located value)
    {
        if (value.Node is TomlScalar { Value: long or double })
        {
            return value.Report(ProblemCode.NotLength, Say.Of("needs a unit, such as \"1040 mm\" (in quotes)."));
        }

        if (TextOf(value, Say.Of("a length in quotes, such as \"1040 mm\"")) is not string text)
        {
            return null;
        }

        var reading = LengthText.Parse(text);
        return reading.IsLength ? reading.Value : value.Report(ProblemCode.NotLength, $"\"{text}\" {reading.Reason}{(reading.Reason.EndsWith('?') ? string.Empty : ".")}");
    }

    private static object? QuantityOf(Located value, QuantityKind kind)
    {
        var (example, what) = (kind.Example, kind.Name);
        if (TextOf(value, Say.Of($"{what} in quotes, such as \"{example}\"")) is not string text)
        {
            return null;
        }

        var point = text.Replace(',', '.');
        return kind.Parse(text) is { } quantity ? FieldKinds.InModel(quantity)
            : kind.Parse(point) is null ? value.Report(ProblemCode.NotQuantity, Say.Of($"\"{text}\" is not {what}; write it as in \"{example}\"."))
            : value.Report(ProblemCode.NotQuantity, Say.Of($"\"{text}\" has a comma; decimals have a point, \"{point}\"."));
    }

    /// <summary>A date of TOML, or the same in quotes.</summary>
    private static object? DateOf(Located value)
    {
        var example = Say.Of("a date as year, month and day, such as 2027-04-01");
        return value.Node is TomlScalar { Value: DateOnly date } ? date
            : TextOf(value, example) is not string text ? null
            : DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var read) ? read
            : value.Report(ProblemCode.NotQuantity, Say.Of($"\"{text}\" is not a day that there is; write {example}."));
    }

    private static object? TextOf(Located value, string what) => (value.Node as TomlScalar)?.Value switch
    {
        string text when string.IsNullOrWhiteSpace(text) => value.Report(ProblemCode.Blank, $"{FillIn}."),
        string text when text.Any(char.IsControl) => value.Report(ProblemCode.WrongType, Say.Of("must be on one line, without control characters.")),
        string text => text.Trim(),
        _ => value.Report(ProblemCode.WrongType, Say.Of($"must be {what}.")),
    };

    private static object? WordOf(Located value)
    {
        var words = value.Field.Words;
        return TextOf(value, Say.Of($"one of {InQuotes(words)}")) is not string text ? null
            : words.Contains(text, StringComparer.Ordinal) ? text
            : value.Report(ProblemCode.UnknownWord, Say.Of($"\"{text}\" is none of {InQuotes(words)}{DidYouMean(text, words)}"));
    }

    private static object? PaperOf(Located value) =>
        TextOf(value, Say.Of($"one of {InQuotes(PaperSizes.Names)}")) is not string text ? null
        : PaperSizes.Of(text) ?? value.Report(ProblemCode.UnknownWord, Say.Of($"\"{text}\" is none of {InQuotes(PaperSizes.Names)}{DidYouMean(text, PaperSizes.Names)}"));

    private static object? CountOf(Located value) => (value.Node as TomlScalar)?.Value switch
    {
        long and > MostOfAnything or long and < -MostOfAnything => value.Report(ProblemCode.Impossible, Say.Of("is far too large a number.")),
        long number => (int)number,
        _ => value.Report(ProblemCode.WrongType, Say.Of("must be a whole number, without quotes.")),
    };

    private static object? FactorOf(Located value) => (value.Node as TomlScalar)?.Value switch
    {
        long number => (double)number,
        double number when double.IsFinite(number) => number,
        double => value.Report(ProblemCode.NotQuantity, Say.Of("must be a number that is finite.")),
        _ => value.Report(ProblemCode.WrongType, Say.Of("must be a number, without quotes.")),
    };

    private static object? Pair(Located value)
    {
        if (value.Node is not TomlList { Items.Count: 2 })
        {
            return value.Report(ProblemCode.WrongType, Say.Of("must be two lengths, from and to, such as [\"100 mm\", \"300 mm\"]."));
        }

        return Items<Length>(value, LengthOf) is ImmutableArray<Length> both ? (both[0], both[1]) : null;
    }

    private static object? Items<T>(Located value, Func<Located, object?> parse)
    {
        if (value.Node is not TomlList list)
        {
            return value.Report(ProblemCode.WrongType, Say.Of("must be a list in square brackets."));
        }

        var items = list.Items.Select((node, index) => parse(value.Item(index, node))).ToList();
        return items.Contains(null) ? null : items.Cast<T>().ToImmutableArray();
    }

    private static string InQuotes(IEnumerable<string> words) => string.Join(", ", words.Select(word => $"\"{word}\""));

    private static string DidYouMean(string text, IEnumerable<string> words) =>
        NearestWord.To(text, words) is { } near ? Say.Of($"; did you mean \"{near}\"?") : ".";
}
