using System.Text;
using CanvasCut.Cli;

namespace CanvasCut.Tests.Cli;

public sealed class MeasureIntoTests
{
    private static readonly string Wrong = Repository.Read("patterns/measured-top/measures.toml");
    private static readonly string Right = Wrong.Replace("2038 mm", "2028 mm", StringComparison.Ordinal);
    private static readonly string Job = Repository.Read("patterns/three-bow-middle-tube/job.toml");

    [Fact]
    public void The_jobs_values_are_exchanged_and_nothing_else()
    {
        using var folder = new TemporaryFolder();
        var path = folder.PathOf("job.toml");
        File.WriteAllBytes(path, [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(Job)]);

        var (code, output, errors) = Run(folder, Right, "--into", path);

        Assert.Equal((0, string.Empty), (code, errors));
        Assert.Contains("top.bow[1].station: 70 mm -> 70.5 mm", output, StringComparison.Ordinal);
        Assert.Contains("Measured, but no line of", output, StringComparison.Ordinal);
        Assert.True(File.ReadAllBytes(path).AsSpan().StartsWith(Encoding.UTF8.Preamble));
        var (before, after) = (Job.Split('\n'), File.ReadAllText(path).Split('\n'));
        Assert.Equal(before.Length, after.Length);
        Assert.All(before.Zip(after).Where(pair => pair.First != pair.Second), pair => Assert.Equal(pair.First.Split('"')[0], pair.Second.Split('"')[0]));
        Assert.Equal(13, before.Zip(after).Count(pair => pair.First != pair.Second));
        Assert.Equal(["job.toml", "measures.toml"], Directory.EnumerateFiles(folder.PathOf(".")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Contains("has these figures already", Run(folder, Right, "--into", path).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Measures_that_do_not_agree_are_not_carried_over()
    {
        using var folder = new TemporaryFolder();
        var path = folder.PathOf("job.toml");
        File.WriteAllText(path, Job);

        Assert.Equal(1, Run(folder, Wrong, "--into", path).Code);
        Assert.Equal(1, Run(folder, Wrong, "--top").Code);
        Assert.Equal(Job, File.ReadAllText(path));
    }

    [Theory]
    [InlineData("[[top.bow]]\nstation = \"1 in\"\n", "has 1 bows and the measures have 3")]
    [InlineData("[[top.bow]\n", "write [[top.bow]]")]
    [InlineData("[[top.bow]]\nstation = \"1 in\"\n[[top.bow]]\nstation = \"2 in\"\n[[top.bow]]\nstation = \"3 in\"\ncrown_port = \"0 mm\"\ncrown_starboard = \"0 mm\"\nchord = \"70 in\"\ngirth = \"70 in\"\n", "CC112")]
    public void A_job_that_would_be_wrong_then_stays_as_it_is(string bows, string told)
    {
        using var folder = new TemporaryFolder();
        var (path, job) = (folder.PathOf("job.toml"), CanvasCut.Tests.JobFiles.Sample.Least + bows);
        File.WriteAllText(path, job);

        var (code, _, errors) = Run(folder, Right, "--into", path);

        Assert.Equal(2, code);
        Assert.Contains(told, errors, StringComparison.Ordinal);
        Assert.Equal(job, File.ReadAllText(path));
    }

    [Fact]
    public void A_file_that_would_lose_letters_is_left_alone()
    {
        using var folder = new TemporaryFolder();
        var path = folder.PathOf("job.toml");
        File.WriteAllBytes(path, Encoding.Latin1.GetBytes(Job + "# Größe\n"));

        Assert.Equal(3, Run(folder, Right, "--into", path).Code);
        Assert.Equal(3, Run(folder, Right, "--into", folder.PathOf("none.toml")).Code);
    }

    [Fact]
    public void What_is_printed_to_paste_makes_a_job_with_the_panel()
    {
        using var folder = new TemporaryFolder();
        var (code, output, _) = Run(folder, Right, "--top");

        Assert.Equal(0, code);
        var job = CanvasCut.Tests.JobFiles.Sample.Job($"format = 1\nname = \"a\"\n{output}\n[panel]\nlength = \"1 m\"\nwidth = \"0.5 m\"\n");
        Assert.Equal(3, job.Top.Bows.Length);
        Assert.Equal(2021.5, job.Top.Length.Millimeters);
        Assert.Equal(135, job.Top.Bows[1].Height!.Value.Millimeters);
    }

    private static (int Code, string Output, string Errors) Run(TemporaryFolder folder, string measures, params string[] arguments)
    {
        File.WriteAllText(folder.PathOf("measures.toml"), measures);
        using var output = new StringWriter { NewLine = "\n" };
        using var errors = new StringWriter { NewLine = "\n" };
        var code = CanvasCutCommand.Run(["measure", folder.PathOf("measures.toml"), .. arguments], new(output, errors, IsTerminal: false));
        return (code, output.ToString(), errors.ToString());
    }
}
