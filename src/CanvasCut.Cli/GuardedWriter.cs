using System.Text;
using CanvasCut.Language;

namespace CanvasCut.Cli;

/// <summary>Lets no control character of a person's file reach the terminal, and tells a broken output from other faults.</summary>
/// <remarks>What this program itself sends to move or colour goes to <see cref="Plain"/>.</remarks>
internal sealed class GuardedWriter : TextWriter
{
    private readonly TextWriter _to;
    private readonly bool _shows;

    public GuardedWriter(TextWriter to)
        : this(to, shows: true)
    {
    }

    private GuardedWriter(TextWriter to, bool shows) => (_to, _shows, NewLine) = (to, shows, to.NewLine);

    /// <summary>Writes what it is given as it is.</summary>
    public GuardedWriter Plain => new(_to, shows: false);

    /// <inheritdoc/>
    public override Encoding Encoding => _to.Encoding;

    /// <inheritdoc/>
    public override void Write(char value) => Write(value.ToString());

    /// <inheritdoc/>
    public override void Write(char[] buffer, int index, int count) => Write(new string(buffer, index, count));

    /// <inheritdoc/>
    public override void Write(string? value) => Send(_shows ? VisibleText.OfLines(value ?? string.Empty) : value ?? string.Empty);

    /// <summary>One line, whatever the text holds.</summary>
    public override void WriteLine(string? value) => Send((_shows ? VisibleText.OfLine(value ?? string.Empty) : value) + NewLine);

    /// <inheritdoc/>
    public override void WriteLine(object? value) => WriteLine(value?.ToString());

    /// <inheritdoc/>
    public override void Flush() => Guard(_to.Flush);

    private void Send(string text) => Guard(() => _to.Write(text));

    private static void Guard(Action write)
    {
        try
        {
            write();
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ObjectDisposedException)
        {
            throw new OutputBrokenException(exception.Message, exception);
        }
    }
}

/// <summary>What a command tells cannot be written: the disk behind the output is full, or it is closed.</summary>
internal sealed class OutputBrokenException : Exception
{
    public OutputBrokenException()
    {
    }

    public OutputBrokenException(string message)
        : base(message)
    {
    }

    public OutputBrokenException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
