using System.CommandLine;
using CanvasCut.Language;

namespace CanvasCut.Cli;

/// <summary>The program: its commands and how they end.</summary>
public static class CanvasCutCommand
{
    /// <summary>Runs a command line.</summary>
    /// <param name="arguments">What was typed after the program's name.</param>
    /// <param name="faces">Where to write.</param>
    /// <param name="usualLanguage">The language where none is asked for; null for English.</param>
    /// <returns>The exit code: 0 done, 1 a check failed, 2 wrong input, 3 not read or not written, 4 a fault of the program.</returns>
    public static int Run(string[] arguments, Faces faces, string? usualLanguage = null)
    {
        ArgumentNullException.ThrowIfNull(arguments);
        ArgumentNullException.ThrowIfNull(faces);
        var guarded = faces.Guarded();
        return LastDefence.Of(() => RunGuarded(arguments, guarded, usualLanguage), guarded);
    }

    private static int RunGuarded(string[] arguments, Faces faces, string? usualLanguage)
    {
        var typed = LanguageChoice.Asked(arguments);
        var language = typed ?? (string.IsNullOrEmpty(usualLanguage) ? Languages.English : usualLanguage);
        if (!Languages.Has(language))
        {
            faces.Errors.WriteLine(LanguageChoice.Complaint(language, typed is not null));
            return ExitCode.WrongInput;
        }

        using (Languages.Speak(language))
        {
            return LastDefence.Of(() => RunSpoken(arguments, faces), faces);
        }
    }

    private static int RunSpoken(string[] arguments, Faces faces)
    {
        var root = new RootCommand(Say.Of("Cut patterns, checks and orders for a removable canvas carrier that holds a flexible solar panel on a cloth top."))
        {
            MakeCommand.Create(faces),
            CheckCommand.Create(faces),
            OrderCommand.Create(faces),
            ClothCommand.Create(faces),
            WorkCommand.Create(faces),
            WiringCommand.Create(faces),
            YieldCommand.Create(faces),
            CompareCommand.Create(faces),
            CompareMountsCommand.Create(faces),
            NewCommand.Create(faces),
            ScaleCommand.Create(faces),
            BondingCommand.Create(faces),
            MeasureCommand.Create(faces),
            RefitCommand.Create(faces),
            LanguageChoice.Option(),
        };
        SpokenHelp.On(root);
        var parsed = root.Parse(arguments.Length > 0 ? arguments : ["--help"]);
        if (parsed.Errors.Count == 0)
        {
            return parsed.Invoke(new InvocationConfiguration { Output = faces.Output, Error = faces.Errors, EnableDefaultExceptionHandler = false });
        }

        foreach (var error in parsed.Errors)
        {
            faces.Errors.WriteLine(error.Message);
        }

        faces.Errors.WriteLine(Say.Of("canvascut --help tells of the commands."));
        return ExitCode.WrongInput;
    }
}
