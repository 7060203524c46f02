using System.CommandLine;
using CanvasCut.JobFiles;
using CanvasCut.Measuring;

namespace CanvasCut.Cli;

/// <summary><c>canvascut measure FILE</c></summary>
internal static class MeasureCommand
{
    public static Command Create(Faces faces)
    {
        var file = new Argument<string>("FILE") { Description = "The measures, in the form of docs/measuring.md." };
        var json = new Option<bool>("--json") { Description = "Prints the residuals for programs." };
        var command = new Command("measure", "Tells whether the measures of a top agree, and which is most likely wrong.") { file, json };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(file), parsed.GetValue(json), faces));
        return command;
    }

    private static int Run(string path, bool isJson, Faces faces)
    {
        if (TextSource.Read(path, "measures file", "docs/measuring.md shows one", faces) is not { } text)
        {
            return ExitCode.NotWritten;
        }

        var top = MeasuresFile.Read(text, path);
        if (!top.IsValid)
        {
            foreach (var problem in top.Problems)
            {
                faces.Errors.WriteLine(problem);
            }

            faces.Errors.WriteLine(top.Problems.Length == 1 ? "1 problem. docs/measuring.md tells of every field." : $"{top.Problems.Length} problems. docs/measuring.md tells of every field.");
            return ExitCode.WrongInput;
        }

        var adjustment = MeasureAdjustment.Of(top.Value);
        if (isJson)
        {
            faces.Output.Write(MeasureJson.Of(adjustment));
        }
        else
        {
            MeasureTable.Write(adjustment, faces);
        }

        return adjustment.Agrees ? ExitCode.Done : ExitCode.CheckFailed;
    }
}
