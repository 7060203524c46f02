using System.Text;
using CanvasCut.Job;

namespace CanvasCut.Tests.Job;

public sealed class ResultFolderTests
{
    [Fact]
    public void Results_replace_results_and_nothing_of_the_old_is_left()
    {
        using var folder = new TemporaryFolder();
        var target = folder.PathOf("out");
        ResultFolder.Write(target, Results("first", "a.txt", "pieces/b.svg"));

        Assert.Null(ResultFolder.Refusal(target));
        ResultFolder.Write(target, Results("second", "a.txt"));

        Assert.Equal(["a.txt", "results.json"], Below(target));
        Assert.Equal("second", File.ReadAllText(Path.Combine(target, "a.txt")));
        Assert.Equal(["out"], Directory.EnumerateFileSystemEntries(Path.GetDirectoryName(target)!).Select(Path.GetFileName));
    }

    [Fact]
    public void A_file_in_the_way_is_refused()
    {
        using var folder = new TemporaryFolder();
        var target = folder.PathOf("out");
        File.WriteAllText(target, "mine");

        Assert.Contains("is a file", ResultFolder.Refusal(target), StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_with_somebody_elses_file_is_refused()
    {
        using var folder = new TemporaryFolder();
        var target = folder.PathOf("out");
        ResultFolder.Write(target, Results("first", "a.txt"));
        File.WriteAllText(Path.Combine(target, "notes.txt"), "mine");

        Assert.Contains("notes.txt", ResultFolder.Refusal(target), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("not json")]
    [InlineData("{\"format\": \"other\", \"files\": [\"results.json\"]}")]
    [InlineData("{\"format\": \"canvascut-results-1\", \"files\": 7}")]
    public void A_results_file_that_is_not_ours_protects_its_folder(string json)
    {
        using var folder = new TemporaryFolder();
        var target = folder.PathOf("out");
        Directory.CreateDirectory(target);
        File.WriteAllText(Path.Combine(target, "results.json"), json);

        Assert.NotNull(ResultFolder.Refusal(target));
    }

    [Fact]
    public void An_empty_folder_and_none_are_welcome()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder.PathOf("empty"));

        Assert.Null(ResultFolder.Refusal(folder.PathOf("empty")));
        Assert.Null(ResultFolder.Refusal(folder.PathOf("none")));
        ResultFolder.Write(folder.PathOf("empty"), Results("first", "a.txt"));
        Assert.Equal(["a.txt", "results.json"], Below(folder.PathOf("empty")));
    }

    /// <summary>A failure at every place on the way: the old results are whole and nothing else is left.</summary>
    [Fact]
    public void A_failure_in_the_middle_leaves_the_old_results_whole()
    {
        using var folder = new TemporaryFolder();
        var target = folder.PathOf("out");
        ResultFolder.Write(target, Results("first", "a.txt", "b.txt"));
        for (var good = 0; good < 3; good++)
        {
            Assert.Throws<IOException>(() => ResultFolder.Write(target, FailingAfter(good)));

            Assert.Equal(["a.txt", "b.txt", "results.json"], Below(target));
            Assert.Equal("first", File.ReadAllText(Path.Combine(target, "a.txt")));
            Assert.Equal(["out"], Directory.EnumerateFileSystemEntries(Path.GetDirectoryName(target)!).Select(Path.GetFileName));
        }
    }

    private static IEnumerable<ResultFile> FailingAfter(int good)
    {
        foreach (var file in Results("second", "a.txt", "c.txt", "d.txt").Take(good))
        {
            yield return file;
        }

        throw new IOException("The disk is full.");
    }

    private static IEnumerable<ResultFile> Results(string text, params string[] names)
    {
        string[] all = [.. names, "results.json"];
        var json = $$"""{"format": "{{ResultsJson.Format}}", "files": [{{string.Join(", ", all.Select(name => $"\"{name}\""))}}]}""";
        return names.Select(name => new ResultFile(name, Encoding.UTF8.GetBytes(text), string.Empty))
            .Append(new ResultFile("results.json", Encoding.UTF8.GetBytes(json), string.Empty));
    }

    private static IEnumerable<string> Below(string folder) => Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
        .Select(path => Path.GetRelativePath(folder, path))
        .Order(StringComparer.Ordinal);
}
