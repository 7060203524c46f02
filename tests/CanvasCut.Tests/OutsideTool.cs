using System.Diagnostics;

namespace CanvasCut.Tests;

/// <summary>Runs a program that is not ours and tells what it printed; the test is skipped where it is not installed.</summary>
internal static class OutsideTool
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    /// <summary>Standard output of a run that must succeed.</summary>
    public static string Run(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        using var process = Start(start);
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        Assert.True(process.WaitForExit(Patience), $"{program} did not end within {Patience}.");
        Assert.True(process.ExitCode == 0, $"{program} {string.Join(' ', arguments)} ended with {process.ExitCode}: {errors.Result}{output}");
        return output;
    }

    /// <summary>Skips the test, saying why, unless Debian's Python with ezdxf is there; gives the interpreter.</summary>
    public static string PythonWithEzdxf()
    {
        const string Python = "/usr/bin/python3";
        var isThere = File.Exists(Python) && Directory.Exists("/usr/lib/python3/dist-packages/ezdxf");
        Assert.SkipUnless(isThere, "ezdxf is not installed (Debian: python3-ezdxf)");
        return Python;
    }

    private static Process Start(ProcessStartInfo start)
    {
        try
        {
            return Process.Start(start)!;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            Assert.Skip($"{start.FileName} is not installed");
            throw;
        }
    }
}
