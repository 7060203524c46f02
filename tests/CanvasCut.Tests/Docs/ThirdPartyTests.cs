using System.Text.Json;
using System.Text.RegularExpressions;

namespace CanvasCut.Tests.Docs;

/// <summary>The page on what others made names what is shipped, and nothing else.</summary>
public sealed partial class ThirdPartyTests
{
    private static readonly string[] Shipped =
    [
        .. Directory.EnumerateFiles(Repository.PathOf("src"), "packages.lock.json", SearchOption.AllDirectories)
            .SelectMany(NamesIn).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal),
    ];

    [Fact]
    public void Every_package_that_ships_is_named_with_its_terms_and_no_other()
    {
        var page = Repository.Read("docs/third-party.md");
        var rows = Row().Matches(page).Select(row => (Name: row.Groups[1].Value, Terms: row.Groups[2].Value)).Where(row => row.Name is not ("Library" or ".NET runtime")).ToList();

        Assert.Equal(Shipped, rows.Select(row => row.Name).Order(StringComparer.Ordinal));
        Assert.All(rows, row => Assert.Contains($"\n## {row.Terms.Split(' ')[0]}\n", page, StringComparison.Ordinal));
    }

    private static IEnumerable<string> NamesIn(string lockFile)
    {
        using var json = JsonDocument.Parse(File.ReadAllBytes(lockFile));
        return
        [
            .. json.RootElement.GetProperty("dependencies").EnumerateObject()
                .SelectMany(framework => framework.Value.EnumerateObject())
                .Where(package => package.Value.GetProperty("type").GetString() is "Direct" or "Transitive")
                .Select(package => package.Name),
        ];
    }

    [GeneratedRegex(@"^\| ([^|]+?) \| ([^|]+?) \|", RegexOptions.Multiline)]
    private static partial Regex Row();
}
