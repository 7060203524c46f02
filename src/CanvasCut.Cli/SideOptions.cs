using System.CommandLine;
using CanvasCut.Language;

namespace CanvasCut.Cli;

/// <summary>The options <c>--materials FILE</c> and <c>--prices FILE</c>.</summary>
internal sealed class SideOptions
{
    private readonly Option<string?> _materials = new("--materials") { Description = Say.Of("Grades of your own, in place of the job's materials file.") };
    private readonly Option<string?> _prices = new("--prices") { Description = Say.Of("Prices, in place of the job's price file.") };

    /// <summary>Puts the options on a command.</summary>
    public void AddTo(Command command)
    {
        command.Add(_materials);
        command.Add(_prices);
    }

    /// <summary>What was typed.</summary>
    public SideNames Of(ParseResult parsed) => new(parsed.GetValue(_materials), parsed.GetValue(_prices));
}

/// <summary>The files named on the command line; null for those that are not.</summary>
/// <param name="Materials">Relative to where the command runs.</param>
/// <param name="Prices">Relative to where the command runs.</param>
internal sealed record SideNames(string? Materials, string? Prices)
{
    /// <summary>None named.</summary>
    public static SideNames None { get; } = new(null, null);
}
