using CanvasCut.Cli;

namespace CanvasCut.Tests.Cli;

public sealed class ScaleCommandTests
{
    private static readonly string Job = Repository.PathOf("patterns/two-bow-small-top/job.toml");

    [Theory]
    [InlineData("A4", "595")]
    [InlineData("letter", "612")]
    public void Scale_writes_one_page_of_the_paper_and_never_over_a_file(string paper, string width)
    {
        using var folder = new TemporaryFolder();
        var file = folder.PathOf("test.pdf");

        var (code, output, errors) = Run("scale", "--paper", paper, "--out", file);
        Assert.Equal((0, string.Empty), (code, errors));
        Assert.Contains("Print it at 100 %", output, StringComparison.Ordinal);
        var bytes = File.ReadAllBytes(file);
        var again = Run("scale", "--out", file);
        Assert.Equal(3, again.Code);
        Assert.Contains("left as it is", again.Errors, StringComparison.Ordinal);
        Assert.Equal(bytes, File.ReadAllBytes(file));
        var told = OutsideTool.Run("pdfinfo", file);
        Assert.Matches(@"Pages:\s+1\n", told);
        Assert.Matches($@"Page size:\s+{width}\b", told);
        Assert.Contains("Long scale y", OutsideTool.Run("pdftotext", "-layout", file, "-"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("none of A4, A3", "--paper", "A5")]
    [InlineData("go together", "--read-x", "99")]
    [InlineData("go together", "--read-y", "99", "job.toml")]
    [InlineData("need the job", "--read-x", "99", "--read-y", "99")]
    [InlineData("needs --read-x", "job.toml")]
    [InlineData("--read-x is no reading", "--read-x", "9.92", "--read-y", "99", "job.toml")]
    [InlineData("--read-y would take a correction of 5.3 %", "--read-x", "99", "--read-y", "95", "job.toml")]
    [InlineData("--read-x \"about 99\"", "--read-x", "about 99", "--read-y", "99", "job.toml")]
    [InlineData("the job file", "--read-x", "99", "--read-y", "99", "--paper", "A4", "job.toml")]
    [InlineData("--out needs", "--out", " ")]
    public void What_cannot_be_is_told_in_one_line(string complaint, params string[] arguments)
    {
        var (code, output, errors) = Run(["scale", .. arguments]);

        Assert.Equal((2, string.Empty), (code, output));
        Assert.Contains(complaint, Assert.Single(errors.Split('\n', StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    [Fact]
    public void With_readings_the_templates_are_made_anew_and_results_tell_so()
    {
        using var folder = new TemporaryFolder();
        var (plain, corrected) = (folder.PathOf("plain"), folder.PathOf("corrected"));

        Assert.Equal(0, Run("make", Job, "--out", plain).Code);
        Assert.Equal(0, Run("scale", "--read-x", "99.2", "--read-y", "99.8 mm", Job, "--out", corrected).Code);

        var names = Names(plain);
        Assert.Equal(names, Names(corrected));
        Assert.All(names, name => Assert.Equal(name is not ("templates.pdf" or "results.json"), Same(Path.Combine(plain, name), Path.Combine(corrected, name))));
        Assert.All(
            OutsideTool.Run("pdftotext", "-layout", Path.Combine(corrected, "templates.pdf"), "-").Split('\f', StringSplitOptions.RemoveEmptyEntries),
            page => Assert.Contains("corrected x 1.0081, y 1.0020 for a printer that read 99.2 and 99.8", page, StringComparison.Ordinal));
    }

    [Fact]
    public void The_fields_of_the_job_file_do_the_same_as_the_options()
    {
        using var folder = new TemporaryFolder();
        var file = folder.PathOf("job.toml");
        var text = File.ReadAllText(Job);
        Assert.DoesNotContain("[paper]", text, StringComparison.Ordinal);
        File.WriteAllText(file, text + "\n[paper]\nread_x = \"99.2 mm\"\nread_y = \"99.8 mm\"\n");

        Assert.Equal(0, Run("make", file, "--out", folder.PathOf("fields")).Code);
        Assert.Equal(0, Run("scale", "--read-x", "99.2", "--read-y", "99.8", Job, "--out", folder.PathOf("options")).Code);

        Assert.True(Same(folder.PathOf("fields/templates.pdf"), folder.PathOf("options/templates.pdf")));
    }

    private static List<string> Names(string folder) =>
        [.. Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Select(path => Path.GetRelativePath(folder, path)).Order(StringComparer.Ordinal)];

    private static bool Same(string first, string second) => File.ReadAllBytes(first).AsSpan().SequenceEqual(File.ReadAllBytes(second));

    private static (int Code, string Output, string Errors) Run(params string[] arguments)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var errors = new StringWriter { NewLine = "\n" };
        var code = CanvasCutCommand.Run(arguments, new(output, errors, IsTerminal: false));
        return (code, output.ToString(), errors.ToString());
    }
}
