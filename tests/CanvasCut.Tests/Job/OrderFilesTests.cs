using System.Text.Json;
using CanvasCut.Job;
using CanvasCut.Takeoff;

namespace CanvasCut.Tests.Job;

/// <summary>The order as spreadsheets and programs read it.</summary>
public sealed class OrderFilesTests
{
    /// <summary>RFC 4180 by an independent reader: the csv module of Python, strict.</summary>
    private const string Reader = """
        import csv, json, sys
        with open(sys.argv[1], newline="", encoding="utf-8") as file:
            print(json.dumps(list(csv.reader(file, strict=True))))
        """;

    private static readonly JobRun Priced = ExampleTests.OutcomeOf("priced-own-materials");

    [Fact]
    public void Unusual_text_comes_back_from_the_csv_as_it_was()
    {
        string[] odd = ["tape \"A\", wide", "line\nbreak", "two\r\nlines", "\"", ",,,", "ünïcode Ω", "a=b", " blank ", ";"];
        var rows = Rows(WithItems(odd));

        Assert.Equal(odd, rows.Skip(1).Select(row => row[1]));
    }

    /// <summary>What a spreadsheet would run as a formula gets an apostrophe before it (OWASP, "CSV Injection").</summary>
    [Theory]
    [InlineData("=1+1")]
    [InlineData("=HYPERLINK(\"x\",\"y\")")]
    [InlineData("+1")]
    [InlineData("-1")]
    [InlineData("@SUM(A1)")]
    [InlineData("\t=1")]
    public void No_field_is_taken_for_a_formula(string item)
    {
        var rows = Rows(WithItems([item]));

        Assert.Equal("'" + item, rows[1][1]);
        Assert.All(rows.SelectMany(row => row), field => Assert.DoesNotMatch("^[=+\\-@\t\r]", field));
    }

    [Fact]
    public void Every_row_has_as_many_fields_as_the_head_and_ends_as_the_standard_says()
    {
        var (csv, rows) = (OrderCsv.Of(Priced.Purchase), Rows(OrderCsv.Of(Priced.Purchase)));

        Assert.All(rows, row => Assert.Equal(rows[0].Length, row.Length));
        Assert.Equal(rows.Length, csv.Split("\r\n").Length - 1);
        Assert.Equal(Priced.Purchase.Order.Length + 5, rows.Length);
    }

    [Fact]
    public void The_csv_adds_up_as_a_reader_adds_it()
    {
        var rows = Rows(OrderCsv.Of(Priced.Purchase));
        var amount = Array.IndexOf(rows[0], "amount");
        decimal Of(string item) => Number(rows.Single(row => row[1] == item)[amount]);

        var lines = rows.Skip(1).Take(Priced.Purchase.Order.Length).Where(row => row[amount].Length > 0).Sum(row => Number(row[amount]));
        Assert.Equal(lines, Of("materials"));
        Assert.Equal(lines + Of("waste") + Of("labour"), Of("total"));
        Assert.Contains("no price", rows.Select(row => row[amount - 2]));
    }

    /// <summary>The sums in the README of the example, worked by hand.</summary>
    [Fact]
    public void The_example_costs_what_was_worked_out_by_hand()
    {
        var cost = Priced.Purchase.Cost!;

        Assert.Equal([19.26m, 12.70m, 2.20m, null, 14.95m, 5.20m, null, 16.67m, 4.25m, 0.96m], cost.Lines.Select(line => line.Amount));
        Assert.Equal((76.19m, 3.81m, 171.00m, 251.00m, 2), (cost.Materials, cost.Waste, cost.Labour, cost.Total, cost.Unpriced));
    }

    [Fact]
    public void The_json_says_the_same_as_the_csv()
    {
        using var json = JsonDocument.Parse(OrderJson.Of(TopRun.Of(Priced)));
        var rows = Rows(OrderCsv.Of(Priced.Purchase)).Skip(1).ToList();

        Assert.All(json.RootElement.GetProperty("order").EnumerateArray().Index(), line =>
        {
            Assert.Equal(rows[line.Index][0], line.Item.GetProperty("grade").GetString());
            Assert.Equal(Number(rows[line.Index][2]), line.Item.GetProperty("quantity").GetDecimal());
            Assert.Equal(rows[line.Index][9].Split(' '), line.Item.GetProperty("pieces").EnumerateArray().Select(piece => piece.GetString()));
        });
        Assert.Equal(Priced.Purchase.Cost!.Total, json.RootElement.GetProperty("cost").GetProperty("total").GetDecimal());
        Assert.Equal(Priced.Purchase.Cost.Unpriced, json.RootElement.GetProperty("cost").GetProperty("unpriced_lines").GetInt32());
    }

    private static string WithItems(IEnumerable<string> items) => OrderCsv.Of(Priced.Purchase with
    {
        Cost = null,
        Order = [.. items.Select(item => new OrderLine(new("grade", item), new(1, "piece"), string.Empty, "counted", new("a test", [])))],
    });

    private static string[][] Rows(string csv)
    {
        using var folder = new TemporaryFolder();
        var (script, file) = (folder.PathOf("reader.py"), folder.PathOf("order.csv"));
        File.WriteAllText(script, Reader);
        File.WriteAllText(file, csv);
        return JsonSerializer.Deserialize<string[][]>(OutsideTool.Run("python3", script, file))!;
    }

    private static decimal Number(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
