using System.Text;
using System.Text.RegularExpressions;
using CanvasCut.JobFiles;

namespace CanvasCut.Tests.JobFiles;

/// <summary>Whatever the text, there is a job or at least one problem, and never an exception.</summary>
public sealed partial class AnyTextTests
{
    private static readonly string[] Files =
    [
        Sample.Least,
        Sample.Everything,
        .. Directory.EnumerateFiles(Repository.PathOf("patterns/invalid"), "job.toml", SearchOption.AllDirectories)
            .Order(StringComparer.Ordinal).Select(File.ReadAllText),
    ];

    private static readonly Gen<(int At, int Length, string Text)> Change = Gen.Select(
        Gen.Int[0, 5000],
        Gen.Int[0, 12],
        Gen.OneOf(Gen.Const(string.Empty), Gen.String[Gen.Char["[]{}=\"'\n\r.,#-0159e mintf½\\_\u0000\ud800"], 0, 8], OneOf(["[[top.bow]]\n", "= \"1 in\"\n", "\"\"\"", "[top]\n", "-1", "nan", "1e400 mm"])));

    [Fact]
    public void A_mutated_file_is_a_job_or_has_problems() =>
        Gen.Select(OneOf(Files), Change.List[1, 6]).Sample(
            (text, changes) => Answers(changes.Aggregate(text, Changed)),
            iter: 4000);

    [Fact]
    public void Any_text_at_all_has_an_answer() => Gen.String.Sample(Answers, iter: 2000);

    [Theory]
    [InlineData('[')]
    [InlineData('{')]
    [InlineData('"')]
    [InlineData('a')]
    public void A_flood_of_one_sign_has_an_answer(char sign)
    {
        Assert.True(Answers($"a = {new string(sign, 1900)}"));
        Assert.True(Answers($"a = {new string(sign, 100_000)}"));
    }

    [Theory]
    [InlineData("a = [", 1900)]
    [InlineData("x = 1 mm\n", 5000)]
    [InlineData("[[top.bow]]\n", 900)]
    public void A_flood_of_one_line_has_an_answer(string line, int times) =>
        Assert.True(Answers(string.Concat(Enumerable.Repeat(line, times))));

    /// <summary>With every unusual value accepted, extreme ones reach the rules and the arcs.</summary>
    [Fact]
    public void Extreme_values_have_an_answer()
    {
        var accepted = string.Join(", ", JobFields.All.Select(field => $"\"{field.Name.Replace("[]", "[2]", StringComparison.Ordinal)}\""));
        var text = Value().Replace(Sample.Everything, match => match.Value == "[\"pocket.leg\", \"top.bow[2].diameter\"]" ? $"[{accepted}]" : match.Value);
        Assert.Empty(Sample.Job(text).Defaults);
        var places = Value().Matches(text).Where(match => !match.Value.Contains(accepted, StringComparison.Ordinal)).ToList();

        Gen.Select(Gen.Int[0, places.Count - 1], Gen.Int[0, Extremes.Length - 1]).Array[1, 3].Sample(
            picks => Answers(picks.OrderByDescending(pick => pick.Item1).DistinctBy(pick => pick.Item1).Aggregate(
                text,
                (changed, pick) => changed[..places[pick.Item1].Index] + Extremes[pick.Item2] + changed[(places[pick.Item1].Index + places[pick.Item1].Length)..])),
            iter: 4000);
    }

    private static string[] Extremes { get; } =
    [
        "\"0 mm\"", "\"0.000000001 mm\"", "\"-1 mm\"", "\"1 mm\"", "\"999 m\"", "\"-999 m\"", "\"1000 mm\"", "\"1900 mm\"", "\"0 %\"", "\"9.9 %\"",
        "0", "-1", "1", "1000", "9223372036854775807", "1e308", "inf", "nan", "true", "[]", "{}", "\"\"", "1979-05-27", "[\"0 mm\", \"0 mm\"]", "\"roll 1 mm\"",
    ];

    private static Gen<string> OneOf(string[] texts) => Gen.Int[0, texts.Length - 1].Select(index => texts[index]);

    private static bool Answers(string text)
    {
        var job = JobFile.Read(text, "job.toml");
        return job.IsValid ? job.Problems.IsEmpty : job.Problems.Length > 0 && InOrder(job.Problems);
    }

    private static bool InOrder(IReadOnlyList<CanvasCut.Design.Problem> problems) =>
        problems.Zip(problems.Skip(1)).All(pair =>
            (pair.First.Place.Line, pair.First.Place.Column).CompareTo((pair.Second.Place.Line, pair.Second.Place.Column)) <= 0);

    private static string Changed(string text, (int At, int Length, string Text) change)
    {
        var at = change.At % (text.Length + 1);
        return new StringBuilder(text).Remove(at, Math.Min(change.Length, text.Length - at)).Insert(at, change.Text).ToString();
    }

    [GeneratedRegex("(?<== )(\"(\\\\.|[^\"\\\\])*\"|\\[[^\n]*\\]|[a-z0-9.]+)")]
    private static partial Regex Value();
}
