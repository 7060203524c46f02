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

    [GeneratedRegex(@"\]\(([^)#][^)\s]*)\)")]
    private static partial Regex Links();
}
