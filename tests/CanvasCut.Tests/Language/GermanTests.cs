using System.Text;
using CanvasCut.Cli;
using CanvasCut.Drawing;
using CanvasCut.Job;
using CanvasCut.JobFiles;
using CanvasCut.Language;
using CanvasCut.Tests.Job;

namespace CanvasCut.Tests.Language;

/// <summary>The second language: read through by a person, and the same job in all that is no word.</summary>
public sealed class GermanTests
{
    private const string Example = "three-bow-middle-tube";

    [Fact]
    public void The_results_are_worded_as_approved()
    {
        using var speech = Languages.Speak("de");
        var files = ResultFiles.Of(ExampleTests.OutcomeOf(Example)).ToDictionary(file => file.Name, file => Encoding.UTF8.GetString(file.Bytes.Span));

        Golden.Matches($"patterns/{Example}/expected/de/order.csv", files["order.csv"]);
        Golden.Matches($"patterns/{Example}/expected/de/check.txt", Run("check", Repository.PathOf($"patterns/{Example}/job.toml"), "--all"));
        Golden.Matches($"patterns/{Example}/expected/de/work.txt", Run("work", Repository.PathOf($"patterns/{Example}/job.toml")));
        Golden.Matches($"patterns/{Example}/expected/de/job.toml.txt", Starter.Text);
    }

    /// <summary>What was sewn by German results is known again in English, and the other way round.</summary>
    [Theory]
    [InlineData("de", "en")]
    [InlineData("en", "de")]
    public void Old_results_are_read_in_any_language(string before, string now)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.PathOf("same.json"), WrittenExamples.Text(Example, now));
        File.WriteAllText(folder.PathOf("results.json"), WrittenExamples.Text(Example, before));

        var (code, refit) = RunWithCode(["refit", folder.PathOf("results.json"), Repository.PathOf($"patterns/{Example}/job.toml"), "--language", now]);
        var (_, same) = RunWithCode(["refit", folder.PathOf("same.json"), Repository.PathOf($"patterns/{Example}/job.toml"), "--language", now]);

        Assert.Equal(0, code);
        Assert.Equal(same, refit);
    }

    /// <summary>The fonts of pages and drawings and the strokes of plotters have every letter of every table.</summary>
    [Theory]
    [MemberData(nameof(WordTableTests.Codes), MemberType = typeof(WordTableTests))]
    public void Every_letter_can_be_printed(string code)
    {
        var letters = WordTableTests.Table(code).Values.SelectMany(text => text.EnumerateRunes()).Where(letter => letter.Value != '\n').ToHashSet();

        Assert.Equal([], letters.Where(letter => !LetterTable.Has(letter)).Select(letter => letter.ToString()));
        Assert.Equal([], letters.Except(StrokeLetters.Characters).Select(letter => letter.ToString()));
    }

    [Fact]
    public void The_language_is_asked_for_by_option_before_the_environment()
    {
        string[] help = ["--help"];

        Assert.Contains("Befehle:", RunWithCode([.. help, "--language", "de"]).Printed, StringComparison.Ordinal);
        Assert.Contains("Befehle:", RunWithCode([.. help, "--language=de"], "en").Printed, StringComparison.Ordinal);
        Assert.Contains("Befehle:", RunWithCode(help, "de").Printed, StringComparison.Ordinal);
        Assert.Contains("Commands:", RunWithCode([.. help, "--language", "en"], "de").Printed, StringComparison.Ordinal);
        Assert.Contains("Commands:", RunWithCode(help).Printed, StringComparison.Ordinal);
        Assert.Equal("en", Languages.Code);
    }

    [Theory]
    [InlineData(new[] { "check", "x", "--language", "fr" }, null, "--language \"fr\" is no language of this program; write one of en, de.\n")]
    [InlineData(new[] { "check", "x" }, "deutsch", "CANVASCUT_LANGUAGE \"deutsch\" is no language of this program; write one of en, de.\n")]
    public void A_language_that_there_is_not_is_wrong_input(string[] arguments, string? usual, string complaint) =>
        Assert.Equal((2, complaint), RunWithCode(arguments, usual));

    private static string Run(params string[] arguments) => RunWithCode(arguments, Languages.Code).Printed;

    private static (int Code, string Printed) RunWithCode(string[] arguments, string? usual = null)
    {
        using var printed = new StringWriter { NewLine = "\n" };
        return (CanvasCutCommand.Run(arguments, new(printed, printed, IsTerminal: false), usual), printed.ToString());
    }
}
