using System.Diagnostics;
using System.Globalization;
using CanvasCut.JobFiles;
using CanvasCut.Patterns;
using CanvasCut.Placing;
using CanvasCut.Takeoff;

namespace CanvasCut.Benchmarks;

/// <summary>How much processor time the cut plan of each example and its proof take: in a program just started, and once warm.</summary>
internal static class PlansTiming
{
    private const int Runs = 15;

    /// <summary>Writes a row for each job file under patterns; the first is the one that meets a cold program.</summary>
    public static void Run(TextWriter output)
    {
        output.WriteLine("| example | pieces | used, mm | verdict | first, processor s | warm, median, processor s |\n|---|---|---|---|---|---|");
        foreach (var path in Directory.GetFiles("patterns", "job.toml", SearchOption.AllDirectories).Order(StringComparer.Ordinal))
        {
            if (JobFile.Read(File.ReadAllText(path), path, SideFilesOf(path)).Value?.First is not { } job)
            {
                continue;
            }

            var patterns = PatternSet.Of(job, FitChoice.For(job).Mounted);
            var times = Enumerable.Range(0, Runs).Select(_ => Timed(patterns)).ToList();
            var plan = Planned(patterns);
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"| {Path.GetFileName(Path.GetDirectoryName(path))} | {plan.Placed.Length} | {plan.Used.Millimeters:0.0} | {plan.Proof.Verdict} | {times[0]:0.00} | {times.Skip(1).Order().ElementAt(Runs / 2):0.000} |"));
        }
    }

    private static CutPlan Planned(PatternSet patterns) => CutPlan.Of(patterns, PlanSearch.For(patterns.Job));

    private static double Timed(PatternSet patterns)
    {
        using var process = Process.GetCurrentProcess();
        var before = process.TotalProcessorTime;
        var isPlanned = Planned(patterns).Placed.Length > 0;
        process.Refresh();
        return isPlanned ? (process.TotalProcessorTime - before).TotalSeconds : throw new InvalidOperationException("Nothing was placed.");
    }

    private static SideFiles SideFilesOf(string job) => new(
        name => Path.Combine(Path.GetDirectoryName(job)!, name) is var full && File.Exists(full) ? new NamedText(full, File.ReadAllText(full)) : null, null, null);
}
