using CanvasCut.JobFiles;
using CanvasCut.Measuring;

namespace CanvasCut.Tests.Measuring;

/// <summary>Stations on the centreline from the forward edge, heights of the tube's middle: as the job has them.</summary>
public sealed class DatumTests
{
    /// <summary>
    /// 3-4-5: edges of 500 mm between heights of 0 and 300 mm are 400 mm apart on the level. The middles lie 500 mm apart in
    /// space, and bow 1 lies 50 mm aft of the forward edge: 550 mm. With a sag of 50 mm the way is an arc of chord 500 and rise
    /// 50: R = 500²/400 + 25 = 650, 4R·atan(2·50/500) = 2600 × 0.1973956 = 513.2 mm, so 563.2 mm.
    /// </summary>
    [Theory]
    [InlineData("", 550)]
    [InlineData("sag_aft = \"50 mm\"\n", 563.2285)]
    public void A_station_runs_along_the_cloth_from_the_forward_edge(string sag, double expectedMm)
    {
        var adjustment = Adjusted($"[[bow]]\nchord = \"1 m\"\ncrown = \"0 mm\"\nheight = \"0 mm\"\nstation = \"50 mm\"\n{sag}[[bow]]\nchord = \"1 m\"\ncrown = \"0 mm\"\nheight = \"300 mm\"\nport = \"500 mm\"\nstarboard = \"500 mm\"\ndiagonal_from_port = \"1118.034 mm\"\n");

        Assert.Equal(50, adjustment.Stations[0]!.Value.Millimeters, 1e-6);
        Assert.Equal(expectedMm, adjustment.Stations[1]!.Value.Millimeters, 1e-3);
        Assert.Equal(400, adjustment.Ends[1].PortStation.Millimeters, 1e-3);
    }

    /// <summary>A bow's ends lie half a tube above its middle and a crown below that: 100 + 12.5 - 80 = 32.5 mm.</summary>
    [Fact]
    public void Heights_are_of_the_tubes_middle_and_in_the_old_format_of_the_ends()
    {
        const string Rest = "diameter = \"25 mm\"\nchord = \"1 m\"\ncrown = \"80 mm\"\n[[bow]]\nchord = \"1 m\"\nport = \"500 mm\"\nstarboard = \"500 mm\"\ndiagonal_from_port = \"1118 mm\"\n";
        var middle = MeasuresFile.Read($"format = 2\nname = \"a\"\n[[bow]]\nheight = \"100 mm\"\n{Rest}", "m.toml").Value!.Bows[0];
        var ends = MeasuresFile.Read($"format = 1\nname = \"a\"\n[[bow]]\nheight = \"32.5 mm\"\n{Rest}", "m.toml").Value!.Bows[0];

        Assert.Equal((32.5, 32.5), (middle.Height.Millimeters, ends.Height.Millimeters));
        Assert.Equal((100.0, 100.0), (middle.Middle.Height!.Value.Millimeters, ends.Middle.Height!.Value.Millimeters));
        Assert.Equal((112.5, 112.5), (middle.Middle.Cloth!.Value.Millimeters, ends.Middle.Cloth!.Value.Millimeters));
    }

    /// <summary>A slip of 12 mm in a station read twice shows: eight times the tape.</summary>
    [Fact]
    public void A_slip_on_the_centreline_is_named()
    {
        var text = Repository.Read("patterns/measured-top/measures.toml").Replace("2038 mm", "2028 mm", StringComparison.Ordinal);
        var adjustment = MeasureAdjustment.Of(MeasuresFile.Read(text.Replace("\"985 mm\"", "\"997 mm\"", StringComparison.Ordinal), "m.toml").Value!);

        Assert.Equal("middle bow, station on the centreline, reading 2", MeasureWords.Of(adjustment.Top, Assert.Single(adjustment.Suspects)));
    }

    /// <summary>The slip alone makes diagonals of 2 m differ; of that nothing is said until it is mended.</summary>
    [Fact]
    public void Out_of_square_is_said_only_of_readings_that_agree()
    {
        var text = Repository.Read("patterns/measured-top/measures.toml");
        var (wrong, right) = (Verdict(text), Verdict(text.Replace("2038 mm", "2028 mm", StringComparison.Ordinal)));

        Assert.Contains("Most likely wrong", wrong[0], StringComparison.Ordinal);
        Assert.Equal("Whether the frame is square shows only once the measures agree.", wrong[1]);
        Assert.DoesNotContain(wrong, line => line.Contains("out of square", StringComparison.Ordinal));
        Assert.Contains(right, line => line.Contains("out of square", StringComparison.Ordinal));

        static IReadOnlyList<string> Verdict(string text) => MeasureVerdict.Of(MeasureAdjustment.Of(MeasuresFile.Read(text, "m.toml").Value!));
    }

    [Fact]
    public void An_edge_without_a_tube_is_station_0_and_no_bow_of_the_job()
    {
        var top = JobTop.Of(Adjusted("[[bow]]\ndiameter = \"0 mm\"\nchord = \"1 m\"\n[[bow]]\nname = \"the bow\"\nchord = \"40 in\"\nport = \"500 mm\"\nstarboard = \"500 mm\"\ndiagonal_from_port = \"1118 mm\"\n"));

        var bow = Assert.Single(top.Bows);
        Assert.Equal("the bow", bow.Name);
        Assert.Equal(["station", "chord"], bow.Figures.Select(figure => figure.Field));
        Assert.EndsWith(" in", bow.Figures[1].Value, StringComparison.Ordinal);
    }

    /// <summary>Without its crown a bow's ends cannot be told from its middle's height.</summary>
    [Fact]
    public void A_height_without_a_crown_is_asked_about()
    {
        var problems = MeasuresFile.Read("format = 2\nname = \"a\"\n[[bow]]\nheight = \"1 m\"\nchord = \"1 m\"\n[[bow]]\nchord = \"1 m\"\nport = \"500 mm\"\nstarboard = \"500 mm\"\ndiagonal_from_port = \"1118 mm\"\n", "m.toml").Problems;

        Assert.Equal((ProblemCode.Missing, "bow[1].crown"), (Assert.Single(problems).Code, problems[0].Place.Field));
    }

    private static MeasureAdjustment Adjusted(string rest)
    {
        var top = MeasuresFile.Read("format = 2\nname = \"a\"\n" + rest, "m.toml");
        Assert.True(top.IsValid, string.Join('\n', top.Problems));
        return MeasureAdjustment.Of(top.Value);
    }
}
