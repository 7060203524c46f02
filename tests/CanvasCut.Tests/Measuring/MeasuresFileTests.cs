using System.Text.RegularExpressions;
using CanvasCut.JobFiles;
using CanvasCut.Measuring;

namespace CanvasCut.Tests.Measuring;

public sealed partial class MeasuresFileTests
{
    private static readonly string Example = Repository.Read("patterns/measured-top/measures.toml");

    [Fact]
    public void The_examples_slip_is_named_and_without_it_all_agree()
    {
        var wrong = MeasureAdjustment.Of(MeasuresFile.Read(Example, "measures.toml").Value!);
        var right = MeasureAdjustment.Of(MeasuresFile.Read(Example.Replace("2038 mm", "2028 mm", StringComparison.Ordinal), "measures.toml").Value!);

        Assert.Equal("middle bow, diagonal from starboard, reading 2", MeasureWords.Of(wrong.Top, Assert.Single(wrong.Suspects)));
        Assert.True(right.Agrees);
    }

    [Fact]
    public void One_reading_may_stand_without_brackets_and_a_bow_without_a_name()
    {
        var top = MeasuresFile.Read(
            "format = 1\nname = \"a\"\n[[bow]]\nchord = \"1 m\"\n[[bow]]\nchord = \"1 m\"\nport = \"20 in\"\nstarboard = [\"20 in\"]\ndiagonal_from_port = \"44 in\"",
            "measures.toml").Value!;

        Assert.Equal(508, top.Measures[2].Readings[0].Millimeters, 1e-9);
        Assert.Equal("bow 2", top.Bows[1].Name);
        Assert.Equal(1.5, top.Tape.Millimeters);
    }

    [Fact]
    public void The_documentation_shows_the_example() => Assert.Contains(Example, Repository.Read("docs/measuring.md"), StringComparison.Ordinal);

    /// <summary>Every field of the documentation's table is known: written as a whole number, none is called unknown.</summary>
    [Fact]
    public void Every_documented_field_is_known_and_every_known_one_documented()
    {
        var documented = FieldRow().Matches(Repository.Read("docs/measuring.md")).Select(match => match.Groups[1].Value).ToList();
        var lists = MeasuresFile.Read("nothing = 1\n[top]\nnothing = 1\n[[bow]]\nnothing = 1\n[overall]\nnothing = 1", "measures.toml").Problems.Where(problem => problem.Code == ProblemCode.UnknownField).Select(problem => problem.Message[(problem.Message.IndexOf("known are ", StringComparison.Ordinal) + 10)..].TrimEnd('.').Split(", "));

        Assert.Equal(
            [.. documented.Select(name => name.Split('.')[0].TrimEnd('[', ']')).Distinct(), .. InTable("top."), .. InTable("bow[]."), .. InTable("overall.")],
            lists.SelectMany(names => names));

        IEnumerable<string> InTable(string table) => documented.Where(name => name.StartsWith(table, StringComparison.Ordinal)).Select(name => name[table.Length..]);
    }

    [Fact]
    public void No_text_stops_the_reader() => Gen.Select(Gen.Int[0, Example.Length - 1], Gen.Char[" \"[]{}=#.,-a1\n\\"]).Sample(
        (at, character) =>
        {
            var read = MeasuresFile.Read(Example.Remove(at, 1).Insert(at, character.ToString()), "measures.toml");
            return read.IsValid ? MeasureAdjustment.Of(read.Value).Readings.Length > 20 : read.Problems.Length > 0;
        },
        iter: 300);

    [GeneratedRegex(@"^\| `([a-z_.\[\]]+)` \|", RegexOptions.Multiline)]
    private static partial Regex FieldRow();
}
