using System.Reflection;
using System.Text.RegularExpressions;
using CanvasCut.JobFiles;

namespace CanvasCut.Tests.JobFiles;

/// <summary>The documentation says what the code does.</summary>
public sealed partial class DocumentationTests
{
    private static readonly string JobFileText = Repository.Read("docs/job-file.md");
    private static readonly string ProblemsText = Repository.Read("docs/problems.md");

    private static readonly string ApprovedProblems = string.Concat(
        Directory.EnumerateFiles(Repository.PathOf("patterns/invalid"), "expected.txt", SearchOption.AllDirectories).Select(File.ReadAllText));

    public static TheoryData<string> Fields { get; } = new(JobFields.All.Select(field => field.Name));

    public static TheoryData<string> Codes { get; } = new(
        typeof(ProblemCode).GetFields(BindingFlags.Public | BindingFlags.Static).Select(code => (string)code.GetRawConstantValue()!));

    [Theory]
    [MemberData(nameof(Fields))]
    public void A_field_is_documented_with_its_range_default_and_source(string name)
    {
        var field = Assert.Single(JobFields.All, field => field.Name == name);
        var line = Assert.Single(JobFileText.Split('\n'), line => line.StartsWith($"| `{name}` |", StringComparison.Ordinal));

        var cells = line.Split(" | ");
        Assert.Equal(field.Usual.Length > 0 ? field.Usual : "any", cells[2]);
        Assert.Equal(DefaultOf(field), cells[3]);
        Assert.Equal(field.Default?.Source ?? "-", cells[4]);
        Assert.All(field.Words, word => Assert.Contains($"\"{word}\"", cells[1], StringComparison.Ordinal));
    }

    [Fact]
    public void No_field_is_documented_that_is_not_known() =>
        Assert.Equal(
            JobFields.All.Select(field => field.Name),
            FieldRow().Matches(JobFileText).Select(match => match.Groups[1].Value));

    [Theory]
    [MemberData(nameof(Codes))]
    public void A_code_is_documented_with_an_example_from_an_approved_file(string code)
    {
        var section = Regex.Match(ProblemsText, $"^## {code}: .*?```\n(.*?)\n```.*?What to do: ", RegexOptions.Multiline | RegexOptions.Singleline);

        Assert.True(section.Success);
        Assert.Contains($": {code}: ", section.Groups[1].Value, StringComparison.Ordinal);
        Assert.Contains(section.Groups[1].Value + "\n", ApprovedProblems, StringComparison.Ordinal);
    }

    [Fact]
    public void The_example_of_the_documentation_is_a_job()
    {
        var example = TomlBlock().Match(JobFileText).Groups[1].Value;

        var job = Sample.Job(example);

        Assert.Equal(3, job.Top.Bows.Count(bow => bow.Across is not null));
        Assert.Equal(1054.1, job.Panel.Body.Length.Millimeters);
    }

    private static string DefaultOf(JobField field) => field.Default switch
    {
        null => field.IsRequired ? "required" : "none",
        (var text, var imperial, _) when imperial != text => $"`{text}`; `{imperial}` with prints = \"imperial\"",
        (var text, _, _) => $"`{text}`",
    };

    [GeneratedRegex(@"^\| `([^`]+)` \|", RegexOptions.Multiline)]
    private static partial Regex FieldRow();

    [GeneratedRegex("```toml\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex TomlBlock();
}
