using CanvasCut.Design;
using CanvasCut.JobFiles;

namespace CanvasCut.Tests.JobFiles;

/// <summary>Materials and price files.</summary>
public sealed class SupplyFilesTests
{
    private const string Prices = "format = 1\ncurrency = \"EUR\"\ndate = 2026-03-01\n";
    private static readonly string Ordering = Repository.Read("docs/ordering.md");

    private static readonly string[] Lines =
        ["format = 1", "[cloth.a]", "[[price]]", "price = 1", "item = 3", "date = 2026-01-01", "labour = 2", "[price]", "[cloth]\na = 1", "per = [1]"];

    public static TheoryData<string> Fields { get; } = new(SupplyFields.All.Select(field => field.Name));

    [Theory]
    [MemberData(nameof(Fields))]
    public void A_field_of_a_grade_is_documented(string name)
    {
        var field = Assert.Single(SupplyFields.All, field => field.Name == name);
        var line = Assert.Single(Ordering.Split('\n'), line => line.StartsWith($"| `{name}` |", StringComparison.Ordinal));

        var cells = line.Split(" | ");
        Assert.Equal(field.Usual.Length > 0 ? field.Usual : "any", cells[2]);
        Assert.Equal(field.IsRequired ? "yes" : "no", cells[3]);
        Assert.All(field.Words, word => Assert.Contains($"\"{word}\"", cells[1], StringComparison.Ordinal));
    }

    [Fact]
    public void Every_grade_of_the_program_is_documented() =>
        Assert.All(SupplyFields.Grades, grade => Assert.Contains($"`{grade}`", Ordering, StringComparison.Ordinal));

    /// <summary>The defaults of the fields that follow a grade are the figures of the default grade.</summary>
    [Fact]
    public void The_default_grades_agree_with_the_defaults_of_the_fields()
    {
        var job = Sample.Job(Sample.Least);
        var supplies = job.Workshop.Supplies;

        Assert.Equal((job.Workshop.Cloth.Name, job.Workshop.Cloth.Roll.Width), (supplies.Cloth.Grade.Name, supplies.Cloth.RollWidth));
        Assert.Equal(job.Fastenings.Zipper.Gauge, supplies.Zipper.Gauge);
        Assert.Equal(job.Workshop.Sewing.Thread, supplies.Sewing.Thread.Grade.Name);
        Assert.All(supplies.Grades, grade => Assert.NotEmpty(grade.Source));
    }

    [Fact]
    public void A_grade_sets_what_the_job_leaves_out_and_nothing_else()
    {
        var job = Sample.Job(Sample.Least + "[cloth]\ngrade = \"awning-vinyl\"\n[zipper]\ngrade = \"coil-5\"\nchain = \"7 mm\"\n");

        Assert.Equal((1270, 7, 31.75), (job.Workshop.Cloth.Roll.Width.Millimeters, job.Fastenings.Zipper.Gauge.Chain.Millimeters, job.Fastenings.Zipper.Gauge.OverallWidth.Millimeters));
        Assert.Contains(new DefaultUsed("cloth.roll_width", "1270 mm", "materials: awning-vinyl, from memory"), job.Defaults);
    }

    [Fact]
    public void A_file_of_ones_own_changes_single_figures_and_says_so()
    {
        var supplies = JobWith("format = 1\n[cloth.marine-acrylic]\nthickness = \"0.45 mm\"\n").Workshop.Supplies;

        Assert.Equal((0.45, "yours"), (supplies.Cloth.Thickness.Millimeters, supplies.Cloth.Grade.Confidence));
        Assert.StartsWith("your materials file; the rest: ", supplies.Cloth.Grade.Source, StringComparison.Ordinal);
        Assert.Equal("marine acrylic canvas, about 300 g/m2", supplies.Cloth.Grade.Name);
    }

    [Fact]
    public void A_price_is_read_to_the_last_digit_however_it_is_written()
    {
        var prices = PricesOf("[[price]]\nitem = \"wipe\"\nper = \"piece\"\nprice = 0.1\n[[price]]\nitem = \"stop\"\nper = \"piece\"\nprice = \"28.5007\"\n[[price]]\nitem = \"slider\"\nper = \"piece\"\nprice = 3\n");

        Assert.Equal([0.1m, 28.5007m, 3m], prices.Prices.Select(price => price.Amount));
        Assert.Equal((new Money("EUR", new(2026, 3, 1), 2), 0m), (prices.Money, prices.Waste));
        Assert.Null(prices.Labour);
    }

    /// <summary>Whatever stands in a price or materials file, there is an answer and no exception.</summary>
    [Fact]
    public void Any_text_is_answered() => Gen.OneOf(
        Gen.String,
        Gen.Int[0, Lines.Length - 1].Array[0, 8].Select(lines => string.Join('\n', lines.Select(line => Lines[line])))).Sample(text =>
        {
            var side = new SideFiles(_ => null, new("m.toml", text), new("p.toml", text));
            var job = JobFile.Read(Sample.Least, "job.toml", side);
            Assert.Equal(job.IsValid, job.Problems.IsEmpty);
        });

    [Fact]
    public void Problems_of_other_files_come_after_the_jobs()
    {
        var side = new SideFiles(_ => null, new("m.toml", "format = 3\n"), new("p.toml", "format = 1\n"));
        var problems = JobFile.Read(Sample.Least.Replace("1000 mm", "x", StringComparison.Ordinal), "job.toml", side).Problems;

        Assert.Equal(["job.toml", "m.toml", "p.toml"], problems.Select(problem => problem.Place.File).Distinct());
    }

    private static CarrierJob JobWith(string materials) => Read(new(_ => null, new("materials.toml", materials), null));

    private static PriceList PricesOf(string text) => Read(new(_ => null, null, new("prices.toml", Prices + text))).Workshop.Buying.Prices!;

    private static CarrierJob Read(SideFiles side)
    {
        var job = JobFile.Read(Sample.Least, "job.toml", side);
        Assert.True(job.IsValid, string.Join('\n', job.Problems));
        return job.Value.First;
    }
}
