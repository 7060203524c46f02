using System.CommandLine;
using CanvasCut.Job;
using CanvasCut.Language;

namespace CanvasCut.Cli;

/// <summary><c>canvascut check JOB</c></summary>
internal static class CheckCommand
{
    public static Command Create(Faces faces)
    {
        var job = new Argument<string>("JOB") { Description = Say.Of("The job file.") };
        var json = new Option<bool>("--json") { Description = Say.Of("Prints what results.json would hold, without what waits for the cut plan.") };
        var all = new Option<bool>("--all") { Description = Say.Of("Shows every check that passed, not the tightest of each kind.") };
        var command = new Command("check", Say.Of("Tells whether it fits; writes nothing.")) { job, json, all };
        var side = new SideOptions();
        side.AddTo(command);
        command.SetAction(parsed => Run(parsed.GetRequiredValue(job), (parsed.GetValue(json), parsed.GetValue(all)), side.Of(parsed), faces));
        return command;
    }

    private static int Run(string path, (bool AsJson, bool All) how, SideNames side, Faces faces)
    {
        if (how.AsJson)
        {
            return RunJson(path, side, faces);
        }

        if (JobSource.ReadTop(path, (null, side), faces, out var code) is not { } top)
        {
            return code;
        }

        if (JobSource.Chosen(top, side.Panel, faces) is not { } runs)
        {
            return ExitCode.WrongInput;
        }

        foreach (var run in runs)
        {
            if (top.Top.HasSeveral)
            {
                faces.Output.WriteLine(Say.Of($"Carrier \"{run.Job.Mounting}\""));
            }

            CheckTable.Write(run, how.All, faces);
        }

        CheckTable.WriteBetween(top, faces);
        CheckTable.WriteElectric(top, faces);
        return top.HasFailed ? ExitCode.CheckFailed : ExitCode.Done;
    }

    private static int RunJson(string path, SideNames side, Faces faces)
    {
        if (JobSource.Whole(path, side, faces, out var code) is not { } top)
        {
            return code;
        }

        faces.Output.Write(ResultsJson.OfChecks(top));
        return top.HasFailed ? ExitCode.CheckFailed : ExitCode.Done;
    }
}
