using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using CanvasCut.Cli;
using CanvasCut.Drawing;
using CanvasCut.Drawing.Pages;
using CanvasCut.Job;
using CanvasCut.JobFiles;
using CanvasCut.Language;
using CanvasCut.Sheets;
using CanvasCut.Tests.Job;
using CanvasCut.Tests.JobFiles;

namespace CanvasCut.Tests.Language;

/// <summary>Whatever is printed comes from the tables: with accents on all vowels of theirs, no word of ours is plain.</summary>
public sealed partial class AccentedTests
{
    public static TheoryData<string> Examples => ExampleTests.Examples;

    /// <summary>Pages, drawings, lists: the text of the pages is read from the PDF by poppler, not by us.</summary>
    [Theory]
    [MemberData(nameof(Examples))]
    public void No_file_of_the_results_has_a_word_of_its_own(string example)
    {
        using var speech = Languages.Speak(Languages.Accented);
        using var folder = new TemporaryFolder();
        var files = ResultFiles.Of(ExampleTests.OutcomeOf(example));

        foreach (var file in files.Where(file => !IsPicture(file.Name) && file.Name != "templates.pdf"))
        {
            // The list of what to buy ends with the ids of pieces, and the carrier's is a plain word.
            var written = WrittenFor(example).Append(file.Name == "order.csv" ? "\"carrier\"" : string.Empty).ToArray();
            Assert.Equal([], UnspokenWords.InResults(TextOf(file, folder), written).Select(word => $"{file.Name}: {word}"));
        }

        // The templates are cut into pages, and so are words; where the page's edge parts one of the user's, its parts are no words.
        var templates = UnspokenWords.InResults(TextOf(files.Single(file => file.Name == "templates.pdf"), folder), WrittenFor(example)).ToList();
        var known = WrittenFor(example).Append("CanvasCut").ToList();
        Assert.Equal([], templates.Where(word => !known.Any(text => text.Contains(word, StringComparison.Ordinal))));
    }

    [Theory]
    [InlineData("check", "patterns/does-not-fit/job.toml", "--all")]
    [InlineData("check", "patterns/snaps-and-lacing/job.toml", "--all")]
    [InlineData("order", "patterns/priced-own-materials/job.toml")]
    [InlineData("cloth", "patterns/priced-own-materials/job.toml", "--all")]
    [InlineData("work", "patterns/three-bow-middle-tube/job.toml")]
    [InlineData("compare-mounts", "patterns/priced-own-materials/job.toml")]
    [InlineData("bonding", "patterns/three-bow-middle-tube/job.toml", "--air", "12C", "--humidity", "85", "--surface", "11C", "--hours", "20")]
    [InlineData("measure", "patterns/measured-top/measures.toml")]
    [InlineData("refit", "patterns/three-bow-middle-tube/expected/results.json", "patterns/three-bow-middle-tube/job.toml")]
    [InlineData("refit", "tests/CanvasCut.Tests/Job/Written/format-2.json", "patterns/refit-larger-panel/new-job.toml")]
    [InlineData("compare", "patterns/three-bow-middle-tube/expected")]
    [InlineData("scale", "patterns/three-bow-middle-tube/job.toml")]
    [InlineData("measure", "--print", "--paper", "A9")]
    public void No_command_has_a_word_of_its_own(string command, params string[] arguments)
    {
        string[] paths = [.. arguments.Select(argument => argument.StartsWith("patterns/", StringComparison.Ordinal) ? Repository.PathOf(argument) : argument)];
        var printed = Run([command, .. paths]);
        string[] written = [.. paths.Where(Path.Exists).SelectMany(BesideIt), .. paths];

        Assert.NotEmpty(printed);
        Assert.Equal([], UnspokenWords.In(printed, written));
    }

    [Theory]
    [InlineData("")]
    [InlineData("make")]
    [InlineData("check")]
    [InlineData("order")]
    [InlineData("work")]
    [InlineData("compare")]
    [InlineData("compare-mounts")]
    [InlineData("new")]
    [InlineData("scale")]
    [InlineData("bonding")]
    [InlineData("measure")]
    [InlineData("refit")]
    [InlineData("wiring")]
    [InlineData("yield")]
    public void The_help_has_no_word_of_its_own(string command)
    {
        var help = Run([.. command.Length > 0 ? [command] : Array.Empty<string>(), "--help"]);

        Assert.Contains("--language", help, StringComparison.Ordinal);
        Assert.Equal([], UnspokenWords.In(help, "make check order cloth work wiring yield compare new scale bonding measure refit CanvasCut.Tests JOB DIR FILE OLD NEW CODE docs A0 roll Tabloid Arch ANSI materials version help out air humidity surface hours forecast json all csv paper print prices language en de"));
    }

    /// <summary>Every mistake of patterns/invalid; what is in quotes is the user's, and "error" is what editors look for.</summary>
    [Fact]
    public void No_problem_has_a_word_of_its_own()
    {
        using var speech = Languages.Speak(Languages.Accented);
        var folders = Directory.EnumerateDirectories(Repository.PathOf("patterns/invalid")).Where(folder => File.Exists(Path.Combine(folder, "job.toml"))).ToList();

        Assert.True(folders.Count > 40);
        Assert.All(folders, folder =>
        {
            var text = string.Join('\n', Directory.EnumerateFiles(folder, "*.toml").Select(File.ReadAllText));
            var problems = Sample.Problems(File.ReadAllText(Path.Combine(folder, "job.toml")), Sample.Beside($"patterns/invalid/{Path.GetFileName(folder)}"));
            Assert.Equal([], UnspokenWords.In(Quoted().Replace(problems, string.Empty), [text, "error grade item per piece pack price inch My"]).Select(word => $"{Path.GetFileName(folder)}: {word}"));
        });
    }

    /// <summary>What is made once for the whole run has no words in it: whichever language came first would stay.</summary>
    [Fact]
    public void Nothing_keeps_the_language_in_which_it_was_first_asked_for()
    {
        var (fields, grades, sheet) = (JobFields.All, SupplyFields.All, WordsOfMeasuringSheet());
        using var speech = Languages.Speak(Languages.Accented);

        Assert.All(JobFields.All.Concat(SupplyFields.All).Zip(fields.Concat(grades)).Where(pair => pair.Second.Usual.Length > 0), pair => Assert.NotEqual(pair.Second.Usual, pair.First.Usual));
        Assert.DoesNotContain(WordsOfMeasuringSheet(), text => sheet.Contains(text) && UnspokenWords.In(text).Any());
    }

    [Fact]
    public void The_starter_is_a_job_in_every_language()
    {
        var english = Starter.Text;
        using var speech = Languages.Speak(Languages.Accented);

        Assert.NotEqual(english, Starter.Text);
        Assert.Equal(Fields(english), Fields(Starter.Text));
    }

    private static List<string> WordsOfMeasuringSheet() =>
        [.. MeasuringSheet.Of(PaperSize.A4, string.Empty).Figures.OfType<Lettering>().Select(lettering => lettering.Text)];

    private static IEnumerable<string> Fields(string starter) => starter.Split('\n').Where(line => !line.StartsWith("# ", StringComparison.Ordinal));

    private static bool IsPicture(string name) => name.EndsWith(".png", StringComparison.Ordinal) || name.EndsWith(".hpgl", StringComparison.Ordinal) || name is "pieces-pattern.dxf" or "results.json";

    private static string TextOf(ResultFile file, TemporaryFolder folder)
    {
        if (file.Name.EndsWith(".pdf", StringComparison.Ordinal))
        {
            var path = folder.PathOf(file.Name);
            File.WriteAllBytes(path, file.Bytes.Span);
            return OutsideTool.Run("pdftotext", "-layout", path, "-");
        }

        var text = Encoding.UTF8.GetString(file.Bytes.Span);
        return Path.GetExtension(file.Name) switch
        {
            ".svg" => string.Join('\n', SvgText().Matches(text).Select(match => WebUtility.HtmlDecode(match.Groups[1].Value))),
            ".dxf" => string.Join('\n', DxfText().Matches(text).Select(match => DxfLetter().Replace(match.Groups[1].Value, letter => $"{(char)Convert.ToInt32(letter.Groups[1].Value, 16)}"))),
            ".ics" => text.Replace("\n ", string.Empty, StringComparison.Ordinal),
            _ => text,
        };
    }

    /// <summary>The job file and those beside it.</summary>
    private static string[] WrittenFor(string example) => [.. Directory.EnumerateFiles(Repository.PathOf($"patterns/{example}"), "*.toml").Select(File.ReadAllText)];

    /// <summary>What a command reads: old results are in the language they were written in.</summary>
    private static IEnumerable<string> BesideIt(string path) => Directory
        .EnumerateFiles(Directory.Exists(path) ? path : Path.GetDirectoryName(path)!)
        .Where(file => Path.GetExtension(file) is ".toml" or ".json")
        .Select(File.ReadAllText);

    private static string Run(params string[] arguments)
    {
        using var printed = new StringWriter { NewLine = "\n" };
        CanvasCutCommand.Run([.. arguments, "--language", Languages.Accented], new(printed, printed, IsTerminal: false));
        return printed.ToString();
    }

    [GeneratedRegex(">([^<>]+)</text>")]
    private static partial Regex SvgText();

    [GeneratedRegex(@"\r?\n *1\r?\n([^\r\n]+)")]
    private static partial Regex DxfText();

    [GeneratedRegex(@"\\U\+([0-9A-F]{4})")]
    private static partial Regex DxfLetter();

    [GeneratedRegex("\"[^\"]*\"")]
    private static partial Regex Quoted();
}
