using System.Text;
using CanvasCut.Job;

namespace CanvasCut.Tests.Job;

/// <summary>What make did not write it never removes, whatever it is called and wherever it lies.</summary>
public sealed class KeptFilesTests
{
    /// <summary>What stands on disk while a run makes something; later versions must know what earlier ones left.</summary>
    private const string Mark = "CanvasCut is making files here. What a run that was ended left behind, the next run removes. The files:\n";

    private const string Left = "out.canvascut-0123456789abcdef";

    [Theory]
    [InlineData("out.canvascut-old")]
    [InlineData("out.canvascut-new")]
    [InlineData(Left)]
    [InlineData("out.canvascut-0123456789abcdef-2")]
    public void A_folder_of_somebodys_beside_the_results_stays_whatever_its_name(string name)
    {
        using var folder = new TemporaryFolder();
        ResultFolder.Write(folder.PathOf("out"), Results("first", "a.txt"));
        Put(folder.PathOf($"{name}/results.json"), """{"format": "canvascut-results-1", "files": ["results.json", "diary.txt"]}""");
        Put(folder.PathOf($"{name}/diary.txt"), "mine");

        Assert.Null(ResultFolder.Write(folder.PathOf("out"), Results("second", "a.txt")));

        Assert.Equal("mine", File.ReadAllText(folder.PathOf($"{name}/diary.txt")));
        Assert.Equal("second", File.ReadAllText(folder.PathOf("out/a.txt")));
    }

    [Fact]
    public void A_link_to_the_results_stays_a_link()
    {
        using var folder = new TemporaryFolder();
        ResultFolder.Write(folder.PathOf("disk/results"), Results("first", "a.txt"));
        Directory.CreateSymbolicLink(folder.PathOf("near"), folder.PathOf("disk/results"));
        Directory.CreateSymbolicLink(folder.PathOf("out"), folder.PathOf("near"));

        ResultFolder.Write(folder.PathOf("out"), Results("second", "b.txt"));

        Assert.Equal(folder.PathOf("near"), new DirectoryInfo(folder.PathOf("out")).LinkTarget);
        Assert.Equal(["b.txt", "results.json"], Below(folder.PathOf("disk/results")));
        Assert.Equal(["disk", "near", "out"], Names(folder.Root));
        Assert.Equal(["results"], Names(folder.PathOf("disk")));
    }

    [Fact]
    public void Links_that_lead_back_to_each_other_are_refused_in_words()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateSymbolicLink(folder.PathOf("here"), folder.PathOf("there"));
        Directory.CreateSymbolicLink(folder.PathOf("there"), folder.PathOf("here"));
        ResultFolder.Write(folder.PathOf("out"), Results("first", "a.txt"));
        Directory.CreateSymbolicLink(folder.PathOf("out/pieces"), folder.PathOf("out"));

        Assert.Contains("cannot be written", ResultFolder.Refusal(folder.PathOf("here")), StringComparison.Ordinal);
        Assert.Contains("holds pieces, which CanvasCut did not write", ResultFolder.Refusal(folder.PathOf("out")), StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_folder_of_somebodys_in_the_results_is_not_ours()
    {
        using var folder = new TemporaryFolder();
        ResultFolder.Write(folder.PathOf("out"), Results("first", "pieces/a.svg"));
        Assert.Null(ResultFolder.Refusal(folder.PathOf("out")));
        Directory.CreateDirectory(folder.PathOf("out/for-the-photographs"));

        Assert.Contains("for-the-photographs", ResultFolder.Refusal(folder.PathOf("out")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_link_in_the_place_of_a_file_of_ours_is_not_ours()
    {
        using var folder = new TemporaryFolder();
        Put(folder.PathOf("letter.txt"), "mine");
        ResultFolder.Write(folder.PathOf("out"), Results("first", "a.txt"));
        File.Delete(folder.PathOf("out/a.txt"));
        File.CreateSymbolicLink(folder.PathOf("out/a.txt"), folder.PathOf("letter.txt"));

        Assert.Contains("a.txt", ResultFolder.Refusal(folder.PathOf("out")), StringComparison.Ordinal);
    }

    /// <summary>The results are looked through before the work begins; what comes to them while it goes on stops the exchange.</summary>
    [Fact]
    public void A_note_put_into_the_results_during_the_work_stays_and_so_do_they()
    {
        using var folder = new TemporaryFolder();
        ResultFolder.Write(folder.PathOf("out"), Results("first", "a.txt"));

        var failure = Assert.Throws<UnauthorizedAccessException>(() =>
            ResultFolder.Write(folder.PathOf("out"), Meanwhile(() => Put(folder.PathOf("out/note.txt"), "mine"), Results("second", "a.txt"))));

        Assert.Contains("note.txt", failure.Message, StringComparison.Ordinal);
        Assert.Equal(["a.txt", "note.txt", "results.json"], Below(folder.PathOf("out")));
        Assert.Equal("first", File.ReadAllText(folder.PathOf("out/a.txt")));
        Assert.Equal(["out"], Names(folder.Root));
    }

    [Fact]
    public void A_note_put_into_results_set_aside_is_kept_and_told_of()
    {
        using var folder = new TemporaryFolder();
        LeaveBehind(folder, "a.txt");
        ResultFolder.Write(folder.PathOf("other"), Results("newer", "a.txt"));
        Directory.Move(folder.PathOf("other"), folder.PathOf("out"));
        Put(folder.PathOf($"{Left}/old/note.txt"), "mine");

        Assert.Equal(folder.PathOf(Left), ResultFolder.Write(folder.PathOf("out"), Results("second", "a.txt")));

        Assert.Equal(["note.txt"], Below(folder.PathOf(Left)).Where(name => name.EndsWith("note.txt", StringComparison.Ordinal)).Select(Path.GetFileName));
        Assert.DoesNotContain(Below(folder.PathOf(Left)), name => name.EndsWith("a.txt", StringComparison.Ordinal));
        Assert.Equal("second", File.ReadAllText(folder.PathOf("out/a.txt")));
    }

    /// <summary>Killed between the two renamings: the old results stand in the folder of the killed run, and the next puts them back first.</summary>
    [Fact]
    public void Results_left_aside_by_a_killed_run_are_put_back()
    {
        using var folder = new TemporaryFolder();
        LeaveBehind(folder, "a.txt", "half.pdf");
        Put(folder.PathOf($"{Left}/new/half.pdf"), "%PD");

        ResultFolder.PutBack(folder.PathOf("out"));

        Assert.Equal("first", File.ReadAllText(folder.PathOf("out/a.txt")));
        Assert.Equal(["out"], Names(folder.Root));
    }

    [Fact]
    public void A_killed_run_leaves_nothing_after_the_next()
    {
        using var folder = new TemporaryFolder();
        Put(folder.PathOf($"{Left}/unfinished.txt"), Mark + "pieces/a.svg\nhal");
        Put(folder.PathOf($"{Left}/new/pieces/a.svg"), "<sv");

        Assert.Null(ResultFolder.Write(folder.PathOf("out"), Results("first", "a.txt")));

        Assert.Equal(["out"], Names(folder.Root));
    }

    /// <summary>A list that was tampered with names files outside of its folder; only what lies in it can be removed.</summary>
    [Fact]
    public void Nothing_outside_the_folder_is_removed_whatever_its_list_names()
    {
        using var folder = new TemporaryFolder();
        Put(folder.PathOf("letter.txt"), "mine");
        Put(folder.PathOf("out/results.json"), $$"""{"format": "canvascut-results-1", "files": ["results.json", "../letter.txt", "{{folder.PathOf("letter.txt")}}"]}""");

        Assert.Null(ResultFolder.Write(folder.PathOf("out"), Results("second", "a.txt")));

        Assert.Equal("mine", File.ReadAllText(folder.PathOf("letter.txt")));
        Assert.Equal(["a.txt", "results.json"], Below(folder.PathOf("out")));
    }

    [Fact]
    public void Two_runs_at_once_into_one_folder_leave_the_whole_results_of_one()
    {
        using var folder = new TemporaryFolder();
        Parallel.For(0, 8, run => ResultFolder.Write(folder.PathOf("out"), Results($"run {run}", [.. Enumerable.Range(0, 20).Select(i => $"pieces/{i}.txt")])));

        Assert.Equal(["out"], Names(folder.Root));
        Assert.Equal(21, Below(folder.PathOf("out")).Count());
        Assert.Single(Directory.EnumerateFiles(folder.PathOf("out/pieces")).Select(File.ReadAllText).Distinct());
    }

    /// <summary>One within the other: the inner must not take what the outer is making for something left behind.</summary>
    [Fact]
    public void A_run_leaves_alone_what_another_is_making()
    {
        using var folder = new TemporaryFolder();

        Assert.Null(ResultFolder.Write(folder.PathOf("out"), Meanwhile(() => ResultFolder.Write(folder.PathOf("out"), Results("inner", "a.txt")), Results("outer", "a.txt", "b.txt"))));

        Assert.Equal(["a.txt", "b.txt", "results.json"], Below(folder.PathOf("out")));
        Assert.Equal("outer", File.ReadAllText(folder.PathOf("out/a.txt")));
        Assert.Equal(["out"], Names(folder.Root));
    }

    /// <summary>As a run leaves it that is killed between the two renamings.</summary>
    private static void LeaveBehind(TemporaryFolder folder, params string[] names)
    {
        ResultFolder.Write(folder.PathOf("out"), Results("first", "a.txt"));
        Put(folder.PathOf($"{Left}/unfinished.txt"), Mark + string.Join('\n', names) + "\n");
        Directory.Move(folder.PathOf("out"), folder.PathOf($"{Left}/old"));
    }

    private static IEnumerable<ResultFile> Meanwhile(Action action, IEnumerable<ResultFile> files)
    {
        foreach (var (i, file) in files.Index())
        {
            if (i == 1)
            {
                action();
            }

            yield return file;
        }
    }

    private static IEnumerable<ResultFile> Results(string text, params string[] names)
    {
        string[] all = [.. names, "results.json"];
        var json = $$"""{"format": "{{ResultsJson.Format}}", "files": [{{string.Join(", ", all.Select(name => $"\"{name}\""))}}]}""";
        return names.Select(name => new ResultFile(name, Encoding.UTF8.GetBytes(text), string.Empty))
            .Append(new ResultFile("results.json", Encoding.UTF8.GetBytes(json), string.Empty));
    }

    private static void Put(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }

    private static IEnumerable<string?> Names(string folder) => Directory.EnumerateFileSystemEntries(folder).Select(Path.GetFileName).Order(StringComparer.Ordinal);

    private static IEnumerable<string> Below(string folder) => Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
        .Select(path => Path.GetRelativePath(folder, path))
        .Order(StringComparer.Ordinal);
}
