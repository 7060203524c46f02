using System.Diagnostics;
using System.Globalization;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.JobFiles;
using CanvasCut.Patterns;
using CanvasCut.Placing;

namespace CanvasCut.Benchmarks;

/// <summary>Placing, pieces and checks of several panels, once the program is warm.</summary>
internal static class TogetherTiming
{
    private const int Runs = 21;
    private const int WarmUp = 10;

    /// <summary>Four panels of two sizes on a top of 3 m, all places free.</summary>
    private const string Four = """
        format = 1
        name = "Four"
        [top]
        length = "3000 mm"
        width = "2600 mm"
        [[panel]]
        name = "a"
        length = "1000 mm"
        width = "540 mm"
        [[panel]]
        name = "b"
        length = "1000 mm"
        width = "540 mm"
        [[panel]]
        name = "c"
        length = "800 mm"
        width = "400 mm"
        [[panel]]
        name = "d"
        length = "800 mm"
        width = "400 mm"
        """;

    /// <summary>Writes the median and the longest time of each job, and the processor time, which other work on the machine changes least: the example as it is, the same with its places free, four panels.</summary>
    public static void Run(TextWriter output)
    {
        var example = File.ReadAllText("patterns/two-mirrored-panels/top.toml");
        Write("two mirrored panels, places given", example, output);
        Write("two mirrored panels, places free", string.Join('\n', example.Split('\n').Where(line => !line.StartsWith("position", StringComparison.Ordinal))), output);
        Write("four panels on 3 m, places free", Four, output);
    }

    private static void Write(string name, string text, TextWriter output)
    {
        var top = JobFile.Read(text, "top.toml").Value ?? throw new InvalidOperationException(name);
        _ = Enumerable.Range(0, WarmUp).Sum(_ => Timed(top).AllMs);
        var processor = Environment.CpuUsage.TotalTime;
        var times = Enumerable.Range(0, Runs).Select(_ => Timed(top)).ToList();
        var processorMs = (Environment.CpuUsage.TotalTime - processor).TotalMilliseconds / Runs;
        var (placing, all) = (times.Select(time => time.PlacingMs).Order().ToList(), times.Select(time => time.AllMs).Order().ToList());
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{name,-34} placing median {placing[Runs / 2]:0.0} ms; with pieces and checks median {all[Runs / 2]:0.0} ms, longest {all[^1]:0.0} ms, {processorMs:0.0} ms of processor time"));
    }

    private static (double PlacingMs, double AllMs) Timed(TopJob top)
    {
        var clock = Stopwatch.StartNew();
        var placed = PlacedTop.Of(top);
        var placing = clock.Elapsed.TotalMilliseconds;
        var checks = placed.Mountings.Sum(each => JobChecks.Of(PatternSet.Of(each.Job, each.Fit.Mounted)).Length) + JobChecks.Of(placed).Length;
        return checks > 0 ? (placing, clock.Elapsed.TotalMilliseconds) : throw new InvalidOperationException("Nothing was checked.");
    }
}
