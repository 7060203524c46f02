namespace CanvasCut.Tests.Cli;

/// <summary>What the surroundings can do to a run: it ends with one plain line and the documented code, never with a trace.</summary>
public sealed class PlainEndTests
{
    private static readonly string Job = Repository.PathOf("patterns/two-bow-small-top/job.toml");

    [Theory]
    [InlineData("$CANVASCUT check JOB > /dev/full", 3, "The output cannot be written:")]
    [InlineData("$CANVASCUT order JOB --csv > /dev/full", 3, "The output cannot be written:")]
    [InlineData("$CANVASCUT --help > /dev/full", 3, "The output cannot be written:")]
    [InlineData("mkdir gone; cd gone; rmdir ../gone; $CANVASCUT make JOB", 3, "cannot be written:")]
    [InlineData("mkdir gone; cd gone; rmdir ../gone; $CANVASCUT measure --print", 3, "cannot be written:")]
    [InlineData("mkdir gone; cd gone; rmdir ../gone; $CANVASCUT check job.toml", 3, "There is no file job.toml")]
    [InlineData("ln -s a b; ln -s b a; $CANVASCUT make JOB --out a", 3, "cannot be written:")]
    [InlineData("ln -s a b; ln -s b a; $CANVASCUT check a", 3, "cannot be read:")]
    [InlineData("ln -s a b; ln -s b a; $CANVASCUT compare a", 3, "is no results folder")]
    [InlineData("ln -s a b; ln -s b a; $CANVASCUT refit a JOB", 3, "CC180")]
    [InlineData("$CANVASCUT order JOB --prices /dev/zero", 3, "is larger than a price file can be")]
    [InlineData("$CANVASCUT refit /dev/zero JOB", 3, "is larger than a results.json can be")]
    [InlineData("mkdir in; cd in; $CANVASCUT make JOB --out .", 3, "is the folder you are in")]
    [InlineData("$CANVASCUT make JOB --out a --out b", 2, "--out")]
    public void One_plain_line(string line, int code, string told)
    {
        using var folder = new TemporaryFolder();
        var (ended, output, errors) = RealProgram.Shell(folder.Root, line.Replace("JOB", Job, StringComparison.Ordinal));

        Assert.Contains(told, errors, StringComparison.Ordinal);
        Assert.Equal((code, string.Empty), (ended, output));
        Assert.InRange(errors.Count(letter => letter == '\n'), 1, 2);
        Assert.DoesNotContain("   at ", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pipe_into_which_nobody_writes_is_given_up()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "mkfifo is of Unix");
        using var folder = new TemporaryFolder();
        OutsideTool.Run("mkfifo", folder.PathOf("pipe"));

        var failure = Assert.Throws<IOException>(() => CanvasCut.Job.BoundedFile.Read(folder.PathOf("pipe"), 100, TimeSpan.FromSeconds(0.3)));

        Assert.Contains("Nothing came from it", failure.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("prices")]
    [InlineData("materials")]
    public void A_pipe_that_brings_a_text_is_read(string option)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.PathOf("list.toml"), option == "prices" ? Repository.Read("patterns/priced-own-materials/prices.toml") : Repository.Read("patterns/priced-own-materials/materials.toml"));
        var (code, _, errors) = RealProgram.Shell(folder.Root, $"mkfifo pipe; (sleep 0.2; cat list.toml > pipe) & $CANVASCUT order {Repository.PathOf("patterns/priced-own-materials/job.toml")} --{option} pipe");

        Assert.Equal((0, string.Empty), (code, errors));
    }

    [Theory]
    [InlineData("--humidity", "nan")]
    [InlineData("--humidity", "-nan")]
    [InlineData("--humidity", "∞")]
    [InlineData("--hours", "nan")]
    [InlineData("--air", "nan C")]
    public void What_is_no_number_is_told(string option, string value)
    {
        var (code, output, errors) = InProcess.Run("bonding", option, value);

        Assert.Equal((2, string.Empty), (code, output));
        Assert.StartsWith($"{option} \"{value}\" is not a", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_forms_at_once_are_wrong_input()
    {
        var (code, output, errors) = InProcess.Run("order", Job, "--csv", "--json");

        Assert.Equal((2, string.Empty), (code, output));
        Assert.Contains("do not go together", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Bytes_that_are_no_text_are_told_with_their_line()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllBytes(folder.PathOf("job.toml"), [.. "format = 1\nname = \"M"u8, 0xFC, .. "we\"\n"u8]);

        var (code, _, errors) = InProcess.Run("check", folder.PathOf("job.toml"));

        Assert.Equal(3, code);
        Assert.Contains("is not written in UTF-8: line 2 has the byte 0xFC", errors, StringComparison.Ordinal);
    }

    /// <summary>An exception that nothing was ready for: one sentence with a code, and how to report it.</summary>
    [Fact]
    public void What_nobody_was_ready_for_is_one_sentence()
    {
        using var errors = new StringWriter { NewLine = "\n" };
        using var output = new BrokenInside();

        var code = CanvasCut.Cli.CanvasCutCommand.Run(["check", Job], new(output, errors, IsTerminal: false));

        Assert.Equal(4, code);
        Assert.Matches("^CC900: CanvasCut [0-9.]+ went wrong inside \\(InvalidOperationException.*: made up\\)\\. .* send this line, .*\\.\n$", errors.ToString());
    }

    private sealed class BrokenInside : StringWriter
    {
        public override void Write(string? value) => throw new InvalidOperationException("made up");
    }
}
