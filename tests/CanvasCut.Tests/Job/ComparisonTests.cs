using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using CanvasCut.Cli;
using CanvasCut.Job;

namespace CanvasCut.Tests.Job;

/// <summary>What compare sees, and that it sees what is wrong.</summary>
public sealed partial class ComparisonTests
{
    private const string Plot = "\n[plot]\nroll_width = \"1600 mm\"\nsingle_stroke = true\n";

    /// <summary>The results of each example, made once.</summary>
    private static readonly ConcurrentDictionary<string, (JobRun Outcome, ImmutableArray<ResultFile> Files)> Results = new(StringComparer.Ordinal);

    [Theory]
    [MemberData(nameof(ExampleTests.Examples), MemberType = typeof(ExampleTests))]
    public void Every_drawing_of_an_example_is_true(string example)
    {
        using var folder = new TemporaryFolder();
        var outcome = Made(folder, example);

        var lines = ResultsComparison.Of(folder.PathOf("out"))!;

        // A drawing of its own, and a place in both DXF files, pieces.hpgl, plot.pdf, roll.pdf, roll.svg and templates.pdf.
        Assert.Equal(8 * outcome.Content.Patterns.Pieces.Length, lines.Count);
        Assert.All(lines, line => Assert.True(line.IsTrue, line.ToString()));
        Assert.All(lines, line => Assert.True(line.Distance!.Value.Millimeters < LargestErrorMm(line.File), line.ToString()));
    }

    [Theory]
    [InlineData("units = \"in\"")]
    [InlineData("arcs = true")]
    [InlineData("one_file_per_piece = true")]
    public void A_dxf_in_another_form_is_true(string form)
    {
        using var folder = new TemporaryFolder();
        var outcome = JobRun.Of(Repository.Read("patterns/two-bow-small-top/job.toml") + $"\n[dxf]\n{form}\n", "job.toml").Value!;
        ResultFolder.Write(folder.PathOf("out"), ResultFiles.Of(outcome));

        var lines = ResultsComparison.Of(folder.PathOf("out"))!.Where(line => line.File.EndsWith(".dxf", StringComparison.Ordinal)).ToList();

        Assert.Equal(2 * outcome.Content.Patterns.Pieces.Length, lines.Count);
        Assert.All(lines, line => Assert.True(line.IsTrue, line.ToString()));
    }

    [Fact]
    public void A_plotter_file_of_another_scale_is_found()
    {
        var (code, output) = Compared("pieces.hpgl", hpgl => HpglPlace().Replace(hpgl, match =>
            $"{match.Groups[1].Value}{int.Parse(match.Groups[2].Value, CultureInfo.InvariantCulture) * 1016 / 1000}"));

        Assert.Equal(1, code);
        Assert.Contains("pieces.hpgl: the cut line of", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_coordinate_two_tenths_off_in_a_drawing_is_found()
    {
        var (code, output) = Compared(
            "pieces/carrier.svg",
            svg => CutStart().Replace(svg, match => $"{match.Groups[1].Value}{double.Parse(match.Groups[2].Value, CultureInfo.InvariantCulture) + 0.2:0.###}", 1));

        Assert.Equal(1, code);
        Assert.Matches(@"pieces/carrier\.svg: the cut line of Carrier lies up to 0\.\d+ mm off\.", output);
        Assert.Equal(1, Count(output, "NOT TRUE"));
    }

    /// <summary>
    /// By hand: the cut carrier is 1212 by 672 mm with corners trimmed from (606, 268.285) on. With the middles on each other a thousandth
    /// more moves that corner by (0.606, 0.268), outward of both its edges, so by the root of their squares, 0.663 mm.
    /// </summary>
    [Fact]
    public void A_sheet_scaled_by_one_in_a_thousand_is_found()
    {
        var (code, output) = Compared("pieces/carrier.svg", svg => Size().Replace(svg, match => $"{match.Groups[1].Value}=\"{double.Parse(match.Groups[2].Value, CultureInfo.InvariantCulture) * 1.001:0.###}mm\""));

        Assert.Equal(1, code);
        Assert.Contains("pieces/carrier.svg: the cut line of Carrier lies up to 0.66", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_scaled_dxf_is_found_piece_by_piece()
    {
        var (code, output) = Compared("pieces.dxf", dxf => DxfPlace().Replace(dxf, match =>
            $"{match.Groups[1].Value}\n{double.Parse(match.Groups[2].Value, CultureInfo.InvariantCulture) / 25.4:0.######}\n"));

        Assert.Equal(1, code);
        Assert.Equal(Count(output, "pieces.dxf: the cut line of"), Count(output, "NOT TRUE"));
        Assert.True(Count(output, "NOT TRUE") > 5);
    }

    [Theory]
    [InlineData("pieces.dxf", "pieces.dxf cannot be read: the file ends before its EOF; it is cut short.")]
    [InlineData("pieces/carrier.svg", "pieces/carrier.svg cannot be read: the drawing is broken or cut short at line")]
    [InlineData("pieces-pattern.dxf", "pieces-pattern.dxf cannot be read: the file ends before its EOF; it is cut short.")]
    [InlineData("pieces.hpgl", "pieces.hpgl cannot be read: the file ends before the pen is put away; it is cut short.")]
    [InlineData("roll.svg", "roll.svg cannot be read: the drawing is broken or cut short at line")]
    [InlineData("plot.pdf", "plot.pdf cannot be read: the PDF file is broken or cut short")]
    public void A_file_cut_short_is_found(string name, string words)
    {
        using var folder = new TemporaryFolder();
        Made(folder, "two-bow-small-top");
        var path = folder.PathOf("out/" + name);
        var bytes = File.ReadAllBytes(path);
        File.WriteAllBytes(path, bytes[..(bytes.Length / 2)]);

        var (code, output, _) = Run("compare", folder.PathOf("out"));

        Assert.Equal(1, code);
        Assert.Contains(words, output, StringComparison.Ordinal);
    }

    /// <summary>Templates of another job, whose carrier has no hems, stand for pages that are not true.</summary>
    [Fact]
    public void Templates_of_another_size_are_found_and_those_for_one_printer_are_left_out()
    {
        using var folder = new TemporaryFolder();
        Made(folder, "two-bow-small-top");
        var text = Repository.Read("patterns/two-bow-small-top/job.toml");
        var wider = ResultFiles.Of(JobRun.Of(text + "\n[carrier]\nedges = \"binding\"\n", "job.toml").Value!);
        File.WriteAllBytes(folder.PathOf("out/templates.pdf"), wider.Single(file => file.Name == "templates.pdf").Bytes.ToArray());

        var (code, output, _) = Run("compare", folder.PathOf("out"));

        Assert.Equal(1, code);
        Assert.Contains("templates.pdf: the cut line of Carrier lies up to", output, StringComparison.Ordinal);

        ResultFolder.Write(folder.PathOf("out"), ResultFiles.Of(JobRun.Of(text + "\n[paper]\nread_x = \"99.2 mm\"\nread_y = \"99.8 mm\"\n", "job.toml").Value!));
        Assert.DoesNotContain(ResultsComparison.Of(folder.PathOf("out"))!, line => line.File == "templates.pdf");
    }

    [Fact]
    public void A_missing_file_and_a_missing_line_are_found()
    {
        using var folder = new TemporaryFolder();
        Made(folder, "two-bow-small-top");
        File.Delete(folder.PathOf("out/plot.pdf"));
        var roll = folder.PathOf("out/roll.svg");
        File.WriteAllText(roll, new Regex("data-role=\"cut\"").Replace(File.ReadAllText(roll), "data-role=\"mark\"", 1));

        var (code, output, _) = Run("compare", folder.PathOf("out"));

        Assert.Equal(1, code);
        Assert.Contains("plot.pdf is missing.", output, StringComparison.Ordinal);
        Assert.Matches(@"roll\.svg has \d+ cut lines for \d+ pieces\.", output);
    }

    [Theory]
    [InlineData("<path ", "<path transform=\"scale(2)\" ", "is moved by a transform")]
    [InlineData("mm\"", "in\"", "is not given in millimetres")]
    [InlineData("viewBox=", "data-box=", "has no view box")]
    [InlineData("Z\"/>", "\"/>", "is not a closed path of straight lines")]
    [InlineData("d=\"M", "d=\"M-.e", "is no")]
    public void A_drawing_that_hides_its_size_is_not_trusted(string text, string instead, string words)
    {
        var (code, output) = Compared("pieces/carrier.svg", svg => svg.Replace(text, instead, StringComparison.Ordinal));

        Assert.Equal(1, code);
        Assert.Contains(words, output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("cut_mm", "cut")]
    [InlineData("\"format\"", "\"form\"")]
    public void Results_that_are_not_ours_are_refused(string text, string instead)
    {
        using var folder = new TemporaryFolder();
        Made(folder, "two-bow-small-top");
        var path = folder.PathOf("out/results.json");
        File.WriteAllText(path, File.ReadAllText(path).Replace(text, instead, StringComparison.Ordinal));

        Assert.Equal(3, Run("compare", folder.PathOf("out")).Code);
    }

    [Fact]
    public void A_drawing_of_another_piece_is_found()
    {
        using var folder = new TemporaryFolder();
        Made(folder, "two-bow-small-top");
        File.Copy(folder.PathOf("out/pieces/carrier.svg"), folder.PathOf("out/pieces/weather-strip-forward.svg"), overwrite: true);

        var (code, output, _) = Run("compare", folder.PathOf("out"));

        Assert.Equal((1, 1), (code, Count(output, "NOT TRUE")));
        Assert.Contains("pieces/weather-strip-forward.svg: the cut line of", output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_on_the_roll_is_said_in_one_line_and_the_rest_is_made()
    {
        using var folder = new TemporaryFolder();
        var job = folder.PathOf("job.toml");
        File.WriteAllText(job, Repository.Read("patterns/two-bow-small-top/job.toml") + "\n[plot]\nroll_width = \"400 mm\"\n");

        var (code, output, errors) = Run("make", job, "--out", folder.PathOf("out"));

        Assert.Equal((0, string.Empty), (code, errors));
        Assert.Contains("CAUTION plot.roll: Carrier on the plotter's roll\n    The piece is wider than the roll", output, StringComparison.Ordinal);
        Assert.Contains("Left out roll.pdf and roll.svg: a piece is wider", output, StringComparison.Ordinal);
        Assert.True(File.Exists(folder.PathOf("out/plot.pdf")));
        Assert.False(File.Exists(folder.PathOf("out/roll.pdf")));
        Assert.Equal(0, Run("compare", folder.PathOf("out")).Code);
    }

    [Fact]
    public void A_folder_without_results_is_refused()
    {
        using var folder = new TemporaryFolder();

        var (code, output, errors) = Run("compare", folder.PathOf("."));

        Assert.Equal((3, string.Empty), (code, output));
        Assert.Contains("is no results folder", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void True_files_end_with_0_and_tell_the_farthest()
    {
        using var folder = new TemporaryFolder();
        Made(folder, "inch-wide-panel");

        var (code, output, errors) = Run("compare", folder.PathOf("out"));

        Assert.Equal((0, string.Empty), (code, errors));
        Assert.Matches(@"Farthest off: 0\.0\d+ mm, .+ in .+\.\nAll \d+ cut lines are true to 0\.05 mm\.\n$", output);
    }

    private static (int Code, string Output) Compared(string name, Func<string, string> tamper)
    {
        using var folder = new TemporaryFolder();
        Made(folder, "two-bow-small-top");
        var path = folder.PathOf("out/" + name);
        var text = File.ReadAllText(path);
        var changed = tamper(text);
        Assert.NotEqual(text, changed);
        File.WriteAllText(path, changed);

        var (code, output, _) = Run("compare", folder.PathOf("out"));
        return (code, output);
    }

    private static JobRun Made(TemporaryFolder folder, string example)
    {
        var (outcome, files) = Results.GetOrAdd(example, Result);
        ResultFolder.Write(folder.PathOf("out"), files);
        return outcome;
    }

    private static (JobRun Outcome, ImmutableArray<ResultFile> Files) Result(string example)
    {
        var outcome = JobRun.Of(Repository.Read($"patterns/{example}/job.toml") + Plot, "job.toml", new() { Side = JobFiles.Sample.Beside($"patterns/{example}") });
        Assert.True(outcome.IsValid, string.Join('\n', outcome.Problems));
        return (outcome.Value, ResultFiles.Of(outcome.Value));
    }

    private static (int Code, string Output, string Errors) Run(params string[] arguments)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var errors = new StringWriter { NewLine = "\n" };
        var code = CanvasCutCommand.Run(arguments, new(output, errors, IsTerminal: false));
        return (code, output.ToString(), errors.ToString());
    }

    /// <summary>Half a step of the format's numbers, both ways, and a little: 0.025 mm in HP-GL, 0.01 mm in the exchange file.</summary>
    private static double LargestErrorMm(string file) => file switch
    {
        "pieces.hpgl" => 0.018,
        "pieces-pattern.dxf" => 0.008,
        _ => 0.005,
    };

    private static int Count(string text, string part) => text.Split(part).Length - 1;

    [GeneratedRegex("(data-role=\"cut\"[^/]* d=\"M)([0-9.]+)")]
    private static partial Regex CutStart();

    [GeneratedRegex("(width|height)=\"([0-9.]+)mm\"")]
    private static partial Regex Size();

    [GeneratedRegex(@"([UD,])(\d+)")]
    private static partial Regex HpglPlace();

    [GeneratedRegex(@"^( *[12]0)\n([-0-9.]+)\n", RegexOptions.Multiline)]
    private static partial Regex DxfPlace();
}
