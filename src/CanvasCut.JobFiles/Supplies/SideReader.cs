using System.Globalization;
using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.JobFiles;

/// <summary>Reads the fields of a materials or a price file, and reports what is wrong.</summary>
internal sealed class SideReader(string fileName, ProblemLog log)
{
    private const int Format = 1;

    public Place At(TextPlace place, string path) => new(fileName, place.Line, place.Column, path);

    public void Report(string code, TextPlace place, string path, string message) => log.Report(code, At(place, path), message);

    /// <summary>The value of a field; null when it is left out or wrong, and then reported.</summary>
    public object? Read(TomlTable table, string path, Field field)
    {
        var full = path.Length == 0 ? field.Name : $"{path}.{field.Name}";
        if (table[field.Name] is not { } node)
        {
            return null;
        }

        var located = new Located(field, At(node.Place, full), node, log);
        return RangeCheck.Check(located, ValueParser.Parse(located), isAccepted: true);
    }

    public void ReportMissing(TextPlace place, string path, string example) =>
        Report(ProblemCode.Missing, place, path, Say.Of($"is missing; write it as in {example}."));

    /// <summary>Reports names that are not among the known ones.</summary>
    public void Unknown(TomlTable table, string path, IReadOnlyCollection<string> known)
    {
        foreach (var (name, place) in table.Keys.Where(key => !known.Contains(key.Name)))
        {
            var hint = NearestWord.To(name, known) is { } near ? Say.Of($"; did you mean {near}?") : Say.Of($"; known are {string.Join(", ", known)}.");
            Report(ProblemCode.UnknownField, place, path.Length == 0 ? name : $"{path}.{name}", Say.Of($"There is no such field here{hint}"));
        }
    }

    public void CheckFormat(TomlTable root)
    {
        if (root["format"] is not { } node)
        {
            ReportMissing(root.Place, "format", "format = 1");
        }
        else if (node is not TomlScalar { Value: long and Format })
        {
            Report(ProblemCode.Format, node.Place, "format", Say.Of("This program reads format 1; write format = 1."));
        }
    }

    /// <summary>An amount as written, exactly; null when it is left out or wrong, and then reported.</summary>
    /// <remarks>A TOML number comes as a double; its first 15 digits are those that were written, and no amount here has more.</remarks>
    public decimal? Amount(TomlTable table, string path, string name)
    {
        if (table[name] is not { } node)
        {
            return null;
        }

        var amount = (node as TomlScalar)?.Value switch
        {
            long whole => whole,
            double number when Math.Abs(number) < (double)MostAmount * 10 => (decimal)number,
            string text when decimal.TryParse(text.Trim(), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var read) => read,
            _ => (decimal?)null,
        };
        var wrong = amount switch
        {
            null => Say.Of("must be a number with a point, such as 28.50."),
            < 0 => Say.Of("must not be below zero."),
            > MostAmount => Say.Of("is far too large."),
            { } fine when decimal.Round(fine, MostDecimals) != fine => Say.Of("has more than four decimals."),
            _ => null,
        };
        if (wrong is not null)
        {
            Report(ProblemCode.Price, node.Place, path.Length == 0 ? name : $"{path}.{name}", wrong);
        }

        return wrong is null ? amount : null;
    }

    private const decimal MostAmount = 1_000_000_000;
    private const int MostDecimals = 4;
}
