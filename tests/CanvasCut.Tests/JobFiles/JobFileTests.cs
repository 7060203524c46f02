using CanvasCut.Design;

namespace CanvasCut.Tests.JobFiles;

public sealed class JobFileTests
{
    [Fact]
    public void The_least_file_is_a_job_with_every_default_told()
    {
        var job = Sample.Job(Sample.Least);

        Golden.Matches(
            "tests/CanvasCut.Tests/JobFiles/least-defaults.txt",
            string.Concat(job.Defaults.Select(used => $"{used.Field} = {used.Value} ({used.Source})\n")));
    }

    [Fact]
    public void What_has_no_default_is_unknown()
    {
        var job = Sample.Job(Sample.Least);

        Assert.Null(job.Panel.Body.Mass);
        Assert.Null(job.Panel.LongSide);
        Assert.Null(job.Panel.Fittings.JunctionBox);
        Assert.Null(job.Panel.Limits.MinBendRadius);
        Assert.Null(job.Carrier.Position);
        Assert.Null(job.Fastenings.Pocket.Leg);
        Assert.Empty(job.Top.Bows);
    }

    [Fact]
    public void Inches_alone_change_the_paper_and_the_step_of_the_order()
    {
        var job = Sample.Job("prints = \"imperial\"\n" + Sample.Least);

        Assert.Equal(("Letter", 228.6), (job.Workshop.Paper.Name, job.Workshop.Cloth.Roll.OrderStep.Millimeters));
        Assert.Contains(new("cloth.order_step", "1/4 yd", "common practice, no source"), job.Defaults);
    }

    [Fact]
    public void One_border_counts_for_every_side() =>
        Assert.Equal(
            new(Mm(20), Mm(20), Mm(20), Mm(20)),
            Sample.Job(Sample.Least + "[carrier]\nborder = \"20 mm\"\n").Carrier.Border);

    [Fact]
    public void Sides_left_out_of_a_border_take_their_defaults()
    {
        var job = Sample.Job(Sample.Least + "[carrier]\nborder = { port = \"20 mm\" }\n");

        Assert.Equal(new(Mm(12.7), Mm(12.7), Mm(20), Mm(0)), job.Carrier.Border);
        Assert.Equal(
            ["carrier.border.forward", "carrier.border.aft", "carrier.border.starboard"],
            job.Defaults.Select(used => used.Field).Where(field => field.StartsWith("carrier.border", StringComparison.Ordinal)));
    }

    [Fact]
    public void Half_a_hem_takes_the_other_half_by_default() =>
        Assert.Equal(new Hem(Mm(12.7), Mm(40)), Sample.Job(Sample.Least + "[carrier]\nhem.width = \"40 mm\"\n").Carrier.Hem);

    [Fact]
    public void No_weather_strip_is_an_empty_list() =>
        Assert.Empty(Sample.Job(Sample.Least + "[weather_strip]\nedges = []\n").Fastenings.WeatherStrip.Edges);

    [Fact]
    public void An_unusual_length_that_is_meant_is_taken() =>
        Assert.Equal(Mm(35), Sample.Job("accept_unusual = [\"panel.thickness\"]\n" + Sample.Least + "thickness = \"35 mm\"\n").Panel.Body.Thickness);

    [Fact]
    public void What_cannot_be_is_not_taken_even_when_it_is_said_to_be_meant() =>
        Assert.Equal(
            "job.toml(10,13): CC109: panel.thickness: must be above zero.\n",
            Sample.Problems("accept_unusual = [\"panel.thickness\"]\n" + Sample.Least + "thickness = \"0 mm\"\n"));

    [Fact]
    public void A_bow_without_measures_has_no_arc() => Assert.Null(Bow(string.Empty).Across);

    [Fact]
    public void A_crown_of_zero_is_a_flat_bow()
    {
        Assert.Equal(1700, Bow("chord = \"1700 mm\"\ncrown = \"0 mm\"\n").Across!.GirthMm);
        Assert.Equal(1700, Bow("girth = \"1700 mm\"\ncrown = \"0 mm\"\n").Across!.ChordMm);
        Assert.Equal(0, Bow("girth = \"1700 mm\"\nchord = \"1700 mm\"\n").Across!.RiseMm);
    }

    /// <summary>A half circle on a chord of 1 m: the crown is half the chord and the girth half the circumference.</summary>
    [Fact]
    public void Any_two_measures_give_the_same_arc()
    {
        Assert.Equal(1570.796, Bow("chord = \"1 m\"\ncrown = \"500 mm\"\n").Across!.GirthMm, tolerance: 0.001);
        Assert.Equal(500, Bow("girth = \"1570.796 mm\"\nchord = \"1 m\"\n").Across!.RiseMm, tolerance: 0.001);
        Assert.Equal(1000, Bow("girth = \"1570.797 mm\"\ncrown = \"500 mm\"\n").Across!.ChordMm, tolerance: 0.1);
    }

    [Fact]
    public void A_girth_within_the_error_of_a_tape_fits_chord_and_crown() =>
        Assert.NotNull(Bow("girth = \"1732.5 mm\"\nchord = \"1700 mm\"\ncrown = \"150 mm\"\n").Across);

    private static Bow Bow(string measures) =>
        Assert.Single(Sample.Job(Sample.Least + "[[top.bow]]\nstation = \"500 mm\"\n" + measures).Top.Bows);

    private static UnitsNet.Length Mm(double mm) => UnitsNet.Length.FromMillimeters(mm);
}
