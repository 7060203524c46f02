using System.Text.RegularExpressions;
using CanvasCut.Language;
using Tomlyn.Syntax;

namespace CanvasCut.JobFiles;

/// <summary>
/// Takes out of a text, one after the other, the lines that are no TOML, so that the rest can still be read and one
/// slip does not hide the next or make others appear.
/// </summary>
internal sealed partial class TomlRepair
{
    private const int MostErrors = 25;
    private static string NotClosed => Say.Of("This is not TOML: something that begins above is not closed, a bracket or a quote.");

    private readonly List<(TextPlace Place, string Message)> _errors = [];
    private string[] _lines;

    public TomlRepair(string text)
    {
        _lines = text.Split('\n');
        var end = _lines.Length;
        while (_errors.Count < MostErrors && First() is { } error)
        {
            end = Math.Min(end, TakeOut(error));
            if (end == _lines.Length)
            {
                break;
            }
        }

        _lines = _lines[..Math.Min(end, _lines.Length)];
        for (var drops = 0; First() is not null; drops++)
        {
            // What was never closed begins a little further up.
            _lines = drops < MostErrors ? _lines[..^1] : [];
        }
    }

    /// <summary>Where the text is no TOML, and why.</summary>
    public IReadOnlyList<(TextPlace Place, string Message)> Errors => _errors;

    /// <summary>What is left, line for line in its place; its syntax is right.</summary>
    public string Text => string.Join('\n', _lines);

    private DiagnosticMessage? First() => TomlSyntax.Of(Text).Diagnostics.MinBy(message => message.Span.Start.Offset);

    /// <summary>Empties the line of an error and tells from which line on nothing can be read any more.</summary>
    private int TakeOut(DiagnosticMessage error)
    {
        var isAtEnd = error.Message.Contains("<eof>", StringComparison.Ordinal) || error.Message.Contains("End-Of-File", StringComparison.Ordinal);
        var index = isAtEnd ? _lines.Length - 1 : Math.Clamp(error.Span.Start.Line, 0, _lines.Length - 1);
        var line = _lines[index];
        var isRightAlone = !TomlSyntax.Of(line).HasErrors;
        _errors.Add((new(index + 1, isAtEnd ? 1 : error.Span.Start.Column + 1), isAtEnd || isRightAlone ? NotClosed : Message(error, line)));
        _lines[index] = string.Empty;

        // Without its heading, what follows would seem to be in another table; a quote or bracket left open swallows it.
        if (isRightAlone || isAtEnd)
        {
            _lines = _lines[..index];
        }

        return isRightAlone || isAtEnd || line.TrimStart().StartsWith('[') ? index : int.MaxValue;
    }

    private static string Message(DiagnosticMessage error, string line) =>
        BareDate().IsMatch(line) ? Say.Of("This is not TOML: there is no such day; a date is year, month and day, such as 2027-04-01.")
        : BareValue().IsMatch(line) ? Say.Of("This is not TOML: the value needs quotes round it, as in \"1040 mm\".")
        : error.Message.Contains("newline in a string", StringComparison.Ordinal) ? Say.Of("This is not TOML: the quote that closes the text is missing.")
        : Say.Of($"This is not TOML: {error.Message.ReplaceLineEndings(" ").Replace("␤", Say.Of("the end of the line"), StringComparison.Ordinal).TrimEnd('.', ' ')}.");

    [GeneratedRegex(@"^[^#=]*=\s*[0-9]{4}-[0-9]{2}-[0-9]{2}\s*(#.*)?$", RegexOptions.CultureInvariant)]
    private static partial Regex BareDate();

    [GeneratedRegex(@"^[^#=]*=\s*[-+]?[0-9][^""#]*[^""0-9\s#\],}]", RegexOptions.CultureInvariant)]
    private static partial Regex BareValue();
}
