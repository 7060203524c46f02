using System.CommandLine;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.JobFiles;
using CanvasCut.Language;

namespace CanvasCut.Cli;

/// <summary><c>canvascut bonding [JOB] [--air T --humidity H --surface T --hours N] [--forecast FILE]</c></summary>
internal static class BondingCommand
{
    public static Command Create(Faces faces)
    {
        var job = new Argument<string?>("JOB") { Description = Say.Of("The job file, for its [bonding] table; without one the usual limits count."), Arity = ArgumentArity.ZeroOrOne };
        var air = new Option<string?>("--air") { Description = Say.Of("The air, as in 20C or 68F.") };
        var humidity = new Option<string?>("--humidity") { Description = Say.Of("Relative humidity in %.") };
        var surface = new Option<string?>("--surface") { Description = Say.Of("The colder of the surfaces to be bonded, as in 18C.") };
        var hours = new Option<string?>("--hours") { Description = Say.Of("How many hours it stays dry and mild afterwards.") };
        var forecast = new Option<string?>("--forecast") { Description = Say.Of("A CSV file of hours, to find the best one to begin; docs/weather.md tells its columns.") };
        var panel = SideOptions.Panel();
        var command = new Command("bonding", Say.Of("Tells whether the panel can be bonded in this weather, or when; writes nothing.")) { job, air, humidity, surface, hours, forecast, panel };
        command.SetAction(parsed => Run(
            (parsed.GetValue(job), parsed.GetValue(panel)),
            new(parsed.GetValue(air), parsed.GetValue(humidity), parsed.GetValue(surface), parsed.GetValue(hours)),
            parsed.GetValue(forecast),
            faces));
        return command;
    }

    private static int Run((string? Path, string? Panel) job, TypedDay typed, string? forecast, Faces faces)
    {
        if (typed.Complaints().ToList() is { Count: > 0 } complaints)
        {
            complaints.ForEach(faces.Errors.WriteLine);
            return ExitCode.WrongInput;
        }

        if (forecast is not null && typed.IsAny)
        {
            faces.Errors.WriteLine(Say.Of("--forecast brings its own weather; leave out --air, --humidity, --surface and --hours."));
            return ExitCode.WrongInput;
        }

        if (job.Path is null)
        {
            return Tell(new(null, null, null, null), BondingLimits.Usual);
        }

        if (JobSource.ReadJob(job.Path, SideNames.None, faces, out var code) is not { } top)
        {
            return code;
        }

        if (BondedAlike(top, job.Panel, faces) is not { } groups)
        {
            return ExitCode.WrongInput;
        }

        var worst = ExitCode.Done;
        foreach (var (bonding, names) in groups)
        {
            if (groups.Count > 1)
            {
                faces.Output.WriteLine(Say.Of($"Panel {string.Join(", ", names)}:"));
            }

            worst = Math.Max(worst, Tell(bonding.Day, bonding.Limits));
        }

        return worst;

        int Tell(BondingDay day, BondingLimits limits) => forecast is null ? BondingTable.WriteDay(typed.Over(day), limits, faces) : Search(forecast, limits, faces);
    }

    /// <summary>The panels meant, those together that are bonded under the same conditions; null where there is no panel of that name, which is told.</summary>
    private static List<(BondingSpec Bonding, List<string> Names)>? BondedAlike(TopJob top, string? panel, Faces faces)
    {
        var all = top.Mountings.SelectMany(one => top.Twins.Where(twin => twin.Of == one.Mounting).Select(twin => twin.Name).Prepend(one.Mounting).Select(name => (one.Conditions.Bonding, Name: name))).ToList();
        var meant = panel is null ? all : [.. all.Where(each => each.Name == new MountingName(panel))];
        if (meant.Count == 0)
        {
            JobSource.TellNoSuch(panel!, top.HasSeveral, [.. all.Select(each => each.Name)], faces);
            return null;
        }

        return [.. meant.GroupBy(each => (each.Bonding.Day, each.Bonding.Limits)).Select(alike => (alike.First().Bonding, alike.Select(each => each.Name.Text).ToList()))];
    }

    private static int Search(string path, BondingLimits limits, Faces faces)
    {
        if (TextSource.Read(path, Say.Of("forecast file"), Say.Of("docs/weather.md tells what one holds"), faces) is not { } text)
        {
            return ExitCode.NotWritten;
        }

        var forecast = ForecastFile.Read(text, path);
        if (forecast.IsValid)
        {
            return BondingTable.WriteBest(BondingStart.In(forecast.Value.Hours, limits), path, faces);
        }

        foreach (var problem in forecast.Problems)
        {
            faces.Errors.WriteLine(problem);
        }

        return ExitCode.WrongInput;
    }
}
