using System.Text;
using CanvasCut.Cli;
using CanvasCut.Language;

namespace CanvasCut.Tests.Cli;

/// <summary>Nothing of a file or of the command line can move, colour or turn what the terminal shows.</summary>
public sealed class TerminalTests
{
    /// <summary>ISO 6429: escape, a sequence that colours; the one-letter form of the same; ring the bell; go back; and Unicode's turn of the order.</summary>
    private const string Hostile = "\u001b[31m\u009b32m\a\rX\u202eY\u0000";

    private static readonly string Job = Repository.PathOf("patterns/two-bow-small-top/job.toml");

    [Theory]
    [InlineData("plain\ttext, ä", "plain\ttext, ä")]
    [InlineData("\u001b[2J", "\\u001b[2J")]
    [InlineData("a\u009bb\u007fc", "a\\u009bb\\u007fc")]
    [InlineData("a\r\nb", "a\\u000d\\u000ab")]
    [InlineData("a\u202eb\u2028c", "a\\u202eb\\u2028c")]
    public void A_line_shows_what_would_act(string text, string shown) => Assert.Equal(shown, VisibleText.OfLine(text));

    [Fact]
    public void A_text_of_lines_keeps_their_ends() => Assert.Equal("a\nb\\u001b", VisibleText.OfLines("a\nb\u001b"));

    [Fact]
    public void A_field_name_of_a_job() => AssertShown(InFile("job.toml", "format = 1\n\"a\\u001b[31m\\u009b32m\\u0007\\rX\\u202eY\\u0000\" = 1\n", path => ["check", path]));

    [Fact]
    public void A_value_of_a_job() => AssertInert(InFile("job.toml", "format = 1\nprints = \"\\u001b[31m\\u009b32m\\u0007\\rX\\u202eY\"\n", path => ["check", path]));

    [Fact]
    public void A_forecast() => AssertShown(InFile("days.csv", $"time,air_c,humidity_percent,rain_mm\n2026-05-01T00:00,\"{Hostile}\",60,0\n", path => ["bonding", "--forecast", path]));

    [Fact]
    public void A_materials_file() => AssertShown(InFile("materials.toml", "format = 1\n[cloth.\"x\\u001b[31m\\u202e\"]\nname = \"a\\u001b\"\n", path => ["check", Job, "--materials", path]));

    [Fact]
    public void A_price_file() => AssertShown(InFile("prices.toml", "format = 1\n\"x\\u001b[31m\\u202e\" = 1\n", path => ["order", Job, "--prices", path]));

    [Fact]
    public void Names_of_old_results()
    {
        var text = Repository.Read("patterns/three-bow-middle-tube/expected/results.json");
        var pieces = text.Replace("\"name\": \"", "\"name\": \"\\u001b[31m\\u009b\\u202e", StringComparison.Ordinal);
        AssertInert(InFile("results.json", pieces, path => ["refit", path, Job]));
        AssertInert(InFile("results.json", text.Replace("\"job\": \"", "\"job\": \"\\u001b[31m", StringComparison.Ordinal), path => ["refit", path, Job]));
        AssertShown(InFile("results.json", text.Replace("canvascut-results-", "canvascut-results-\\u001b[31m", StringComparison.Ordinal), path => ["refit", path, Job]));
    }

    [Theory]
    [InlineData("check", "\u001b[31m.toml")]
    [InlineData("make", "--\u001b[31m")]
    [InlineData("bonding", "--air", "\u001b[31m")]
    [InlineData("--language", "\u001b[31m", "check")]
    [InlineData("compare", "\u001b[31m")]
    public void What_was_typed(params string[] arguments) => AssertShown(InProcess.Run(arguments));

    /// <summary>The program's own colours still reach a terminal.</summary>
    [Fact]
    public void A_table_in_colour_stays_one()
    {
        var output = new StringWriter { NewLine = "\n" };
        var console = new Faces(output, TextWriter.Null, IsTerminal: false).Guarded().Console();
        console.Write(new Spectre.Console.Panel(new CanvasCut.Cli.Text("a\u001b[31mb")));

        Assert.DoesNotContain('\u001b', output.ToString());
        Assert.Contains("a\\u001b[31mb", output.ToString(), StringComparison.Ordinal);
    }

    /// <summary>In a terminal of a few columns the library that writes the help never comes to an end, so that it is given more.</summary>
    [Theory]
    [InlineData(0, 40)]
    [InlineData(3, 40)]
    [InlineData(40, 40)]
    [InlineData(132, 132)]
    public void Help_in_a_narrow_terminal_has_a_least_width(int columns, int width)
    {
        Assert.Equal(width, SpokenHelp.WidthIn(columns));
        Assert.InRange(new Faces(TextWriter.Null, TextWriter.Null, IsTerminal: true).Console().Profile.Width, 40, int.MaxValue);
    }

    private static (int Code, string Output, string Errors) InFile(string name, string text, Func<string, string[]> arguments)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.PathOf(name), text, new UTF8Encoding(false));
        return InProcess.Run(arguments(folder.PathOf(name)));
    }

    private static void AssertShown((int Code, string Output, string Errors) run)
    {
        AssertInert(run);
        Assert.NotEqual(0, run.Code);
        Assert.Contains("\\u001b", run.Output + run.Errors, StringComparison.OrdinalIgnoreCase);
    }

    private static void AssertInert((int Code, string Output, string Errors) run) =>
        Assert.DoesNotContain(run.Output + run.Errors, letter => letter != '\n' && (char.IsControl(letter) || letter == '\u202e'));
}
