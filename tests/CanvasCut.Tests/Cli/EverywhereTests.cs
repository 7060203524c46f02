namespace CanvasCut.Tests.Cli;

/// <summary>The whole program under other skies: the same bytes in every time zone, culture, and on any number of cores.</summary>
public sealed class EverywhereTests
{
    private static readonly string Job = Repository.PathOf("patterns/two-bow-small-top/job.toml");

    [Fact]
    public void The_whole_folder_is_the_same_everywhere()
    {
        using var folder = new TemporaryFolder();
        (string Name, string Value)[][] places =
        [
            [("TZ", "UTC"), ("LC_ALL", "C.UTF-8")],
            [("TZ", "Asia/Kolkata"), ("LC_ALL", "de_DE.UTF-8"), ("DOTNET_PROCESSOR_COUNT", "1"), ("HOME", folder.PathOf("nobody")), ("USER", "nobody")],
            [("TZ", "America/St_Johns"), ("LC_ALL", "tr_TR.UTF-8"), ("LANG", "ar_EG.UTF-8")],
        ];
        foreach (var (i, place) in places.Index())
        {
            var (code, _, errors) = RealProgram.Run(folder.Root, [.. place, ("DOTNET_NOLOGO", "1")], "make", Job, "--out", $"out{i}");
            Assert.Equal((0, string.Empty), (code, errors));
        }

        var first = Contents(folder.PathOf("out0"));
        Assert.Contains("report.pdf", first.Keys);
        for (var i = 1; i < places.Length; i++)
        {
            var other = Contents(folder.PathOf($"out{i}"));
            Assert.Equal(first.Keys.Order(StringComparer.Ordinal), other.Keys.Order(StringComparer.Ordinal));
            Assert.All(first, file => Assert.True(file.Value.AsSpan().SequenceEqual(other[file.Key]), $"{file.Key} is another in {places[i][0].Value}"));
        }
    }

    private static Dictionary<string, byte[]> Contents(string folder) => Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
        .ToDictionary(path => Path.GetRelativePath(folder, path), File.ReadAllBytes);
}
