using CanvasCut.Design;
using CanvasCut.JobFiles;

namespace CanvasCut.Tests.JobFiles;

/// <summary>A list of panels: what they share, what each has of its own, and what stands in for another.</summary>
public sealed class SeveralPanelsTests
{
    private const string Text = """
        format = 1
        name = "Two and a half"
        copies = 3
        accept_unusual = ["panel[1].thickness"]

        [top]
        length = "2400 mm"
        width = "2800 mm"

        [carrier]
        border = "30 mm"
        hem.width = "1 in"

        [zipper]
        setback = "40 mm"

        [[panel]]
        name = "port"
        length = "900 mm"
        width = "500 mm"
        long_side = "athwart"
        thickness = "40 mm"
        dead_border = { port = "11 mm", starboard = "13 mm" }
        junction_box = { from_port = "100 mm", from_forward = "20 mm", athwart = "80 mm", fore_aft = "60 mm", height = "15 mm" }
        [panel.carrier]
        border = { port = "50 mm" }
        position = { station = "1200 mm", offset = "-700 mm" }
        [panel.mount]
        port = "snaps"

        [[panel]]
        name = "starboard"
        mirrors = "port"

        [[panel]]
        name = "middle"
        length = "600 mm"
        width = "400 mm"
        """;

    private static readonly TopJob Top = Read(Text);

    [Fact]
    public void A_job_of_one_panel_is_a_top_of_one_mounting_without_a_name()
    {
        var top = Read(Sample.Least);

        Assert.Equal((1, 0, 1), (top.Mountings.Length, top.Twins.Length, top.Copies));
        Assert.True(top.First.Mounting.IsOnly);
    }

    [Fact]
    public void Each_panel_with_a_carrier_is_a_mounting_of_its_name() =>
        Assert.Equal(["port", "middle"], Top.Mountings.Select(job => job.Mounting.Text));

    [Fact]
    public void Twins_and_sets_are_told() =>
        Assert.Equal((new MirroredTwin(new("starboard"), new("port")), 3), (Assert.Single(Top.Twins), Top.Copies));

    /// <summary>Own values come before shared ones, and one shared value for all sides gives way to own ones side by side.</summary>
    [Fact]
    public void What_a_panel_has_of_its_own_comes_before_what_is_shared()
    {
        var (port, middle) = (Top.Mountings[0], Top.Mountings[1]);

        Assert.Equal((50, 30), (port.Carrier.Border.Port.Millimeters, port.Carrier.Border.Starboard.Millimeters));
        Assert.Equal((30, 40), (middle.Carrier.Border.Port.Millimeters, middle.Fastenings.Zipper.Setback.Millimeters));
        Assert.Equal((MountKind.Snaps, null), (port.Fastenings.Mount.Port, middle.Fastenings.Mount.Port));
        Assert.Equal((-700.0, true), (port.Carrier.Position!.Offset.Millimeters, middle.Carrier.Position is null));
    }

    /// <summary>By hand: the box's port edge is 100 mm from the panel's port edge and 80 mm wide, so in the mirror its port edge is 900 - 100 - 80 = 720 mm from there.</summary>
    [Fact]
    public void A_mirror_image_has_port_and_starboard_exchanged()
    {
        var twin = Top.Mountings[0].Mirrored(LongSide.Athwart, new("starboard"));

        Assert.Equal(720, twin.Panel.Fittings.JunctionBox!.FromPort.Millimeters, 1e-9);
        Assert.Equal((13, 11), (twin.Panel.Fittings.DeadBorder.Port.Millimeters, twin.Panel.Fittings.DeadBorder.Starboard.Millimeters));
        Assert.Equal((30, 50), (twin.Carrier.Border.Port.Millimeters, twin.Carrier.Border.Starboard.Millimeters));
        Assert.Equal((null, MountKind.Snaps), (twin.Fastenings.Mount.Port, twin.Fastenings.Mount.Starboard));
        Assert.Equal((700, "starboard"), (twin.Carrier.Position!.Offset.Millimeters, twin.Mounting.Text));
    }

    [Fact]
    public void A_mirror_image_mirrored_is_the_same_again()
    {
        var port = Top.Mountings[0];
        var again = port.Mirrored(LongSide.Athwart, new("twin")).Mirrored(LongSide.Athwart, port.Mounting);

        Assert.Equal(port.Panel, again.Panel);
        Assert.Equal(port.Carrier, again.Carrier);
        Assert.Equal(port.Fastenings.Mount, again.Fastenings.Mount);
    }

    /// <summary>A list of one is no other job than a panel without a list, but for its name.</summary>
    [Fact]
    public void A_list_of_one_reads_as_one()
    {
        var list = Read(Sample.Least.Replace("[panel]", "[[panel]]\nname = \"all\"", StringComparison.Ordinal)).First;
        var one = Read(Sample.Least).First;

        Assert.Equal("all", list.Mounting.Text);
        Assert.Equal((one.Panel, one.Carrier, one.Fastenings.Pocket), (list.Panel, list.Carrier, list.Fastenings.Pocket));
        Assert.Equal(one.Defaults.Select(used => used.Field), list.Defaults.Select(used => used.Field).Where(field => !field.StartsWith("limits.between_", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("[[panel]]", "panel[1].length")]
    [InlineData("panel = []", "panel: holds no panel")]
    [InlineData("panel = 3", "panel: must be a table")]
    [InlineData("panel = [1]", "panel: must be a list of tables")]
    public void A_list_that_is_none_is_told(string panel, string told) =>
        Assert.Contains(told, Sample.Problems(Sample.Least[..Sample.Least.IndexOf("[top]", StringComparison.Ordinal)] + (panel[0] == '[' ? string.Empty : panel + "\n") + "[top]\nlength = \"2 m\"\nwidth = \"2 m\"\n" + (panel[0] == '[' ? panel : string.Empty)), StringComparison.Ordinal);

    private static TopJob Read(string text)
    {
        var top = JobFile.Read(text, "job.toml");
        Assert.True(top.IsValid, string.Join('\n', top.Problems));
        return top.Value;
    }
}
