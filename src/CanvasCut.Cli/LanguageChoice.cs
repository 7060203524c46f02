using System.CommandLine;
using CanvasCut.Language;

namespace CanvasCut.Cli;

/// <summary>The option <c>--language CODE</c>, which stands with every command.</summary>
/// <remarks>It is looked for before anything else is read, for help and complaints are in that language too.</remarks>
internal static class LanguageChoice
{
    /// <summary>What sets the language where the option is not given.</summary>
    public const string Variable = "CANVASCUT_LANGUAGE";

    private const string Name = "--language";

    /// <summary>The option, for the help and so that the parser knows it.</summary>
    public static Option<string?> Option() => new(Name)
    {
        Description = Say.Of($"What is printed is in this language: {Codes()}; else as {Variable} says, else en."),
        HelpName = "CODE",
        Recursive = true,
    };

    /// <summary>The language that is asked for; null where none is.</summary>
    /// <param name="arguments">The command line.</param>
    public static string? Asked(string[] arguments)
    {
        var at = Array.FindLastIndex(arguments, each => each == Name || each.StartsWith($"{Name}=", StringComparison.Ordinal) || each.StartsWith($"{Name}:", StringComparison.Ordinal));
        return at < 0 ? null
            : arguments[at].Length > Name.Length ? arguments[at][(Name.Length + 1)..]
            : at + 1 < arguments.Length ? arguments[at + 1] : null;
    }

    /// <summary>What is wrong with a code that is asked for.</summary>
    /// <param name="asked">The code.</param>
    /// <param name="isTyped">Whether it stands on the command line and not in the environment.</param>
    public static string Complaint(string asked, bool isTyped) => Say.Of($"{(isTyped ? Name : Variable)} \"{asked}\" is no language of this program; write one of {Codes()}.");

    private static string Codes() => string.Join(", ", Languages.Known);
}
