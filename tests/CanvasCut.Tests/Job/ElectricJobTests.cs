using CanvasCut.Checks;
using CanvasCut.Job;
using CanvasCut.Tests.JobFiles;
using UnitsNet;

namespace CanvasCut.Tests.Job;

/// <summary>From the text of a job to the checks on its wiring.</summary>
public sealed class ElectricJobTests
{
    private const string Label = """
        [panel.label]
        power = "100 W"
        open_voltage = "22.6 V"
        peak_voltage = "18.9 V"
        short_current = "5.6 A"
        peak_current = "5.3 A"
        open_voltage_per_kelvin = "-0.30 %/K"

        """;

    private const string Electric = """
        [electric]
        coldest_air = "-10 C"
        [electric.wires]
        family = "awg"
        [[electric.controller]]
        name = "tracker"
        kind = "step-down"
        largest_voltage = "75 V"
        panel_run = "4 m"

        """;

    /// <summary>
    /// A top of 2000 x 1800 mm, the carrier's middle at station 1000, the panel 1000 x 500 mm athwart: its port edge 500 mm to port, its forward edge 750 mm
    /// aft. The box begins 100 mm from port and 20 mm from forward, 100 x 60 mm: its middle at offset -350, station 800. Hole: 50 mm to port of the panel's middle
    /// (450 from port), 17 mm forward of it: offset -50, station 733. From box to hole 307.4 mm = root of 300 and 67 squared; from there 733 mm to the forward edge.
    /// </summary>
    [Theory]
    [InlineData("", 550)]
    [InlineData("cable_exit = { from_port = \"450 mm\", from_forward = \"-17 mm\", diameter = \"15 mm\" }\n", 307.39 + 733)]
    public void The_way_over_the_top_is_taken_from_the_drawing(string exit, double expected)
    {
        var text = Sample.Least + "long_side = \"athwart\"\njunction_box = { from_port = \"100 mm\", from_forward = \"20 mm\", athwart = \"100 mm\", fore_aft = \"60 mm\", height = \"15 mm\" }\n"
            + exit + Label + "[carrier]\nposition = { station = \"1000 mm\", offset = \"0 mm\" }\n" + Electric;
        var run = JobRun.Of(text, "job.toml").Value!;

        Assert.Equal(expected, run.Wiring!.Panels[0].ToEdge!.Value.Millimeters, 0.01);
        Assert.Equal(4000 + expected, run.Wiring.Controllers[0].PanelRun.Task.OneWay.Value!.Value.Millimeters, 0.01);
    }

    /// <summary>22.6 x 1.105 = 24.973 V against 75 V; no bank, no rated output: what hangs on them is told.</summary>
    [Fact]
    public void A_job_with_a_wiring_has_its_checks_after_all_others()
    {
        var run = JobRun.Of(Sample.Least + Label + Electric, "job.toml").Value!;
        var electric = run.Checks.Where(check => check.Code.StartsWith("electric.", StringComparison.Ordinal)).ToList();

        Assert.Equal(electric, run.Checks.TakeLast(electric.Count));
        var cold = electric.Single(check => check.Code == CheckCodes.ElectricCold);
        Assert.Equal((Verdict.Pass, 24.973), (cold.Verdict, Math.Round(((ElectricPotential)cold.Measured.Reading!.Value).Volts, 3)));
        Assert.StartsWith("Not checked because the bank is missing", electric.Single(check => check.Code == CheckCodes.ElectricHot).Advice, StringComparison.Ordinal);
        Assert.Contains("\"electric.cold\"", ResultsJson.OfChecks(run), StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_without_a_wiring_is_as_before()
    {
        var run = JobRun.Of(Sample.Least, "job.toml").Value!;

        Assert.Null(run.Wiring);
        Assert.DoesNotContain(run.Checks, check => check.Code.StartsWith("electric.", StringComparison.Ordinal));
        Assert.DoesNotContain(run.Job.Defaults, used => used.Field.StartsWith("electric", StringComparison.Ordinal));
        Assert.Contains("cables and everything electric", JobChecks.NotInThisVersionFor(run.Wiring));
    }

    /// <summary>Two panels and a twin: 3 x 24.973 = 74.919 V, within a tenth of 75 V.</summary>
    [Fact]
    public void The_panels_of_several_carriers_are_wired_together()
    {
        const string Text = """
            format = 1
            name = "Three in series"
            [top]
            length = "3000 mm"
            width = "2600 mm"
            [[panel]]
            name = "port"
            length = "1000 mm"
            width = "500 mm"

            """;
        const string Others = """
            [[panel]]
            name = "starboard"
            mirrors = "port"
            [[panel]]
            name = "aft"
            length = "1000 mm"
            width = "500 mm"

            """;
        var top = TopRun.Of(Text + Label + Others + Label + Electric + "[[electric.string]]\npanels = [\"port\", \"aft\", \"starboard\"]\n", "job.toml", RunSettings.Usual).Value!;

        var cold = top.Electric.Single(check => check.Code == CheckCodes.ElectricCold);
        Assert.Equal((Verdict.Caution, 74.919), (cold.Verdict, Math.Round(((ElectricPotential)cold.Measured.Reading!.Value).Volts, 3)));
        Assert.All(top.Mountings, mounting => Assert.DoesNotContain(mounting.Checks, check => check.Code.StartsWith("electric.", StringComparison.Ordinal)));
        Assert.Equal(["port", "aft", "starboard"], top.Wiring!.Strings.Single().Panels.Select(panel => panel.Name.Text));
    }
}
