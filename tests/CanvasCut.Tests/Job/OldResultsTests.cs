using System.Text;
using CanvasCut.Job;

namespace CanvasCut.Tests.Job;

/// <summary>A results.json that is not ours, older or damaged is refused, one clear line for each thing that is wrong.</summary>
public sealed class OldResultsTests
{
    private static readonly Lazy<string> Good = new(() => ResultsJson.OfChecks(ExampleTests.OutcomeOf("two-bow-small-top")));

    [Fact]
    public void What_make_wrote_is_read() => Assert.Equal("Harbour launch, two bows", RefitOutcomeTests.Old(ExampleTests.OutcomeOf("two-bow-small-top")).JobName);

    [Fact]
    public void A_file_that_is_not_there_is_told()
    {
        var problem = Assert.Single(OldResults.Read("no-such/results.json").Problems);

        Assert.Equal("no-such/results.json(1,1): CC180: is not there; name the results.json that make wrote for the job that is sewn, or its folder.", problem.ToString());
    }

    [Theory]
    [InlineData("", "(1,1): CC181: is no JSON, so")]
    [InlineData("format = 1", "(1,2): CC181: is no JSON, so")]
    [InlineData("[]", "(1,1): CC181: format: should be \"canvascut-results-2\", so this is no results.json")]
    [InlineData("{\n  \"format\": 1\n}", "(2,13): CC181: format: should be")]
    [InlineData("{ \"format\": \"canvascut-measures-1\" }", "(1,13): CC181: format: should be")]
    [InlineData("{ \"format\": \"canvascut-results-3\" }", "(1,13): CC182: format: is \"canvascut-results-3\", and this version reads \"canvascut-results-1\" and \"canvascut-results-2\"; make the old job again")]
    [InlineData("{ \"format\": \"canvascut-results-2\", \"job\": \"x\" }", "(1,1): CC183: should have version, language, files, failed,")]
    [InlineData("{ \"format\": \"canvascut-results-1\", \"job\": \"x\" }", "(1,1): CC182: sewn: is missing: an earlier version wrote this file")]
    [InlineData("{ \"format\": \"canvascut-results-1\", \"job\": ", "CC183: The text breaks off")]
    public void A_file_of_another_kind_is_told(string text, string told)
    {
        var problem = Assert.Single(OldResults.Read(Encoding.UTF8.GetBytes(text), "results.json").Problems);

        Assert.Contains(told, problem.ToString(), StringComparison.Ordinal);
        Assert.StartsWith("results.json(", problem.ToString(), StringComparison.Ordinal);
    }

    /// <summary>Half a letter is half a surrogate pair of UTF-16 (RFC 8259, 8.2).</summary>
    [Theory]
    [InlineData("\"job\": \"", "\"job\": \"\\ud800")]
    [InlineData("\"version\": ", "\"\\udc00\": 1, \"version\": ")]
    [InlineData("\"marks\": [", "\"marks\": [ 7, ")]
    [InlineData("\"marks\": [", "\"marks\": [ null, [], ")]
    [InlineData("\"job\": \"", "\"job\": \"\\u001b")]
    public void A_file_with_odd_values_is_refused_and_nothing_is_thrown(string written, string changed)
    {
        var at = Good.Value.IndexOf(written, StringComparison.Ordinal);
        Assert.True(at >= 0);
        var problem = OldResults.Read(Encoding.UTF8.GetBytes(Good.Value[..at] + changed + Good.Value[(at + written.Length)..]), "results.json").Problems[0];

        Assert.Equal(ResultsCode.Damaged, problem.Code);
    }

    /// <summary>A top with anything but zippers forward and aft is refused, whatever holds its edges.</summary>
    [Theory]
    [InlineData("forward = \"sleeve\"", "holds an edge by something else than a zipper")]
    [InlineData("port = \"snaps\"", "holds an edge by something else than a zipper")]
    [InlineData("starboard = \"zipper\"", "tells of zippers at the sides too")]
    public void A_top_held_otherwise_is_not_refitted(string mount, string told)
    {
        var outcome = JobRun.Of($"{JobFiles.Sample.Least}\n[mount]\n{mount}\n", "job.toml").Value!;
        var problem = Assert.Single(OldResults.Read(Encoding.UTF8.GetBytes(ResultsJson.OfChecks(outcome)), "results.json").Problems);

        Assert.Contains($"CC184: mountings[1].mounts: {told}", problem.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"reveal_mm\": 9.525", "\"reveal_mm\": -9.525", "mountings[1].sewn.zipper.reveal_mm: should be a length above zero in millimetres.")]
    [InlineData("\"ease_mm\": ", "\"ease_mm\": -", "mountings[1].sewn.pocket.ease_mm: should be a length not below zero in millimetres.")]
    [InlineData("\"over_zipper\": true", "\"over_zipper\": 1", "mountings[1].sewn.pocket.over_zipper: should be true or false.")]
    [InlineData("\"thickness_mm\": 2.6", "\"thicknes_mm\": 2.6", "mountings[1].sewn.panel: should have thickness_mm.")]
    [InlineData("\"legs_mm\": [", "\"legs_mm\": [ 94,", "mountings[1].sewn.pocket.legs_mm: should be a list of 4.")]
    [InlineData("\"overlap_mm\": 15.875", "\"overlap_mm\": 1e300", "mountings[1].sewn.weather_strip.overlap_mm: should be a length not below zero in millimetres.")]
    [InlineData("\"kept_pieces\": []", "\"kept_pieces\": {}", "mountings[1].kept_pieces: should be a list.")]
    [InlineData("\"closed\": false", "\"closed\": 0", "mountings[1].pieces[1].lines[1].closed: should be true or false.")]
    [InlineData("\"ease_mm\": 1", "\"ease_mm\": 2", "should have \"forward port pocket, square corner\" at station")]
    public void A_changed_file_tells_what_is_wrong_and_where(string written, string changed, string told)
    {
        var text = Good.Value;
        Assert.Contains(written, text, StringComparison.Ordinal);
        var at = text.IndexOf(written, text.IndexOf("\"pieces\"", StringComparison.Ordinal), StringComparison.Ordinal);
        var problem = OldResults.Read(Encoding.UTF8.GetBytes(text[..at] + changed + text[(at + written.Length)..]), "results.json").Problems[0];

        Assert.Equal(ResultsCode.Damaged, problem.Code);
        Assert.Contains(told, problem.ToString(), StringComparison.Ordinal);
        Assert.EndsWith("The file was changed or damaged; make the old job again.", problem.ToString(), StringComparison.Ordinal);
        Assert.True(problem.Place.Line > 1);
    }

    /// <summary>Cut off anywhere, the file is refused and nothing is thrown.</summary>
    [Fact]
    public void A_file_that_breaks_off_is_never_taken()
    {
        var bytes = Encoding.UTF8.GetBytes(Good.Value);
        var end = bytes.AsSpan().LastIndexOf((byte)'}');

        Assert.All(Enumerable.Range(0, 40).Select(i => end * i / 40), length => Assert.False(OldResults.Read(bytes[..length], "results.json").IsValid));
    }
}
