using System.Text;
using CanvasCut.Cli;
using CanvasCut.Design;
using CanvasCut.Job;
using CanvasCut.Patterns;
using CanvasCut.Takeoff;
using CanvasCut.Tests.Takeoff;

namespace CanvasCut.Tests.Job;

/// <summary>A row of two panels and its mirror image, from the file to the last result.</summary>
public sealed class RowJobTests
{
    private const string Text = """
        format = 1
        name = "A row on each side"

        [top]
        length = "2000 mm"
        width = "3000 mm"

        [[top.bow]]
        station = "60 mm"
        diameter = "1 in"
        chord = "2800 mm"
        crown = "120 mm"
        height = "1900 mm"

        [[top.bow]]
        station = "1940 mm"
        diameter = "1 in"
        chord = "2800 mm"
        crown = "120 mm"
        height = "1900 mm"

        [carrier]
        border = "50 mm"

        [[panel]]
        name = "port"
        length = "600 mm"
        width = "400 mm"
        long_side = "fore-aft"
        mass = "1.2 kg"
        min_bend_radius = "500 mm"
        cable_exit = { from_port = "200 mm", from_forward = "-20 mm", diameter = "8 mm" }
        junction_box = { from_port = "150 mm", from_forward = "20 mm", athwart = "100 mm", fore_aft = "60 mm", height = "15 mm" }

        [[panel]]
        name = "second"
        on = "port"
        length = "500 mm"
        width = "300 mm"
        mass = "0.9 kg"
        min_bend_radius = "500 mm"
        cable_exit = { from_port = "-10 mm", from_forward = "150 mm", diameter = "8 mm" }

        [[panel]]
        name = "starboard"
        mirrors = "port"
        """;

    private static readonly TopRun Run = TopRun.Of(Text, "job.toml", RunSettings.Usual).Value!;

    /// <summary>The twin's panels are the mirror images of the port ones, box by box, as the carriers are.</summary>
    [Fact]
    public void The_twin_of_a_row_lies_as_its_mirror_image()
    {
        var (port, twin) = (Run.Mountings[0].Pieces.Mounted, Run.Mountings[1].Pieces.Mounted);

        Assert.Equal(["port", "second"], port.Panels.Select(panel => panel.Name.Text));
        Assert.Equal(["starboard-second", "starboard"], twin.Panels.Select(panel => panel.Name.Text));
        Assert.All(port.Panels.Zip(twin.Panels.Reverse()), pair =>
        {
            Assert.Equal((Rounded(-pair.First.Box.Right), Rounded(-pair.First.Box.Left), Rounded(pair.First.Box.Top)), (Rounded(pair.Second.Box.Left), Rounded(pair.Second.Box.Right), Rounded(pair.Second.Box.Top)));
            Assert.Equal(-pair.First.Cells.Left, pair.Second.Cells.Right, 1e-6);
        });
    }

    [Fact]
    public void A_row_has_one_carrier_and_a_patch_for_each_cable()
    {
        Assert.Equal(
            ["port-carrier", "port-cable-exit-patch", "second-cable-exit-patch"],
            Run.Mountings[0].Pieces.Pieces.Where(piece => piece.Key.Kind is PieceKind.Carrier or PieceKind.ExitPatch).Select(piece => piece.Key.Id));
    }

    /// <summary>One grommet a cable; 1.2 and 0.9 kg together.</summary>
    [Fact]
    public void What_is_bought_is_for_all_panels_of_the_row()
    {
        var lines = Run.Mountings[0].Purchase.Order;

        Assert.Equal(2, lines.Single(line => line.Use.Text == "cable exit").Bought.Number);
        Assert.Contains(lines, line => line.Also.Contains("the panels weigh 2.1 kg together", StringComparison.Ordinal));
    }

    [Fact]
    public void The_order_of_work_can_be_done_and_lays_one_panel_after_the_other()
    {
        var run = Run.Mountings[0];
        var step = run.Work.Steps.Single(each => each.Step.Task.Id == "bond").Step;

        // The audit knows pieces without a name of their mounting.
        var unnamed = PatternSet.Of(run.Job with { Mounting = MountingName.Only }, run.Placed.Mounted);
        Assert.Empty(new WorkAudit(unnamed, WorkOrder.Of(unnamed)).Faults());
        Assert.Contains("Panel \"port\": lay its", step.Task.Do, StringComparison.Ordinal);
        Assert.True(step.Task.Do.IndexOf("\"port\"", StringComparison.Ordinal) < step.Task.Do.IndexOf("\"second\"", StringComparison.Ordinal));
    }

    [Fact]
    public void Marks_on_the_top_tell_the_panels_apart() =>
        Assert.Equal(8, TopMarks.Of(Run.Mountings[0].Pieces.Mounted).Count(mark => mark.IsOfPanel && (mark.Name.StartsWith("panel \"port\"", StringComparison.Ordinal) || mark.Name.StartsWith("panel \"second\"", StringComparison.Ordinal))));

    [Fact]
    public void Everything_is_written()
    {
        var files = TopFiles.Of(Run);

        Assert.Equal(files.Length, files.Select(file => file.Name).Distinct().Count());
        Assert.Contains("data-shows=\"second-cells\"", Encoding.UTF8.GetString(files.Single(file => file.Name == "placement.svg").Bytes.Span), StringComparison.Ordinal);
    }

    [Fact]
    public void Refit_says_that_it_knows_one_panel_on_a_carrier()
    {
        using var folder = new TemporaryFolder();
        using var output = new StringWriter();
        using var errors = new StringWriter();
        var (old, next) = (folder.PathOf("results.json"), folder.PathOf("job.toml"));
        File.WriteAllText(old, Encoding.UTF8.GetString(ResultFiles.Of(JobRun.Of(JobFiles.Sample.Least, "old.toml").Value!).Single(file => file.Name == "results.json").Bytes.Span));
        File.WriteAllText(next, Text[..Text.IndexOf("[[panel]]\nname = \"starboard\"", StringComparison.Ordinal)]);

        Assert.Equal(2, CanvasCutCommand.Run(["refit", old, next], new(output, errors, IsTerminal: false)));
        Assert.Contains("refit takes a carrier with one panel", errors.ToString(), StringComparison.Ordinal);
    }

    private static double Rounded(double number) => Math.Round(number, 6);
}
