using System.Text;
using CanvasCut.JobFiles;

namespace CanvasCut.Tests.JobFiles;

/// <summary>Whatever the text, there is a job or at least one problem, and never an exception.</summary>
public sealed class AnyTextTests
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
        Assert.True(Answers(string.Concat(Enumerable.Repeat("a = [", 1900))));
        Assert.True(Answers(string.Concat(Enumerable.Repeat("x = 1 mm\n", 10_000))));
    }

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
}
