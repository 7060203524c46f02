using System.CommandLine;
using CanvasCut.JobFiles;
using CanvasCut.Language;

namespace CanvasCut.Cli;

/// <summary><c>canvascut new [FILE]</c></summary>
internal static class NewCommand
{
    public static Command Create(Faces faces)
    {
        var file = new Argument<string>("FILE") { Description = Say.Of("The file to write; never one that exists."), DefaultValueFactory = _ => "job.toml" };
        var command = new Command("new", Say.Of("Begins a job file, with a word on every field.")) { file };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(file), faces));
        return command;
    }

    private static int Run(string path, Faces faces)
    {
        try
        {
            // CreateNew refuses a file that exists in the same breath as it makes one that does not.
            using var stream = new FileStream(path, FileMode.CreateNew, FileAccess.Write);
            using var writer = new StreamWriter(stream);
            writer.Write(Starter.Text);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException)
        {
            faces.Errors.WriteLine(File.Exists(path) ? Say.Of($"{path} exists and is left as it is; name another file.") : Say.Of($"{path} cannot be written: {exception.Message}"));
            return ExitCode.NotWritten;
        }

        faces.Output.WriteLine(Say.Of($"Wrote {path}. Fill in the blanks, then: canvascut check {path}"));
        return ExitCode.Done;
    }
}
