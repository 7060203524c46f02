using System.Diagnostics;

namespace CanvasCut.Tests.Cli;

/// <summary>The program as a user starts it, in a process of its own.</summary>
internal static class RealProgram
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    /// <summary>The file to start with dotnet.</summary>
    public static string File { get; } = Path.Combine(AppContext.BaseDirectory, "CanvasCut.Cli.dll");

    /// <summary>Runs it.</summary>
    public static (int Code, string Output, string Errors) Run(string folder, (string Name, string Value)[] environment, params string[] arguments) =>
        Ended(new("dotnet", [File, .. arguments]), folder, environment);

    /// <summary>Runs a line of a shell in which $CANVASCUT begins the program; the test is skipped where there is no such shell.</summary>
    public static (int Code, string Output, string Errors) Shell(string folder, string line)
    {
        Assert.SkipUnless(System.IO.File.Exists("/bin/sh") && OperatingSystem.IsLinux(), "/bin/sh of Linux is not there");
        return Ended(new("/bin/sh", ["-c", line]), folder, [("CANVASCUT", $"dotnet {File}")]);
    }

    private static (int Code, string Output, string Errors) Ended(ProcessStartInfo start, string folder, (string Name, string Value)[] environment)
    {
        (start.WorkingDirectory, start.RedirectStandardOutput, start.RedirectStandardError) = (folder, true, true);
        foreach (var (name, value) in environment)
        {
            start.Environment[name] = value;
        }

        using var process = Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEndAsync();
        Assert.True(process.WaitForExit(Patience), $"It did not end within {Patience}.");
        return (process.ExitCode, output.Result, errors.Result);
    }
}
