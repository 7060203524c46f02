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

        Assert.Equal(new(Mm(25.4), Mm(25.4), Mm(20), Mm(25.4)), job.Carrier.Border);
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

    /// <summary>250 mm less 10 mm at both edges.</summary>
    [Fact]
    public void A_plotters_roll_must_hold_the_test_squares() =>
        Assert.Equal(
            "job.toml(11,14): CC125: plot.roll_width: leaves 230 mm (9 1/16 in) to draw between the margins; at least 240 mm (9 7/16 in) are needed.\n",
            Sample.Problems("accept_unusual = [\"plot.roll_width\"]\n" + Sample.Least + "[plot]\nroll_width = \"250 mm\"\n"));

    [Fact]
    public void An_unusual_length_that_is_meant_is_taken() =>
        Assert.Equal(Mm(35), Sample.Job("accept_unusual = [\"panel.thickness\"]\n" + Sample.Least + "thickness = \"35 mm\"\n").Panel.Body.Thickness);

    [Fact]
    public void What_cannot_be_is_not_taken_even_when_it_is_said_to_be_meant() =>
        Assert.Equal(
            "job.toml(10,13): CC109: panel.thickness: must be above zero.\n",
            Sample.Problems("accept_unusual = [\"panel.thickness\"]\n" + Sample.Least + "thickness = \"0 mm\"\n"));

    [Fact]
    public void Line_ends_and_a_byte_order_mark_of_another_system_change_nothing()
    {
        var elsewhere = "\uFEFF" + Sample.Least.ReplaceLineEndings("\r\n");

        Assert.Equal(Sample.Job(Sample.Least).Panel, Sample.Job(elsewhere).Panel);
        Assert.Equal(
            "job.toml(9,13): CC106: panel.thickness: needs a unit, such as \"1040 mm\" (in quotes).\n",
            Sample.Problems(elsewhere + "thickness = 3\r\n"));
    }

    [Theory]
    [InlineData("A4", 210, 297)]
    [InlineData("a3", 297, 420)]
    [InlineData("A0", 841, 1189)]
    [InlineData("Letter", 215.9, 279.4)]
    [InlineData("Tabloid", 279.4, 431.8)]
    [InlineData("Arch E", 914.4, 1219.2)]
    [InlineData("roll 24 in", 609.6, 5000)]
    public void Papers_have_their_standard_sizes(string name, double width, double height)
    {
        var paper = Sample.Job(Sample.Least + $"[paper]\nsize = \"{name}\"\n").Workshop.Paper;

        Assert.Equal((width, height), (paper.Width.Millimeters, paper.Height.Millimeters));
    }

    /// <summary>A knot is 1852 m an hour, a mile 1609.344 m, a pound 0.45359237 kg, all by definition.</summary>
    [Theory]
    [InlineData("36 kn", 18.52)]
    [InlineData("20 m/s", 20)]
    [InlineData("45 mph", 20.1168)]
    [InlineData("72 km/h", 20)]
    public void Winds_are_read_in_the_units_sailors_use(string text, double metresPerSecond) =>
        Assert.Equal(metresPerSecond, Sample.Job(Sample.Least + $"max_wind = \"{text}\"\n").Panel.Limits.MaxWind!.Value.MetersPerSecond, tolerance: 1e-9);

    [Theory]
    [InlineData("2.3 kg", 2.3)]
    [InlineData("2300 g", 2.3)]
    [InlineData("5 lb", 2.26796185)]
    [InlineData("80 oz", 2.26796185)]
    public void A_mass_is_read_from_any_scale(string text, double kilograms) =>
        Assert.Equal(kilograms, Sample.Job(Sample.Least + $"mass = \"{text}\"\n").Panel.Body.Mass!.Value.Kilograms, tolerance: 1e-9);

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
        Assert.Single(Sample.Job("accept_unusual = [\"top.bow[1].chord\", \"top.bow[1].girth\"]\n" + Sample.Least + "[[top.bow]]\nstation = \"500 mm\"\n" + measures).Top.Bows);

    private static UnitsNet.Length Mm(double mm) => UnitsNet.Length.FromMillimeters(mm);
}
