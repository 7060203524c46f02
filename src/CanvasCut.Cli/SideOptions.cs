using System.CommandLine;
using CanvasCut.Language;

namespace CanvasCut.Cli;

/// <summary>The options <c>--materials FILE</c>, <c>--prices FILE</c> and <c>--panel NAME</c>.</summary>
internal sealed class SideOptions
{
    private readonly Option<string?> _materials = new("--materials") { Description = Say.Of("Grades of your own, in place of the job's materials file.") };
    private readonly Option<string?> _panel = Panel();
    private readonly Option<string?> _prices = new("--prices") { Description = Say.Of("Prices, in place of the job's price file.") };

    /// <summary>The option <c>--panel NAME</c> alone.</summary>
    public static Option<string?> Panel() => new("--panel") { Description = Say.Of("Of several panels only this one, by its name in the job file.") };

    /// <summary>Puts the options on a command.</summary>
    public void AddTo(Command command)
    {
        command.Add(_materials);
        command.Add(_prices);
        command.Add(_panel);
    }

    /// <summary>What was typed.</summary>
    public SideNames Of(ParseResult parsed) => new(parsed.GetValue(_materials), parsed.GetValue(_prices)) { Panel = parsed.GetValue(_panel) };
}

/// <summary>The files named on the command line; null for those that are not.</summary>
/// <param name="Materials">Relative to where the command runs.</param>
/// <param name="Prices">Relative to where the command runs.</param>
internal sealed record SideNames(string? Materials, string? Prices)
{
    /// <summary>None named.</summary>
    public static SideNames None { get; } = new(null, null);

    /// <summary>The panel that is meant of several; null for all, or for the only one.</summary>
    public string? Panel { get; init; }
}
