using System.Diagnostics;
using System.Globalization;

namespace CanvasCut.Benchmarks;

/// <summary>Times the whole program, started anew each time, against the same program only telling its version.</summary>
internal static class WholeProcess
{
    private const int Runs = 7;

    /// <summary>Writes the median time and peak memory of both, and the ratio of the times.</summary>
    public static void Run(TextWriter output)
    {
        var folder = Directory.CreateTempSubdirectory("canvascut-bench").FullName;
        try
        {
            string[] make = ["make", "--out", Path.Combine(folder, "out")];
            string[] version = ["--version"];
            _ = (Once(make), Once(version));
            var pairs = Enumerable.Range(0, Runs).Select(_ => (Make: Once(make), Version: Once(version))).ToList();
            var (makeSeconds, versionSeconds) = (Median(pairs.Select(pair => pair.Make.Seconds)), Median(pairs.Select(pair => pair.Version.Seconds)));
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"make      {makeSeconds:0.000} s, peak {pairs.Max(pair => pair.Make.PeakMebibytes):0} MiB (median of {Runs}; peak of all)"));
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"--version {versionSeconds:0.000} s, peak {pairs.Max(pair => pair.Version.PeakMebibytes):0} MiB"));
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"ratio     {Median(pairs.Select(pair => pair.Make.Seconds / pair.Version.Seconds)):0.00} (median of the pairs)"));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static (double Seconds, double PeakMebibytes) Once(string[] arguments)
    {
        var program = Path.Combine(AppContext.BaseDirectory, "CanvasCut.Cli.dll");
        var start = new ProcessStartInfo("dotnet", [program, .. arguments]) { RedirectStandardOutput = true, RedirectStandardError = true };
        var clock = Stopwatch.StartNew();
        using var process = Process.Start(start) ?? throw new InvalidOperationException("dotnet did not start.");
        var printed = process.StandardOutput.ReadToEndAsync();
        var peak = 0.0;
        while (!process.WaitForExit(2))
        {
            peak = Math.Max(peak, PeakOf(process.Id));
        }

        var seconds = clock.Elapsed.TotalSeconds;
        return process.ExitCode == 0 ? (seconds, peak) : throw new InvalidOperationException($"It ended with {process.ExitCode}: {printed.Result}");
    }

    /// <summary>The high-water mark that the Linux kernel keeps; 0 elsewhere.</summary>
    private static double PeakOf(int process)
    {
        try
        {
            var line = File.ReadLines($"/proc/{process}/status").FirstOrDefault(line => line.StartsWith("VmHWM:", StringComparison.Ordinal));
            return line is null ? 0 : double.Parse(line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[1], CultureInfo.InvariantCulture) / 1024;
        }
        catch (IOException)
        {
            return 0;
        }
    }

    private static double Median(IEnumerable<double> values)
    {
        var sorted = values.Order().ToList();
        return sorted[sorted.Count / 2];
    }
}
