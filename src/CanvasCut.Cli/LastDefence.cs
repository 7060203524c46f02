using System.Diagnostics;
using System.Diagnostics.CodeAnalysis;
using CanvasCut.Job;
using CanvasCut.Language;

namespace CanvasCut.Cli;

/// <summary>Turns whatever no other place was ready for into one plain sentence.</summary>
internal static class LastDefence
{
    /// <summary>Stands before a fault of the program itself; docs/results.md tells what to do then.</summary>
    public const string Code = "CC900";

    /// <summary>What a run returns, or the exit code of what went wrong in it, which is told.</summary>
    [SuppressMessage("Design", "CA1031", Justification = "Behind it there is only the runtime, which prints a trace.")]
    public static int Of(Func<int> run, Faces faces)
    {
        try
        {
            return run();
        }
        catch (Exception exception)
        {
            return Tell(exception, faces);
        }
    }

    /// <summary>Tells of it, if there is still a place to tell it; the exit code.</summary>
    private static int Tell(Exception exception, Faces faces)
    {
        var (sentence, code) = exception is OutputBrokenException broken ? (Say.Of($"The output cannot be written: {broken.Message}"), ExitCode.NotWritten)
            : IsNowhere() ? (Say.Of("The folder you are in is not there any more; change into one that is."), ExitCode.NotWritten)
            : (Fault(exception), ExitCode.Fault);
        try
        {
            faces.Errors.WriteLine(sentence);
        }
        catch (OutputBrokenException)
        {
            // Nobody hears it; the exit code tells.
        }

        return code;
    }

    private static string Fault(Exception exception)
    {
        var place = new StackTrace(exception).GetFrames().Select(DiagnosticMethodInfo.Create).FirstOrDefault(method => method?.DeclaringTypeName?.StartsWith("CanvasCut", StringComparison.Ordinal) == true);
        var where = place is null ? string.Empty : $", {place.DeclaringTypeName}.{place.Name}";
        return Say.Of($"{Code}: CanvasCut {JobRun.Version} went wrong inside ({exception.GetType().Name}{where}: {exception.Message}). That is a fault of the program and not yours; no file is half written. Please send this line, the command and the files you named to those you have the program from.");
    }

    private static bool IsNowhere()
    {
        try
        {
            return !Directory.Exists(Directory.GetCurrentDirectory());
        }
        catch (IOException)
        {
            return true;
        }
    }
}
