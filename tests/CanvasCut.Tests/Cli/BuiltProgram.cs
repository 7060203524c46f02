using System.Diagnostics;

namespace CanvasCut.Tests.Cli;

/// <summary>The program as a process of its own: the one that CANVASCUT_PROGRAM names, compiled ahead of time, or the one beside the tests.</summary>
internal static class BuiltProgram
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(5);

    /// <summary>The program that CANVASCUT_PROGRAM names.</summary>
    public static string? Published { get; } = Environment.GetEnvironmentVariable("CANVASCUT_PROGRAM");

    /// <summary>Skips the test, saying why, where no published program is named.</summary>
    public static void NeedsPublished() =>
        Assert.SkipWhen(Published is null, "CANVASCUT_PROGRAM names no published program (dotnet publish src/CanvasCut.Cli)");

    /// <summary>Begins a run.</summary>
    public static Process Start(params string[] arguments) => Process.Start(new ProcessStartInfo(
        Published ?? "dotnet",
        Published is null ? [Path.Combine(AppContext.BaseDirectory, "CanvasCut.Cli.dll"), .. arguments] : arguments)
    {
        RedirectStandardOutput = true,
        RedirectStandardError = true,
    })!;

    /// <summary>Runs it to its end.</summary>
    public static (int Code, string Output, string Errors) Run(params string[] arguments)
    {
        using var process = Start(arguments);
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        Assert.True(process.WaitForExit(Patience), $"It did not end within {Patience}: {string.Join(' ', arguments)}");
        return (process.ExitCode, output, errors.Result);
    }
}
