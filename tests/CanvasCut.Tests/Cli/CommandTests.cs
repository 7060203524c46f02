using System.Text.Json;
using CanvasCut.Cli;

namespace CanvasCut.Tests.Cli;

public sealed class CommandTests
{
    private const string Good = "patterns/two-bow-small-top/job.toml";
    private const string Failing = "patterns/does-not-fit/job.toml";

    [Theory]
    [InlineData("check", Good, 0)]
    [InlineData("check", Failing, 1)]
    [InlineData("order", Good, 0)]
    [InlineData("order", Failing, 1)]
    [InlineData("cloth", "patterns/priced-own-materials/job.toml", 0)]
    [InlineData("work", Good, 0)]
    [InlineData("work", Failing, 1)]
    [InlineData("check", "patterns/no-such-job.toml", 3)]
    public void A_command_ends_with_the_documented_code(string command, string job, int code) =>
        Assert.Equal(code, Run(command, Repository.PathOf(job)).Code);

    [Theory]
    [InlineData("chek")]
    [InlineData("check")]
    [InlineData("make", "a.toml", "b.toml")]
    [InlineData("make", "--out")]
    public void A_wrong_command_line_is_wrong_input(params string[] arguments)
    {
        var (code, output, errors) = Run(arguments);

        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.Contains("canvascut --help", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Cloth_lists_the_ways_to_lay_it_and_what_each_gives_up()
    {
        var job = Repository.PathOf("patterns/priced-own-materials/job.toml");
        var (_, table, errors) = Run("cloth", job, "--all");
        var (_, json, _) = Run("cloth", job, "--json");
        var choices = JsonDocument.Parse(json).RootElement.GetProperty("cloth_choices");

        Assert.Empty(errors);
        Assert.Contains("1500 mm *", table, StringComparison.Ordinal);
        Assert.Contains("What you give up:", table, StringComparison.Ordinal);
        Assert.Contains("EUR 19.26", table, StringComparison.Ordinal);
        Assert.Equal(6, choices.GetArrayLength());
        var own = choices.EnumerateArray().Single(choice => choice.GetProperty("is_own").GetBoolean());
        Assert.Equal(("half", 1500, 900, 19.26m), (own.GetProperty("turns").GetString(), own.GetProperty("roll_width_mm").GetDouble(), own.GetProperty("order_mm").GetDouble(), own.GetProperty("cost").GetDecimal()));
    }

    [Fact]
    public void Without_a_command_the_commands_are_told()
    {
        var (code, output, errors) = Run();

        Assert.Equal((0, string.Empty), (code, errors));
        Assert.All(["make", "check", "order", "cloth", "work", "new"], command => Assert.Contains(command, output, StringComparison.Ordinal));
    }

    [Fact]
    public void A_folder_is_no_job_file()
    {
        using var folder = new TemporaryFolder();
        var (code, _, errors) = Run("check", folder.Root);

        Assert.Equal(3, code);
        Assert.Contains("is a folder", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_job_file_tells_every_problem_and_writes_nothing()
    {
        using var folder = new TemporaryFolder();
        var job = folder.PathOf("job.toml");
        File.WriteAllText(job, "format = 1\nname = \"x\"\n[top]\nlength = \"2000\"\nwidth = \"1 m 3 in\"\n[panel]\nlenght = \"1 m\"\n");

        var (code, output, errors) = Run("make", job, "--out", folder.PathOf("out"));

        Assert.Equal(2, code);
        Assert.Empty(output);
        var lines = errors.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.All(lines[..^1], line => Assert.Matches(@"job\.toml\(\d+,\d+\): CC1\d\d: ", line));
        Assert.Contains(lines, line => line.Contains("(4,", StringComparison.Ordinal) && line.Contains("top.length", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.Contains("(7,", StringComparison.Ordinal) && line.Contains("length", StringComparison.Ordinal));
        Assert.False(Directory.Exists(folder.PathOf("out")));
    }

    [Fact]
    public void Make_writes_the_folder_and_says_where_to_look_first()
    {
        using var folder = new TemporaryFolder();
        var (code, output, errors) = Run("make", "--out", folder.PathOf("out"));

        Assert.Equal((0, string.Empty), (code, errors));
        Assert.Contains("no job named", output, StringComparison.Ordinal);
        Assert.Contains("Look first at", output, StringComparison.Ordinal);
        Assert.True(File.Exists(folder.PathOf("out/report.pdf")));
    }

    [Fact]
    public void Make_writes_templates_of_a_job_whose_checks_fail_and_says_so()
    {
        using var folder = new TemporaryFolder();
        var (code, output, _) = Run("make", Repository.PathOf(Failing), "--out", folder.PathOf("out"));

        Assert.Equal(1, code);
        Assert.Contains("do not cut before this is settled", output, StringComparison.Ordinal);
        Assert.True(File.Exists(folder.PathOf("out/templates.pdf")));
    }

    [Fact]
    public void Make_leaves_a_strangers_folder_alone()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.PathOf("letter.txt"), "mine");

        var (code, _, errors) = Run("make", Repository.PathOf(Good), "--out", folder.PathOf("."));

        Assert.Equal(3, code);
        Assert.Contains("letter.txt", errors, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(folder.PathOf("letter.txt")));
    }

    [Fact]
    public void Make_in_a_place_that_does_not_allow_it_says_so()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.PathOf("file"), "mine");

        var (code, _, errors) = Run("make", Repository.PathOf(Good), "--out", folder.PathOf("file/out"));

        Assert.Equal(3, code);
        Assert.Contains("cannot be written", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void New_writes_a_starter_and_never_over_a_file()
    {
        using var folder = new TemporaryFolder();
        var file = folder.PathOf("job.toml");

        Assert.Equal(0, Run("new", file).Code);
        var text = File.ReadAllText(file);
        var (code, _, errors) = Run("new", file);

        Assert.Equal(3, code);
        Assert.Contains("left as it is", errors, StringComparison.Ordinal);
        Assert.Equal(text, File.ReadAllText(file));
        Assert.Equal(2, Run("check", file).Code);
    }

    [Fact]
    public void Piped_output_has_no_colour()
    {
        var (_, output, _) = Run("check", Repository.PathOf(Failing));

        Assert.DoesNotContain('\u001b', output);
        Assert.Contains("FAIL", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_and_csv_are_what_make_would_write()
    {
        Assert.Contains("\"format\": \"canvascut-results-2\"", Run("check", Repository.PathOf(Good), "--json").Output, StringComparison.Ordinal);
        Assert.Equal(Repository.Read("patterns/two-bow-small-top/expected/order.csv"), Run("order", Repository.PathOf(Good), "--csv").Output);
    }

    /// <summary>What work --json prints is what results.json holds, and the table ends with the total.</summary>
    [Fact]
    public void The_order_of_work_is_the_one_of_the_results()
    {
        using var printed = JsonDocument.Parse(Run("work", Repository.PathOf(Good), "--json").Output);
        using var approved = JsonDocument.Parse(Job.WrittenExamples.Text("two-bow-small-top", "en"));
        var (_, table, _) = Run("work", Repository.PathOf(Good));

        Assert.True(JsonElement.DeepEquals(approved.RootElement.GetProperty("work"), printed.RootElement));
        Assert.Contains("72 h", table, StringComparison.Ordinal);
        Assert.Matches("[0-9]+ h( [0-9]+ min)? of work; with 4 h a day and the cure it takes [0-9]+ days", table);
    }

    [Fact]
    public void Order_tells_the_cost_of_a_price_file_named_on_the_command_line()
    {
        var prices = Repository.PathOf("patterns/priced-own-materials/prices.toml");
        var materials = Repository.PathOf("patterns/priced-own-materials/materials.toml");
        var (code, output, errors) = Run("order", Repository.PathOf(Good), "--prices", prices, "--materials", materials);

        Assert.Equal((0, string.Empty), (code, errors));
        Assert.Contains("lines that have no price; prices of 2026-03-01; labour counted.", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_price_file_tells_every_problem_and_writes_nothing()
    {
        using var folder = new TemporaryFolder();
        var (code, output, errors) = Run("make", Repository.PathOf("patterns/invalid/wrong-prices/job.toml"), "--out", folder.PathOf("out"));

        Assert.Equal((2, string.Empty), (code, output));
        Assert.All(errors.Split('\n', StringSplitOptions.RemoveEmptyEntries)[..^1], line => Assert.Matches(@"prices\.toml\(\d+,\d+\): CC1\d\d: ", line));
        Assert.False(Directory.Exists(folder.PathOf("out")));
    }

    [Fact]
    public void A_price_file_that_is_not_there_is_told()
    {
        var (code, _, errors) = Run("order", Repository.PathOf(Good), "--prices", "no-such-prices.toml");

        Assert.Equal(3, code);
        Assert.Contains("There is no file no-such-prices.toml", errors, StringComparison.Ordinal);
    }

    private static (int Code, string Output, string Errors) Run(params string[] arguments)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var errors = new StringWriter { NewLine = "\n" };
        var code = CanvasCutCommand.Run(arguments, new(output, errors, IsTerminal: false));
        return (code, output.ToString(), errors.ToString());
    }
}
