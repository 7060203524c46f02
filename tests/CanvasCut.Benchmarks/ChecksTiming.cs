using System.Diagnostics;
using System.Globalization;
using CanvasCut.Checks;
using CanvasCut.JobFiles;
using CanvasCut.Patterns;
using CanvasCut.Placing;

namespace CanvasCut.Benchmarks;

/// <summary>All checks of every example, once the program is warm.</summary>
internal static class ChecksTiming
{
    private const int Runs = 101;
    private const int WarmUp = 30;

    /// <summary>Writes the median and the longest time for each job file under patterns, and how many checks there are.</summary>
    public static void Run(TextWriter output)
    {
        foreach (var path in Directory.GetFiles("patterns", "job.toml", SearchOption.AllDirectories).Order(StringComparer.Ordinal))
        {
            if (JobFile.Read(File.ReadAllText(path), path).Value?.First is not { } job)
            {
                continue;
            }

            var patterns = PatternSet.Of(job, FitChoice.For(job).Mounted);
            var times = Enumerable.Range(0, WarmUp + Runs).Select(_ => Timed(patterns)).Skip(WarmUp).Order().ToList();
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{Path.GetFileName(Path.GetDirectoryName(path)),-24} {JobChecks.Of(patterns).Length,3} checks, median {times[Runs / 2]:0.00} ms, longest {times[^1]:0.00} ms"));
        }
    }

    private static double Timed(PatternSet patterns)
    {
        var clock = Stopwatch.StartNew();
        return JobChecks.Of(patterns).Length > 0 ? clock.Elapsed.TotalMilliseconds : throw new InvalidOperationException("Nothing was checked.");
    }
}
