using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CanvasCut.Job;
using CanvasCut.Tests.JobFiles;

namespace CanvasCut.Tests.Job;

/// <summary>One form of results.json: written and read by the same types, the same in every language but for its words, and older files are still read.</summary>
public sealed class ResultsFormatTests
{
    private const string Written = "tests/CanvasCut.Tests/Job/Written";

    /// <summary>What is read of a file is all that was written: written again it is the same text.</summary>
    [Theory]
    [MemberData(nameof(ExampleTests.Examples), MemberType = typeof(ExampleTests))]
    public void What_is_read_is_what_was_written(string example)
    {
        var text = WrittenExamples.Text(example, "en");

        var read = JsonSerializer.Deserialize(text, ResultsContext.Default.ResultsDocument)!;

        Assert.Equal(text, JsonText.Of(read, ResultsContext.Default.ResultsDocument));
    }

    /// <summary>In English and German every number, code and name is the same; what differs is marked as words where the types are made.</summary>
    [Theory]
    [MemberData(nameof(ExampleTests.Examples), MemberType = typeof(ExampleTests))]
    public void Nothing_but_words_differs(string example)
    {
        var (english, german) = (LeavesOf(example, "en"), LeavesOf(example, "de"));

        Assert.Equal(english.Where(IsNoWord).Select(leaf => (leaf.Path, leaf.Text)), german.Where(IsNoWord).Select(leaf => (leaf.Path, leaf.Text)));
        Assert.Equal(english.Select(leaf => leaf.Path), german.Select(leaf => leaf.Path));
        Assert.NotEqual(english.Where(leaf => leaf.IsWords), german.Where(leaf => leaf.IsWords));
    }

    /// <summary>A code is a code: small letters, digits and hyphens, and the signs that join two.</summary>
    [Theory]
    [MemberData(nameof(ExampleTests.Examples), MemberType = typeof(ExampleTests))]
    public void Codes_are_plain(string example)
    {
        string[] codes = ["code", "about", "verdict", "limit_is", "id", "kind", "edge", "corner", "hand", "warp", "shows", "stage", "uses", "makes", "needs", "opens", "closes", "from", "to", "confidence", "long_side", "starts_at", "edges"];

        Assert.All(
            LeavesOf(example, "de").Where(leaf => codes.Contains(leaf.Name) && leaf.Text is ['"', ..]),
            leaf => Assert.Matches("^\"[a-z0-9]+([-.:][a-z0-9]+)*\"$", leaf.Text));
    }

    /// <summary>
    /// Two files of one job: format-1.json was made by the last version that wrote that format, format-2.json by the first that wrote the
    /// other. They are never made again: whatever a later version writes, it answers a refit by either in the same words.
    /// </summary>
    [Theory]
    [InlineData("")]
    [InlineData("[zipper]\nsetback = \"40 mm\"\n[pocket]\nease = \"14 mm\"\n")]
    [InlineData("too large")]
    public void The_first_format_gives_the_same_answer(string wish)
    {
        var text = Repository.Read("patterns/refit-larger-panel/new-job.toml");
        var job = Sample.Job(wish == "too large" ? text.Replace("1056 mm", "1100 mm", StringComparison.Ordinal) : text + wish);

        var (first, second) = (RefitOf("format-1.json"), RefitOf("format-2.json"));

        Assert.Equal(second, first);
        Assert.Contains("canvascut-refit-1", first, StringComparison.Ordinal);

        string RefitOf(string name)
        {
            var old = OldResults.Read(Encoding.UTF8.GetBytes(Repository.Read($"{Written}/{name}")), name);
            Assert.True(old.IsValid, string.Join('\n', old.Problems));
            return RefitJson.Of(old.Value.JobName, job.Name, RefitOutcome.Of(old.Value, job));
        }
    }

    [Fact]
    public void The_two_files_are_of_the_formats_they_are_called_after()
    {
        Assert.Contains($"\"format\": \"{ResultsJson.EarlierFormat}\"", Repository.Read($"{Written}/format-1.json"), StringComparison.Ordinal);
        Assert.Contains($"\"format\": \"{ResultsJson.Format}\"", Repository.Read($"{Written}/format-2.json"), StringComparison.Ordinal);
    }

    private static bool IsNoWord(Leaf leaf) => !leaf.IsWords && leaf.Path != "language";

    private static List<Leaf> LeavesOf(string example, string language)
    {
        using var json = JsonDocument.Parse(WrittenExamples.Text(example, language));
        return [.. Leaves(json.RootElement, ResultsContext.Default.ResultsDocument, new(string.Empty, string.Empty, string.Empty, false))];
    }

    private static IEnumerable<Leaf> Leaves(JsonElement value, JsonTypeInfo form, Leaf at) => value.ValueKind switch
    {
        JsonValueKind.Object => value.EnumerateObject().SelectMany(member => Leaves(member.Value, ResultsSchema.FormOf(form, member.Name), at with
        {
            Path = at.Path.Length > 0 ? $"{at.Path}.{member.Name}" : member.Name,
            Name = member.Name,
            IsWords = ResultsSchema.IsWords(form, member.Name),
        })),
        JsonValueKind.Array => value.EnumerateArray().SelectMany((item, index) => Leaves(item, ResultsSchema.ElementOf(form), at with { Path = $"{at.Path}[{index}]" })),
        _ => [at with { Text = value.GetRawText() }],
    };

    /// <summary>A value that holds no other.</summary>
    private sealed record Leaf(string Path, string Name, string Text, bool IsWords);
}
