using Spectre.Console;

namespace CanvasCut.Cli;

/// <summary>Where a command writes: results to one side, complaints to the other.</summary>
/// <param name="Output">Results.</param>
/// <param name="Errors">Complaints.</param>
/// <param name="IsTerminal">Whether a person reads the output on a terminal; else there is no colour.</param>
/// <param name="IsLive">Whether a person watches the complaints on a terminal; else no line there is written over.</param>
public sealed record Faces(TextWriter Output, TextWriter Errors, bool IsTerminal, bool IsLive = false)
{
    private const int WidthWhenPiped = 120;

    /// <summary>Narrower terminals break lines themselves; tables and help of a few columns would never come to an end.</summary>
    internal const int LeastWidth = 40;

    /// <summary>A console for tables on the output.</summary>
    public IAnsiConsole Console()
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = IsTerminal ? AnsiSupport.Detect : AnsiSupport.No,
            ColorSystem = IsTerminal ? ColorSystemSupport.Detect : ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Out = new AnsiConsoleOutput(Plain(Output)),
        });
        console.Profile.Width = IsTerminal ? Math.Max(console.Profile.Width, LeastWidth) : WidthWhenPiped;
        return console;
    }

    /// <summary>The same, but that nothing of a person's file can move or colour the terminal.</summary>
    internal Faces Guarded() => this with { Output = new GuardedWriter(Output), Errors = new GuardedWriter(Errors) };

    /// <summary>The writer for what the program itself sends to move or colour.</summary>
    internal static TextWriter Plain(TextWriter writer) => writer is GuardedWriter guarded ? guarded.Plain : writer;
}
