using CanvasCut.JobFiles;

namespace CanvasCut.Tests.JobFiles;

/// <summary>Measures that are lengths and within the usual, and still cannot be meant.</summary>
public sealed class SlipsThatPassTests
{
    /// <summary>The top is 1800 mm wide; 15 % off is 1530 to 2070 mm. A flat bow is as long as its chord.</summary>
    [Theory]
    [InlineData("girth = \"1520 mm\"\nchord = \"1510 mm\"", "girth")]
    [InlineData("girth = \"2080 mm\"\nchord = \"2060 mm\"", "girth")]
    [InlineData("chord = \"1500 mm\"\ncrown = \"0 mm\"", "chord")]
    [InlineData("girth = \"1800 mm\"\nchord = \"1390 mm\"", "chord")]
    public void A_bow_that_is_far_from_as_wide_as_the_top_is_questioned(string bow, string field)
    {
        var text = $"{Sample.Least}[[top.bow]]\nstation = \"100 mm\"\n{bow}\n";

        Assert.Contains($"CC132: top.bow[1].{field}: ", Assert.Single(Sample.Problems(text).Split('\n', StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        Assert.Single(Sample.Job($"accept_unusual = [\"top.bow[1].{field}\"]\n{text}").Top.Bows);
    }

    [Theory]
    [InlineData("girth = \"1540 mm\"\nchord = \"1530 mm\"")]
    [InlineData("girth = \"2060 mm\"\nchord = \"2040 mm\"")]
    [InlineData("chord = \"1700 mm\"\ncrown = \"140 mm\"")]
    [InlineData("girth = \"1800 mm\"\ncrown = \"400 mm\"")]
    public void A_bow_that_is_about_as_wide_as_the_top_is_not(string bow) =>
        Assert.Single(Sample.Job($"{Sample.Least}[[top.bow]]\nstation = \"100 mm\"\n{bow}\n").Top.Bows);

    /// <summary>On 2000 mm: 1900, 1000, 60 from the aft edge are 100, 1000, 1940 from the forward edge.</summary>
    [Fact]
    public void Stations_from_the_aft_edge_are_told_of_with_what_they_would_be()
    {
        var problem = Assert.Single(Sample.Problems($"{Sample.Least}{Bow("1900 mm")}{Bow("1000 mm")}{Bow("60 mm")}").Split('\n', StringSplitOptions.RemoveEmptyEntries));

        Assert.Contains("CC113: top.bow[2].station: ", problem, StringComparison.Ordinal);
        Assert.Contains("from the aft edge? Then the stations are 100 mm (3 15/16 in); 1000 mm (39 3/8 in); 1940 mm (76 3/8 in).", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void One_station_from_the_aft_edge_is_told_of_where_it_would_be_in_order()
    {
        Assert.Contains("Or is it measured from the aft edge? Then it is 1940 mm", Sample.Problems($"{Sample.Least}{Bow("100 mm")}{Bow("1000 mm")}{Bow("60 mm")}"), StringComparison.Ordinal);
        Assert.DoesNotContain("from the aft edge?", Sample.Problems($"{Sample.Least}{Bow("100 mm")}{Bow("1500 mm")}{Bow("1200 mm")}"), StringComparison.Ordinal);
    }

    /// <summary>On 2000 mm by 1800 mm: 300 to 100 from the aft edge is 1700 to 1900; 400 to -50 with port positive is -400 to 50.</summary>
    [Fact]
    public void Limits_of_a_mirrored_place_are_told_of_with_what_they_would_be()
    {
        var problems = Sample.Problems($"{Sample.Least}[[top.keep_out]]\nname = \"a\"\nstation = [\"300 mm\", \"100 mm\"]\noffset = [\"400 mm\", \"-50 mm\"]\n");

        Assert.Contains("Or is it measured from the aft edge? Then it is 1700 mm (66 15/16 in) to 1900 mm (74 13/16 in).", problems, StringComparison.Ordinal);
        Assert.Contains("Or is port measured as positive? Then it is -400 mm (-15 3/4 in) to 50 mm (1 15/16 in).", problems, StringComparison.Ordinal);
    }

    [Fact]
    public void In_a_measures_file_too() => Assert.Contains(
        MeasuresFile.Read("format = 2\nname = \"a\"\n[top]\nlength = \"2 m\"\n[[bow]]\nchord = \"1 m\"\nstation = \"1900 mm\"\n[[bow]]\nchord = \"1 m\"\nstation = \"100 mm\"\nport = \"1.8 m\"\nstarboard = \"1.8 m\"\ndiagonal_from_port = \"2 m\"\n", "m.toml").Problems,
        problem => problem.Message.Contains("Then the stations are 100 mm (3 15/16 in); 1900 mm", StringComparison.Ordinal));

    private static string Bow(string station) => $"[[top.bow]]\nstation = \"{station}\"\n";
}
