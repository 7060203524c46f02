using CanvasCut.Design;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace CanvasCut.JobFiles;

/// <summary>Reads the text of a file as TOML and reports where it is none.</summary>
internal static class TomlText
{
    private const int MostCharacters = 200_000;
    private const int MostBrackets = 2_000;

    /// <summary>The tables of the file; only those before the first error, and not whole, when its syntax is wrong, which is reported.</summary>
    public static (TomlTable Root, bool IsWhole) Read(string text, string fileName, ProblemLog log)
    {
        if (text.Length > MostCharacters || text.Count(character => character is '[' or '{') > MostBrackets)
        {
            log.Report(ProblemCode.Syntax, new(fileName, 1, 1, string.Empty), "The file is far larger than a job file can be.");
            return (new(new(1, 1)), false);
        }

        var wellFormed = WellFormed(text);
        var document = SyntaxParser.Parse(wellFormed, fileName, validate: false);
        if (document.HasErrors)
        {
            ReportSyntax(document.Diagnostics, fileName, log);
            return (Before(wellFormed, document.Diagnostics.Min(message => message.Span.Start.Line)), false);
        }

        ReportTwice(SyntaxParser.Parse(wellFormed, fileName, validate: true).Diagnostics, fileName, log);
        return (TomlTree.Of(document), true);
    }

    /// <summary>The tables of the lines above a line that is wrong; none when those cannot stand alone.</summary>
    private static TomlTable Before(string text, int line)
    {
        var above = string.Join('\n', text.Split('\n').Take(line)) + "\n";
        var document = SyntaxParser.Parse(above, validate: false);
        return document.HasErrors ? new(new(1, 1)) : TomlTree.Of(document);
    }

    /// <summary>A text with half a character pair, which no file can hold, would stop the parser.</summary>
    private static string WellFormed(string text) => string.Concat(text.EnumerateRunes());

    /// <summary>The first of each line: what the parser says after it in the same line follows from it.</summary>
    private static void ReportSyntax(DiagnosticsBag diagnostics, string fileName, ProblemLog log)
    {
        foreach (var first in diagnostics.GroupBy(message => message.Span.Start.Line).Select(line => line.First()))
        {
            log.Report(ProblemCode.Syntax, PlaceOf(first, fileName), $"This is not TOML: {Readable(first.Message)}.");
        }
    }

    private static void ReportTwice(DiagnosticsBag diagnostics, string fileName, ProblemLog log)
    {
        foreach (var message in diagnostics)
        {
            log.Report(ProblemCode.Twice, PlaceOf(message, fileName), $"{Readable(message.Message)}.");
        }
    }

    private static Place PlaceOf(DiagnosticMessage message, string fileName) =>
        new(fileName, message.Span.Start.Line + 1, message.Span.Start.Column + 1, string.Empty);

    private static string Readable(string message) => message.ReplaceLineEndings(" ").Replace("␤", "the end of the line", StringComparison.Ordinal).TrimEnd('.', ' ');
}
