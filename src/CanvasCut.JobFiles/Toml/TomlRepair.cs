using CanvasCut.Language;

namespace CanvasCut.JobFiles;

/// <summary>
/// Goes through a text line by line, and puts in the place of what is no TOML what was meant, or nothing where that is
/// not plain, so that one slip does not hide the next or make others appear.
/// </summary>
internal sealed class TomlRepair
{
    private const int MostErrors = 25;

    /// <summary>A list that runs on for longer was never closed; it also bounds the work.</summary>
    private const int LongestBlock = 200;

    private readonly List<(TextPlace Place, string Message)> _errors = [];
    private readonly string[] _lines;

    public TomlRepair(string text)
    {
        _lines = text.Split('\n');
        for (var at = 0; at < _lines.Length;)
        {
            at = _errors.Count < MostErrors ? After(at) : Empty(at, _lines.Length);
        }

        // Each line is right for itself; should they not be so together, nothing of them is.
        if (TomlSyntax.Of(Text).HasErrors)
        {
            IsRepaired = false;
            Empty(0, _lines.Length);
            _errors.Add((new(1, 1), Say.Of("This cannot be read as TOML at all; look for lists within lists and for odd characters after a backslash.")));
        }
    }

    /// <summary>Where the text is no TOML, and why.</summary>
    public IReadOnlyList<(TextPlace Place, string Message)> Errors => _errors;

    /// <summary>What is left or was meant, line for line in its place; its syntax is right.</summary>
    public string Text => string.Join('\n', _lines);

    /// <summary>Whether nothing had to be left out, so that fields can be held against each other.</summary>
    public bool IsRepaired { get; private set; } = true;

    /// <summary>Reads what begins at a line and tells where the next thing begins.</summary>
    private int After(int at)
    {
        var line = _lines[at];
        if (!TomlSyntax.Of(line).HasErrors)
        {
            return at + 1;
        }

        if (TomlSlip.IsOpen(line))
        {
            return AfterBlock(at);
        }

        var (message, meant) = TomlSlip.Of(line);
        Report(at, TomlSlip.ColumnOf(line), message, meant);
        return meant is null && line.TrimStart().StartsWith('[') ? Empty(at + 1, NextHeading(at + 1)) : at + 1;
    }

    /// <summary>A list or a text that runs over several lines.</summary>
    private int AfterBlock(int at)
    {
        for (var after = at + 1; after < _lines.Length && after - at < LongestBlock && !TomlSlip.IsHeading(_lines[after]); after++)
        {
            var whole = string.Join('\n', _lines[at..(after + 1)]);
            if (!TomlSlip.IsOpen(whole) && !TomlSyntax.Of(whole).HasErrors)
            {
                return after + 1;
            }
        }

        // It was not closed, or is wrong inside: what looks like the next field is taken for that.
        var end = Array.FindIndex(_lines, at + 1, TomlSlip.Begins) is var next and >= 0 ? Math.Min(next, at + LongestBlock) : Math.Min(_lines.Length, at + LongestBlock);
        var block = string.Join('\n', _lines[at..end]);
        if (TomlSlip.IsOpen(block))
        {
            Report(at, TomlSlip.ColumnOf(block), Say.Of("This is not TOML: something that begins here is not closed, a bracket or a quote."), null);
        }
        else
        {
            var first = TomlSyntax.Of(block).Diagnostics.MinBy(message => message.Span.Start.Offset)!;
            Report(Math.Min(at + first.Span.Start.Line, end - 1), first.Span.Start.Column + 1, TomlSlip.Of(block).Message, null);
        }

        return Empty(at, end);
    }

    private void Report(int at, int column, string message, string? meant)
    {
        _errors.Add((new(at + 1, column), message));
        _lines[at] = meant ?? string.Empty;
        IsRepaired &= meant is not null;
    }

    /// <summary>Without its heading, what follows would seem to be in another table.</summary>
    private int NextHeading(int from)
    {
        var next = Array.FindIndex(_lines, from, line => line.TrimStart().StartsWith('['));
        return next < 0 ? _lines.Length : next;
    }

    private int Empty(int from, int to)
    {
        Array.Fill(_lines, string.Empty, from, to - from);
        IsRepaired = false;
        return to;
    }
}
