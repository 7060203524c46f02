using CanvasCut.Checks;

namespace CanvasCut.Tests.Docs;

/// <summary>Holds docs/checks.md to what the program checks.</summary>
public sealed class ChecksDocumentTests
{
    private static readonly string[] Lines = Repository.Read("docs/checks.md").Split('\n');

    private static readonly string[] Told = ["Compares", "Formula", "Limit", "Source", "Verdicts", "What to do"];

    public static TheoryData<string> Codes { get; } = new(CheckCodes.All);

    [Fact]
    public void Every_check_has_an_entry_in_the_order_of_the_report() =>
        Assert.Equal(CheckCodes.All, Lines.Where(line => line.StartsWith("### ", StringComparison.Ordinal)).Select(line => line[4..].Trim('`', ' ')));

    [Theory]
    [MemberData(nameof(Codes))]
    public void An_entry_tells_all_that_a_reader_asks(string code)
    {
        var entry = Lines
            .SkipWhile(line => line != $"### `{code}`")
            .Skip(1)
            .TakeWhile(line => !line.StartsWith('#'))
            .ToList();

        Assert.All(Told, word => Assert.Contains(entry, line => line.StartsWith($"- **{word}:** ", StringComparison.Ordinal)));
    }

    [Fact]
    public void What_is_not_checked_is_listed_word_for_word() =>
        Assert.All(JobChecks.NotInThisVersion, item => Assert.Contains($"- {item}", Lines));
}
