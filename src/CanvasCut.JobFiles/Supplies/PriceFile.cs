using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using CanvasCut.Design;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>Reads a price file.</summary>
internal sealed partial class PriceFile(MaterialLibrary library, string fileName, ProblemLog log)
{
    private const int UsualDecimals = 2;
    private static readonly Field Currency = new("currency", FieldKind.Text, FieldRange.Any, Presence.Required);
    private static readonly Field Decimals = new("decimals", FieldKind.Count, FieldRange.Reach("0", "4"), Presence.Optional);
    private static readonly Field Waste = new("waste", FieldKind.Share, FieldRange.Reach("0 %", "25 %"), Presence.Optional);
    private static readonly Field Item = new("item", FieldKind.Text, FieldRange.Any, Presence.Required);
    private static readonly Field Per = new Field("per", FieldKind.Word, FieldRange.Any, Presence.Required).Among("m", "yd", "piece", "pack", "roll", "spool");
    private static readonly Field Length = new("length", FieldKind.Length, FieldRange.Size("0.1 m", "6 m"), Presence.Optional);

    private readonly SideReader _reader = new(fileName, log);

    /// <summary>The prices; null when something is wrong, which is reported.</summary>
    public PriceList? Read(string text)
    {
        var (root, isWhole) = TomlText.Read(text, fileName, log);
        _reader.CheckFormat(root);
        _reader.Unknown(root, string.Empty, ["format", "currency", "date", "decimals", "waste", "labour", "price"]);
        var (currency, date) = (CurrencyOf(root), DateOf(root));
        var decimals = _reader.Read(root, string.Empty, Decimals) as int? ?? UsualDecimals;
        if (decimals > 4)
        {
            _reader.Report(ProblemCode.Price, root["decimals"]!.Place, "decimals", Say.Of("must be 0 to 4."));
        }

        var waste = _reader.Read(root, string.Empty, Waste) as double? ?? 0;
        var labour = LabourOf(root);
        var prices = PricesOf(root);
        return log.IsEmpty && isWhole ? new(new(currency!, date!.Value, decimals), (decimal)waste, labour, prices) : null;
    }

    private string? CurrencyOf(TomlTable root)
    {
        if (root["currency"] is not { } node)
        {
            _reader.ReportMissing(root.Place, "currency", "currency = \"EUR\"");
            return null;
        }

        var text = _reader.Read(root, string.Empty, Currency) as string;
        if (text is not null && !ThreeCapitals().IsMatch(text))
        {
            _reader.Report(ProblemCode.Price, node.Place, "currency", Say.Of($"\"{text}\" is no currency; write three capitals, such as \"EUR\"."));
        }

        return text;
    }

    private DateOnly? DateOf(TomlTable root)
    {
        if (root["date"] is not { } node)
        {
            _reader.ReportMissing(root.Place, "date", "date = 2026-03-01");
            return null;
        }

        var date = (node as TomlScalar)?.Value switch
        {
            DateOnly day => day,
            string text when DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) => day,
            _ => (DateOnly?)null,
        };
        if (date is null)
        {
            _reader.Report(ProblemCode.Price, node.Place, "date", Say.Of("must be a day, such as 2026-03-01."));
        }

        return date;
    }

    private Labour? LabourOf(TomlTable root)
    {
        if (root["labour"] is not { } node)
        {
            return null;
        }

        if (node is not TomlTable table)
        {
            _reader.Report(ProblemCode.WrongType, node.Place, "labour", Say.Of("must be a table with hours and rate."));
            return null;
        }

        _reader.Unknown(table, "labour", ["hours", "rate"]);
        foreach (var name in new[] { "hours", "rate" }.Where(name => table[name] is null))
        {
            _reader.ReportMissing(table.Place, $"labour.{name}", $"{name} = 10");
        }

        return _reader.Amount(table, "labour", "hours") is { } hours && _reader.Amount(table, "labour", "rate") is { } rate ? new(hours, rate) : null;
    }

    private ImmutableArray<Price> PricesOf(TomlTable root)
    {
        if (root["price"] is not TomlList list || list.Items.Exists(item => item is not TomlTable))
        {
            var place = root["price"]?.Place ?? root.Place;
            _reader.Report(root["price"] is null ? ProblemCode.Missing : ProblemCode.WrongType, place, "price", Say.Of("must be a list of tables; begin each with [[price]]."));
            return [];
        }

        var found = new List<(Price Price, int Line)>();
        foreach (var (index, item) in list.Items.Index())
        {
            if (PriceOf((TomlTable)item, $"price[{index + 1}]") is not { } price)
            {
                continue;
            }

            if (found.FirstOrDefault(other => other.Price.Item == price.Item && PriceList.Same(other.Price.Length, price.Length)) is { Price: not null } twin)
            {
                _reader.Report(ProblemCode.PricedTwice, item.Place, $"price[{index + 1}]", Say.Of($"\"{price.Item}\" is priced already in line {twin.Line}; keep one."));
            }
            else
            {
                found.Add((price, item.Place.Line));
            }
        }

        return [.. found.Select(each => each.Price)];
    }

    private Price? PriceOf(TomlTable table, string path)
    {
        _reader.Unknown(table, path, ["item", "per", "price", "length", "note"]);
        foreach (var (name, example) in new[] { ("item", "item = \"marine-acrylic\""), ("per", "per = \"m\""), ("price", "price = 28.50") })
        {
            if (table[name] is null)
            {
                _reader.ReportMissing(table.Place, $"{path}.{name}", example);
            }
        }

        var amount = _reader.Amount(table, path, "price");
        var length = _reader.Read(table, path, Length) as Length?;
        if (_reader.Read(table, path, Item) is not string item || _reader.Read(table, path, Per) is not string per)
        {
            return null;
        }

        if (library.Find(item) is not { } entry)
        {
            _reader.Report(ProblemCode.Grade, table["item"]!.Place, $"{path}.item", GradeText.Unknown("grade", item, library.Ids));
            return null;
        }

        return FitsUnit(table, path, entry, (per, length)) && amount is { } known ? new(item, length, per, known) : null;
    }

    private bool FitsUnit(TomlTable table, string path, MaterialEntry entry, (string Per, Length? Length) given)
    {
        if (!entry.Units.Contains(given.Per))
        {
            _reader.Report(ProblemCode.PriceUnit, table["per"]!.Place, $"{path}.per", Say.Of($"\"{entry.Id}\" is sold by the {string.Join(" or ", entry.Units)}."));
            return false;
        }

        var needsLength = entry.Kind == "zipper" && given.Per == "piece";
        if (needsLength == (table["length"] is not null))
        {
            return !needsLength || given.Length is not null;
        }

        _reader.Report(ProblemCode.PriceUnit, table.Place, $"{path}.length", needsLength
            ? Say.Of("is missing; a zipper that is sold by the piece is priced with its length, as in length = \"48 in\".")
            : Say.Of("belongs only to a zipper that is sold by the piece."));
        return false;
    }

    [GeneratedRegex("^[A-Z]{3}$")]
    private static partial Regex ThreeCapitals();
}
