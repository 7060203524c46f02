using System.Text.Json;
using CanvasCut.Cli;
using CanvasCut.Geometry;
using CanvasCut.Job;

namespace CanvasCut.Tests.Cli;

/// <summary>The commands on a job of several panels.</summary>
public sealed class SeveralCommandTests
{
    private const string Text = """
        format = 1
        name = "Two on one top"
        copies = 2
        [top]
        length = "2000 mm"
        width = "2600 mm"
        [[panel]]
        name = "port"
        length = "900 mm"
        width = "500 mm"
        min_bend_radius = "400 mm"
        junction_box = { from_port = "100 mm", from_forward = "20 mm", athwart = "90 mm", fore_aft = "60 mm", height = "15 mm" }
        [[panel]]
        name = "starboard"
        mirrors = "port"

        """;

    [Fact]
    public void Check_tells_of_every_carrier_and_of_the_room_between()
    {
        var (code, output, _) = Run("check");

        Assert.Equal(0, code);
        Assert.Contains("Carrier \"port\"", output, StringComparison.Ordinal);
        Assert.Contains("Carrier \"starboard\"", output, StringComparison.Ordinal);
        Assert.Contains("fit.between: port and starboard", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_command_for_one_carrier_asks_which()
    {
        var (code, _, errors) = Run("compare-mounts");

        Assert.Equal(2, code);
        Assert.Contains("name one with --panel: port, starboard", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_carrier_that_there_is_not_is_told()
    {
        var (code, _, errors) = Run("work", "--panel", "aft");

        Assert.Equal(2, code);
        Assert.Contains("\"aft\" is no carrier of this job; there are port, starboard", errors, StringComparison.Ordinal);
    }

    /// <summary>One order of work: the top is taken off once, and each panel has a cure of its own.</summary>
    [Fact]
    public void The_order_of_work_is_for_all_carriers()
    {
        using var work = JsonDocument.Parse(Run("work", "--json").Output);
        var ids = work.RootElement.GetProperty("steps").EnumerateArray().Select(step => step.GetProperty("id").GetString()).ToList();

        Assert.Single(ids, "take-top-off");
        Assert.Equal(["cure-port", "cure-starboard"], ids.Where(id => id!.StartsWith("cure", StringComparison.Ordinal)));
        Assert.Contains("all 2: cut and mark them together", Run("work").Output, StringComparison.Ordinal);
    }

    /// <summary>A panel's own bonding table counts for it, and for its twin; those that are bonded alike are told together.</summary>
    [Fact]
    public void Bonding_tells_of_each_panels_own_table()
    {
        var own = Text + "[[panel]]\nname = \"middle\"\nlength = \"400 mm\"\nwidth = \"300 mm\"\n[panel.bonding]\nleast_surface = \"22 C\"\n";
        string[] day = ["--air", "20C", "--humidity", "50", "--surface", "20C", "--hours", "80"];

        var (code, output, _) = RunOn(own, ["bonding", .. day]);

        Assert.Equal(1, code);
        Assert.True(output.IndexOf("Panel port, starboard:", StringComparison.Ordinal) < output.IndexOf("Bond now", StringComparison.Ordinal));
        Assert.True(output.IndexOf("Panel middle:", StringComparison.Ordinal) < output.IndexOf("Do not bond now", StringComparison.Ordinal));
        Assert.Equal((0, 0, 1), (RunOn(own, ["bonding", .. day, "--panel", "port"]).Code, RunOn(own, ["bonding", .. day, "--panel", "starboard"]).Code, RunOn(own, ["bonding", .. day, "--panel", "middle"]).Code));
        Assert.Equal(2, RunOn(own, ["bonding", .. day, "--panel", "aft"]).Code);
    }

    /// <summary>Room to work between the two is told beside the clear strip.</summary>
    [Fact]
    public void Check_tells_of_room_to_work()
    {
        var output = Run("check").Output;

        Assert.All(["between.pockets", "between.pulls", "between.cables"], code => Assert.Contains(code, output, StringComparison.Ordinal));
    }

    /// <summary>
    /// Of a job made with three carriers: the twins are as they were, the one in the middle gets a wider panel, one more is put in, or it is
    /// moved, or taken out. Told by the command, from what make wrote.
    /// </summary>
    [Fact]
    public void Refit_tells_which_carriers_stay()
    {
        const string Middle = "[[panel]]\nname = \"middle\"\nlength = \"400 mm\"\nwidth = \"300 mm\"\nlong_side = \"fore-aft\"\n[panel.carrier]\nposition = { station = \"1000 mm\", offset = \"0 mm\" }\n";
        var placed = Text.Replace("[[panel]]\nname = \"starboard\"", "[panel.carrier]\nposition = { station = \"1000 mm\", offset = \"-800 mm\" }\n[[panel]]\nname = \"starboard\"", StringComparison.Ordinal)
            .Replace("width = \"500 mm\"", "width = \"500 mm\"\nlong_side = \"fore-aft\"", StringComparison.Ordinal);
        using var folder = new TemporaryFolder();
        var (old, job) = (folder.PathOf("old"), folder.PathOf("job.toml"));
        File.WriteAllText(job, placed + Middle);
        RunOn(placed + Middle, ["make", "--out", old]);
        Assert.True(File.Exists(Path.Combine(old, "results.json")));

        string Refit(string text)
        {
            File.WriteAllText(job, text);
            using var output = new StringWriter();
            using var errors = new StringWriter();
            CanvasCutCommand.Run(["refit", old, job], new(output, errors, IsTerminal: false));
            Assert.Equal(string.Empty, errors.ToString());
            return output.ToString();
        }

        Assert.Equal(3, Refit(placed + Middle).Split("stays. Every piece").Length - 1);
        Assert.Contains("middle: is made ANEW", Refit(placed + Middle.Replace("300 mm", "320 mm", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.Contains("middle: lies elsewhere", Refit(placed + Middle.Replace("1000 mm", "1010 mm", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.Contains("middle: is not in the new job", Refit(placed), StringComparison.Ordinal);
        Assert.Contains("other: is NEW", Refit(placed + Middle.Replace("middle", "other", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.Contains("port: stays", Refit(placed), StringComparison.Ordinal);
    }

    [Fact]
    public void One_carrier_alone_is_told_of() => Assert.Equal(0, Run("work", "--panel", "starboard").Code);

    /// <summary>The order without a name is that of all carriers and sets; by hand, two zippers a carrier, two carriers, two sets: 8.</summary>
    [Fact]
    public void The_order_is_for_all_carriers_and_sets()
    {
        using var all = JsonDocument.Parse(Run("order", "--json").Output);
        using var one = JsonDocument.Parse(Run("order", "--json", "--panel", "port").Output);

        Assert.Equal((8, 2), (Zippers(all), Zippers(one)));
        Assert.Contains("port, starboard: forward and aft edge", Run("order", "--csv").Output, StringComparison.Ordinal);
    }

    private static int Zippers(JsonDocument order) =>
        order.RootElement.GetProperty("order").EnumerateArray().Single(line => line.GetProperty("grade").GetString() == "tooth-10").GetProperty("quantity").GetInt32();

    /// <summary>The pieces of both carriers and both sets lie on one roll: twice as many as both carriers have.</summary>
    [Fact]
    public void Make_writes_a_folder_for_each_carrier_and_one_cut_plan()
    {
        using var folder = new TemporaryFolder();
        var @out = folder.PathOf("out");
        var (code, output, _) = Run("make", "--out", @out);

        Assert.Equal(0, code);
        Assert.Contains("Cloth for 2 sets, all pieces on one roll", output, StringComparison.Ordinal);
        using var all = JsonDocument.Parse(File.ReadAllText(Path.Combine(@out, "results.json")));
        var pieces = new[] { "port", "starboard" }.Sum(name =>
        {
            using var one = JsonDocument.Parse(File.ReadAllText(Path.Combine(@out, name, "results.json")));
            return one.RootElement.GetProperty("mountings")[0].GetProperty("pieces").EnumerateArray().Sum(piece => piece.GetProperty("quantity").GetInt32());
        });
        Assert.Equal(2 * pieces, all.RootElement.GetProperty("cut_plan").GetProperty("placed").GetArrayLength());
        Assert.Equal(8, Zippers(all));
        Assert.All(["report.pdf", "removal-card.pdf", "care.pdf"], name => Assert.True(File.Exists(Path.Combine(@out, name)), name));
        Assert.False(File.Exists(Path.Combine(@out, "port", "order.csv")));
        Assert.True(File.Exists(Path.Combine(@out, "port", "templates.pdf")));
        Assert.Equal(Run("order", "--csv").Output, File.ReadAllText(Path.Combine(@out, "order.csv")));
        Assert.All(all.RootElement.GetProperty("files").EnumerateArray(), name => Assert.True(File.Exists(Path.Combine(@out, name.GetString()!))));
        Assert.Equal(0, Run("make", "--out", @out).Code);
    }

    /// <summary>Every piece of the twin is the mirror image of its original, which NetTopologySuite confirms by the area that the two do not share.</summary>
    [Fact]
    public void The_pieces_of_a_twin_are_mirrored()
    {
        var run = TopRun.Of(Text, "job.toml", RunSettings.Usual).Value!;
        var (port, starboard) = (run.Mountings[0].Pieces, run.Mountings[1].Pieces);

        Assert.Equal(port.Pieces.Length, starboard.Pieces.Length);
        Assert.All(port.Pieces, piece => Assert.Contains(starboard.Pieces, twin =>
            twin.Key.Kind == piece.Key.Kind && IsSame(piece.Shape.Cut.Mirrored(), twin.Shape.Cut)));
        Assert.All(port.Pieces.Concat(starboard.Pieces).GroupBy(piece => piece.Key.Id), alike => Assert.Single(alike));
    }

    private static bool IsSame(Outline one, Outline other) =>
        Witness.OutsideMm2(one, other) < 0.01 && Witness.OutsideMm2(other, one) < 0.01;

    private static (int Code, string Output, string Errors) Run(params string[] arguments) => RunOn(Text, arguments);

    private static (int Code, string Output, string Errors) RunOn(string text, string[] arguments)
    {
        using var folder = new TemporaryFolder();
        var job = folder.PathOf("job.toml");
        File.WriteAllText(job, text);
        using var output = new StringWriter();
        using var errors = new StringWriter();
        return (CanvasCutCommand.Run([arguments[0], job, .. arguments[1..]], new(output, errors, IsTerminal: false)), output.ToString(), errors.ToString());
    }
}
