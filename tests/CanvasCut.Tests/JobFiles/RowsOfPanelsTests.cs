using CanvasCut.Design;
using CanvasCut.JobFiles;

namespace CanvasCut.Tests.JobFiles;

/// <summary>Panels that share the carrier of another, as they are read.</summary>
public sealed class RowsOfPanelsTests
{
    private const string Text = """
        format = 1
        name = "Rows"

        [top]
        length = "2400 mm"
        width = "2800 mm"

        [carrier]
        border = { forward = "30 mm", aft = "30 mm", port = "10 mm", starboard = "12 mm" }

        [[panel]]
        name = "port"
        length = "600 mm"
        width = "400 mm"
        long_side = "athwart"
        max_wind = "30 kn"
        dead_border = { port = "11 mm", starboard = "13 mm" }

        [[panel]]
        name = "third"
        on = "second"
        length = "300 mm"
        width = "200 mm"
        gap = "35 mm"
        long_side = "fore-aft"

        [[panel]]
        name = "second"
        on = "port"
        length = "500 mm"
        width = "300 mm"
        max_wind = "25 kn"
        thickness = "3 mm"

        [[panel]]
        name = "starboard"
        mirrors = "port"
        """;

    private static readonly TopJob Top = Read(Text);

    private static CarrierJob Job => Assert.Single(Top.Mountings);

    [Fact]
    public void Panels_that_name_a_carrier_or_one_that_lies_on_it_lie_there_in_the_order_of_the_file()
    {
        Assert.Equal(["port", "third", "second"], Job.Panels.Select(panel => panel.Name.Text));
        Assert.Equal([0, 35, 20], Job.Panels.Select(panel => panel.Gap.Millimeters));
        Assert.Equal((RowAxis.Athwart, new MountingName("port")), (Job.Row!.Axis, Job.Row.First));
    }

    [Fact]
    public void A_gap_left_out_is_told_as_a_default_and_so_is_what_only_one_of_them_leaves_out()
    {
        Assert.Contains(Job.Defaults, used => (used.Field, used.Value) == ("panel.gap", "20 mm"));
        Assert.Single(Job.Defaults, used => used.Field == "panel.thickness");
    }

    [Fact]
    public void Jobs_without_a_row_know_nothing_of_gaps() =>
        Assert.DoesNotContain(Sample.Job(Sample.Least).Defaults, used => used.Field is "panel.gap" or "panel.beside");

    [Fact]
    public void The_lowest_wind_of_a_maker_counts_for_all() => Assert.Equal(25, Job.PanelsMaxWind!.Value.Knots, 1e-9);

    /// <summary>600 + 35 + 200 + 20 + 500 across, the deepest of 400, 300 and 300 along; each middle by middle: (400 - 300) / 2.</summary>
    [Fact]
    public void A_row_is_as_long_as_its_panels_and_gaps_and_as_deep_as_the_deepest()
    {
        var row = RowLayout.Of(Job, LongSide.Athwart);

        Assert.Equal((1355.0, 400.0), (row.Athwart.Millimeters, row.ForeAft.Millimeters));
        Assert.Equal([0, 635, 855], row.Seats.Select(seat => seat.FromPort.Millimeters));
        Assert.Equal([0, 50, 50], row.Seats.Select(seat => seat.FromForward.Millimeters));
    }

    [Fact]
    public void Aft_of_each_other_they_are_as_wide_as_the_widest()
    {
        var row = RowLayout.Of(Read(Text.Replace("gap = \"35 mm\"", "beside = \"aft\"", StringComparison.Ordinal)).First, LongSide.Athwart);

        // 400 + 20 + 300 + 20 + 300 along; of 600 wide the second, 200 wide, lies 200 from port, the third, 500 wide, 50.
        Assert.Equal((600.0, 1040.0), (row.Athwart.Millimeters, row.ForeAft.Millimeters));
        Assert.Equal([0, 200, 50], row.Seats.Select(seat => seat.FromPort.Millimeters));
        Assert.Equal([0, 420, 740], row.Seats.Select(seat => Math.Round(seat.FromForward.Millimeters, 6)));
    }

    /// <summary>The ease takes up what the carrier is sewn larger by, half of it to each side: of 1355 mm and borders of 10 and 12 for 2 %.</summary>
    [Fact]
    public void The_pockets_ease_is_that_of_the_whole_carrier()
    {
        var shrinking = Read(Text + "\n[cloth]\nshrink = { warp = \"0 %\", fill = \"2 %\" }\n[mount]\nforward = \"snaps\"\n[pocket]\nover_zipper = false\n").First;
        var grown = (1355 + 22) * ((1 / 0.98) - 1) / 2;

        Assert.Equal(PocketRoom.Least.Millimeters + PocketRoom.InnermostRow(shrinking.Workshop.Sewing).Millimeters + grown, shrinking.Fastenings.Pocket.Ease.Millimeters, 1e-6);
    }

    /// <summary>Mirrored, the last to starboard is the first to port, and a gap stays between the same two.</summary>
    [Fact]
    public void A_twin_mirrors_the_whole_row()
    {
        var twin = Job.Mirrored(LongSide.Athwart, Assert.Single(Top.Twins).Name);

        Assert.Equal(["starboard-second", "starboard-third", "starboard"], twin.Panels.Select(panel => panel.Name.Text));
        Assert.Equal([0, 20, 35], twin.Panels.Select(panel => panel.Gap.Millimeters));
        Assert.Equal([500, 300, 600], twin.Panels.Select(panel => panel.Panel.Body.Length.Millimeters));
        Assert.Equal((13, 11), (twin.Panels[2].Panel.Fittings.DeadBorder.Port.Millimeters, twin.Panels[2].Panel.Fittings.DeadBorder.Starboard.Millimeters));
    }

    [Fact]
    public void A_row_mirrored_twice_is_the_same_again()
    {
        var again = Job.Mirrored(LongSide.Athwart, new("twin")).Mirrored(LongSide.Athwart, Job.Mounting);

        Assert.Equal(RowLayout.Of(Job, LongSide.Athwart).Seats.Select(seat => (seat.Panel, seat.FromPort, seat.FromForward)), RowLayout.Of(again, LongSide.Athwart).Seats.Select(seat => (seat.Panel, seat.FromPort, seat.FromForward)));
    }

    [Fact]
    public void A_row_that_runs_aft_keeps_its_order_in_the_mirror()
    {
        var job = Read(Text.Replace("gap = \"35 mm\"", "beside = \"aft\"", StringComparison.Ordinal)).First;

        Assert.Equal(["twin", "twin-third", "twin-second"], job.Mirrored(LongSide.Athwart, new("twin")).Panels.Select(panel => panel.Name.Text));
    }

    /// <summary>Fits a zipper of 1100 mm at each end of a row of 1377 mm, where one panel of 600 mm has none.</summary>
    [Fact]
    public void Rules_of_the_carrier_see_the_whole_row()
    {
        const string Long = "[zipper]\nsetback = \"320 mm\"\n";

        var meant = Text.Replace("format = 1", "format = 1\naccept_unusual = [\"zipper.setback\"]", StringComparison.Ordinal);

        Assert.True(JobFile.Read(meant + "\n" + Long, "job.toml").IsValid);
        Assert.Contains("CC120", Sample.Problems(meant.Replace("on = \"second\"", "#", StringComparison.Ordinal).Replace("on = \"port\"", "#", StringComparison.Ordinal).Replace("gap = \"35 mm\"", "#", StringComparison.Ordinal) + "\n" + Long), StringComparison.Ordinal);
    }

    [Fact]
    public void A_cable_exit_of_a_panel_on_anothers_carrier_may_lie_in_the_border()
    {
        const string Exit = "thickness = \"3 mm\"\ncable_exit = { from_port = \"250 mm\", from_forward = \"-20 mm\", diameter = \"8 mm\" }";

        Assert.True(JobFile.Read(Text.Replace("thickness = \"3 mm\"", Exit, StringComparison.Ordinal), "job.toml").IsValid);
        Assert.Contains("CC118", Sample.Problems(Text.Replace("thickness = \"3 mm\"", Exit.Replace("-20", "-40", StringComparison.Ordinal), StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    private static TopJob Read(string text)
    {
        var top = JobFile.Read(text, "job.toml");
        Assert.True(top.IsValid, string.Join('\n', top.Problems));
        return top.Value;
    }
}
