using System.Text.RegularExpressions;

namespace CanvasCut.Tests;

/// <summary>What the repository says of itself.</summary>
public sealed partial class RepositoryTests
{
    public static TheoryData<string> Documents { get; } = [.. new[] { "README.md", "DEVELOPERS.md" }
        .Concat(new[] { "docs", "patterns" }.SelectMany(folder => Directory.EnumerateFiles(Repository.PathOf(folder), "*.md", SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(Repository.PathOf("."), path).Replace('\\', '/'))))
        .Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Documents))]
    public void Every_link_in_a_document_leads_somewhere(string document)
    {
        var folder = Path.GetDirectoryName(Repository.PathOf(document))!;

        Assert.All(
            Links().Matches(Repository.Read(document)).Select(match => match.Groups[1].Value).Where(link => !link.Contains("://", StringComparison.Ordinal)),
            link => Assert.True(Path.Exists(Path.Combine(folder, link.Split('#')[0])), link));
    }

    /// <summary>No folder of the program is so full that nobody finds a file in it.</summary>
    [Fact]
    public void No_folder_holds_more_than_twenty_five_files() => Assert.Equal(
        [],
        Sources("src").GroupBy(path => Path.GetDirectoryName(path)!).Where(folder => folder.Count() > 25).Select(folder => $"{folder.Key}: {folder.Count()}"));

    /// <summary>A line of code fits on a screen; only one that is made of texts may be longer, for a text stands as it is printed.</summary>
    /// <remarks>So many do not; the number comes down and is never raised.</remarks>
    [Theory]
    [InlineData("src", 380)]
    [InlineData("tests", 320)]
    public void Lines_of_code_fit_on_a_screen(string root, int most)
    {
        var longOnes = Sources(root)
            .SelectMany(path => File.ReadAllLines(path).Select((line, index) => (Line: line, Place: $"{path}:{index + 1}")))
            .Where(each => Texts().Replace(each.Line, "\"\"").Length > 160)
            .Select(each => each.Place)
            .ToList();

        Assert.True(longOnes.Count <= most, $"{longOnes.Count} lines of more than 160 characters besides their texts, where {most} were:\n{string.Join('\n', longOnes)}");
    }

    private static IEnumerable<string> Sources(string root) => Directory.EnumerateFiles(Repository.PathOf(root), "*.cs", SearchOption.AllDirectories)
        .Where(path => !path.Split(Path.DirectorySeparatorChar).Any(part => part is "obj" or "bin"));

    [GeneratedRegex("\"(?:[^\"\\\\]|\\\\.)*\"")]
    private static partial Regex Texts();

    [GeneratedRegex(@"\]\(([^)#][^)\s]*)\)")]
    private static partial Regex Links();
}
