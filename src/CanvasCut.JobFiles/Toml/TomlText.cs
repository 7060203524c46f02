using System.Text.RegularExpressions;
using CanvasCut.Design;
using CanvasCut.Language;
using Tomlyn.Syntax;

namespace CanvasCut.JobFiles;

/// <summary>Reads the text of a file as TOML and reports where it is none.</summary>
internal static partial class TomlText
{
    private const int MostCharacters = 100_000;
    private const int MostBrackets = 2_000;

    /// <summary>
    /// The tables of the file. Where its syntax is wrong, which is reported, lines are read as they were meant; without those where that is not
    /// plain, and then the file is not whole.
    /// </summary>
    public static (TomlTable Root, bool IsWhole) Read(string text, string fileName, ProblemLog log)
    {
        if (text.Length > MostCharacters || text.Count(character => character is '[' or '{') > MostBrackets)
        {
            log.Report(ProblemCode.Syntax, new(fileName, 1, 1, string.Empty), Say.Of("The file is far larger than a job file can be."));
            return (new(new(1, 1)), false);
        }

        try
        {
            return Parse(WellFormed(text), fileName, log);
        }
        catch (Exception failure) when (failure is Tomlyn.TomlException or ArgumentOutOfRangeException)
        {
            // Tomlyn throws at lists within lists without end, and at characters that end within an escape.
            log.Report(ProblemCode.Syntax, new(fileName, 1, 1, string.Empty), Say.Of("This cannot be read as TOML at all; look for lists within lists and for odd characters after a backslash."));
            return (new(new(1, 1)), false);
        }
    }

    private static (TomlTable Root, bool IsWhole) Parse(string text, string fileName, ProblemLog log)
    {
        var repair = new TomlRepair(text);
        foreach (var (place, message) in repair.Errors)
        {
            log.Report(ProblemCode.Syntax, new(fileName, place.Line, place.Column, string.Empty), message);
        }

        ReportTwice(TomlSyntax.Of(repair.Text, validate: true).Diagnostics, fileName, log);
        return (TomlTree.Of(TomlSyntax.Of(repair.Text)), repair.IsRepaired);
    }

    /// <summary>Without a byte order mark, and without halves of character pairs, which no file can hold and which would stop the parser.</summary>
    private static string WellFormed(string text) => string.Concat(text.TrimStart('\uFEFF').EnumerateRunes());

    private static void ReportTwice(DiagnosticsBag diagnostics, string fileName, ProblemLog log)
    {
        foreach (var message in diagnostics)
        {
            var (start, match) = (message.Span.Start, AlreadyDefined().Match(message.Message));
            var what = match.Success
                ? Say.Of($"stands already in line {match.Groups["line"].Value}; write each field and table once.")
                : Say.Of($"This is not TOML: {message.Message.ReplaceLineEnds()}.");
            log.Report(ProblemCode.Twice, new(fileName, start.Line + 1, start.Column + 1, match.Groups["key"].Value), what);
        }
    }

    private static string ReplaceLineEnds(this string message) => message.ReplaceLineEndings(" ").TrimEnd('.', ' ');

    [GeneratedRegex(@"^The key `(?<key>[^`]*)` is already defined at \((?<line>[0-9]+),", RegexOptions.CultureInvariant)]
    private static partial Regex AlreadyDefined();
}
