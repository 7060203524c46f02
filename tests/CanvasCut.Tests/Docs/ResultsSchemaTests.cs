using System.Text.Json;
using System.Text.Json.Nodes;
using CanvasCut.Job;
using CanvasCut.Tests.Job;
using Json.Schema;

namespace CanvasCut.Tests.Docs;

/// <summary>docs/results.schema.json is what the types of results.json say, and an independent validator finds every example valid by it.</summary>
public sealed class ResultsSchemaTests
{
    private const string File = "docs/results.schema.json";

    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true, NewLine = "\n" };
    private static readonly Lazy<JsonSchema> Schema = new(() => JsonSchema.FromText(Repository.Read(File)));

    [Fact]
    public void The_schema_is_that_of_the_types() => Golden.Matches(File, ResultsSchema.Whole().ToJsonString(Indented) + "\n");

    [Theory]
    [MemberData(nameof(ExampleTests.Examples), MemberType = typeof(ExampleTests))]
    public void Every_example_is_valid(string example) => AssertValid(WrittenExamples.Text(example, "de"));

    [Fact]
    public void What_check_prints_is_valid() => AssertValid(ResultsJson.OfChecks(ExampleTests.OutcomeOf("two-bow-small-top")));

    /// <summary>The validator finds what is wrong, so that what it finds valid is.</summary>
    [Theory]
    [InlineData("format", "\"canvascut-results-1\"")]
    [InlineData("failed", "\"no\"")]
    [InlineData("files", "[1]")]
    [InlineData("mountings", "[{}]")]
    [InlineData("cost", "7")]
    public void What_is_wrong_is_found(string name, string value)
    {
        var results = JsonNode.Parse(WrittenExamples.Text("two-bow-small-top", "en"))!;
        results[name] = JsonNode.Parse(value);

        Assert.False(IsValid(results.ToJsonString(), out _));
    }

    private static void AssertValid(string text) => Assert.True(IsValid(text, out var why), why);

    private static bool IsValid(string text, out string why)
    {
        using var json = JsonDocument.Parse(text);
        var result = Schema.Value.Evaluate(json.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        why = string.Join('\n', (result.Details ?? []).Where(detail => detail.Errors is not null).SelectMany(detail => detail.Errors!.Select(error => $"{detail.InstanceLocation}: {error.Value}")));
        return result.IsValid;
    }
}
