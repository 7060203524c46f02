using System.CommandLine;
using CanvasCut.Checks;
using CanvasCut.Electrics;
using CanvasCut.Job;
using CanvasCut.Language;
using CanvasCut.Sheets;
using Spectre.Console;

namespace CanvasCut.Cli;

/// <summary><c>canvascut wiring JOB [--open V --short A --back T [--sun W] [--string N]]</c></summary>
internal static class WiringCommand
{
    public static Command Create(Faces faces)
    {
        var job = new Argument<string>("JOB") { Description = Say.Of("The job file, with its [electric] table.") };
        var open = new Option<string?>("--open") { Description = Say.Of("The open voltage measured on a string, as in 21.3V.") };
        var shorted = new Option<string?>("--short") { Description = Say.Of("Its short-circuit current, as in 4.2A.") };
        var back = new Option<string?>("--back") { Description = Say.Of("The back of a panel, as in 52C.") };
        var sun = new Option<string?>("--sun") { Description = Say.Of("The sun in the panel's plane by a meter, in W/m2; left out, it follows from the current.") };
        var number = new Option<int>("--string") { Description = Say.Of("Which string was measured."), DefaultValueFactory = _ => 1 };
        var command = new Command("wiring", Say.Of("Tells strings, voltages, wires and fuses of a job, or what a measured string means; writes nothing.")) { job, open, shorted, back, sun, number };
        command.SetAction(parsed => Run(
            parsed.GetRequiredValue(job),
            new(parsed.GetValue(open), parsed.GetValue(shorted), parsed.GetValue(back), parsed.GetValue(sun), parsed.GetValue(number)),
            faces));
        return command;
    }

    private static int Run(string path, TypedReading typed, Faces faces)
    {
        if (typed.Complaints().ToList() is { Count: > 0 } complaints)
        {
            complaints.ForEach(faces.Errors.WriteLine);
            return ExitCode.WrongInput;
        }

        if (JobSource.ReadTop(path, (null, SideNames.None), faces, out var code) is not { } top)
        {
            return code;
        }

        if (top.Wiring is not { } plan)
        {
            faces.Errors.WriteLine(Say.Of("This job tells nothing of its wiring; docs/job-file.md tells of [electric]."));
            return ExitCode.WrongInput;
        }

        return typed.IsAny ? Judge(plan, typed, faces) : Show(plan, top, faces);
    }

    private static int Judge(WiringPlan plan, TypedReading typed, Faces faces)
    {
        if (plan.Strings.FirstOrDefault(one => one.Number == typed.String) is not { } measured)
        {
            faces.Errors.WriteLine(Say.Of($"There is no string {typed.String}; the job has {plan.Strings.Count()}."));
            return ExitCode.WrongInput;
        }

        foreach (var line in ReadingText.Of(measured, typed.Reading))
        {
            faces.Output.WriteLine(line);
        }

        return ExitCode.Done;
    }

    private static int Show(WiringPlan plan, TopRun top, Faces faces)
    {
        Cautions(CautionAbout.Everything, faces);
        Table(Say.Of("Strings"), WiringText.Strings(plan), CautionAbout.Strings, faces);
        Table(Say.Of("Wires"), WiringText.Wires(plan, top.Context.Units), CautionAbout.Wires, faces);
        Table(Say.Of("Fuses and breakers"), WiringText.Devices(plan), CautionAbout.Devices, faces);
        var checks = ElectricChecks.Of(plan);
        CheckTable.WriteAdvice(checks, faces);
        faces.Output.WriteLine(CheckText.Count(checks));
        return checks.Any(check => check.Verdict == Verdict.Fail) ? ExitCode.CheckFailed : ExitCode.Done;
    }

    private static void Table(string heading, WordTable words, CautionAbout about, Faces faces)
    {
        faces.Output.WriteLine();
        faces.Output.WriteLine(heading);
        var table = new Table { Border = TableBorder.Simple };
        table.AddColumns([.. words.Heads]);
        foreach (var row in words.Rows)
        {
            table.AddRow(row.Select(cell => new Text(cell)));
        }

        faces.Console().Write(table);
        Cautions(about, faces);
    }

    private static void Cautions(CautionAbout about, Faces faces)
    {
        foreach (var caution in ElectricCautions.Of(about))
        {
            faces.Output.WriteLine($"! {caution}");
        }
    }
}
