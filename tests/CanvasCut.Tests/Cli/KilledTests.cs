using System.Diagnostics;
using System.Text.Json;
using CanvasCut.Job;

namespace CanvasCut.Tests.Cli;

/// <summary>The real program, killed at different moments of its work.</summary>
public sealed class KilledTests
{
    [Fact]
    public void A_killed_run_leaves_whole_results_behind()
    {
        using var folder = new TemporaryFolder();
        var target = folder.PathOf("out");
        Run(target).WaitForExit();
        for (var delay = 150; delay <= 900; delay += 75)
        {
            using (var process = Run(target))
            {
                process.WaitForExit(delay);
                End(process, isAsked: delay % 150 == 0);
            }

            ResultFolder.PutBack(target);
            using var json = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(target, "results.json")));
            Assert.All(
                json.RootElement.GetProperty("files").EnumerateArray(),
                name => Assert.True(new FileInfo(Path.Combine(target, name.GetString()!)).Length > 0, name.GetString()));
        }
    }

    /// <summary>Kills it, or asks it to end as Ctrl-C does.</summary>
    private static void End(Process process, bool isAsked)
    {
        if (isAsked && OperatingSystem.IsLinux() && !process.HasExited)
        {
            using var signal = Process.Start("kill", ["-INT", process.Id.ToString(System.Globalization.CultureInfo.InvariantCulture)]);
            signal.WaitForExit();
        }
        else
        {
            process.Kill();
        }

        process.WaitForExit();
    }

    private static Process Run(string target) => BuiltProgram.Start("make", Repository.PathOf("patterns/two-bow-small-top/job.toml"), "--out", target);
}
