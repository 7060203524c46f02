using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using CanvasCut.Language;

namespace CanvasCut.Cli;

/// <summary>The help in the language of the moment; the library that writes it has headings of its own.</summary>
internal sealed class SpokenHelp(HelpAction help) : SynchronousCommandLineAction
{
    /// <summary>Puts it on a command line.</summary>
    public static void On(RootCommand root)
    {
        var option = root.Options.OfType<HelpOption>().Single();
        option.Description = Say.Of("Shows this help.");
        option.Action = new SpokenHelp((HelpAction)option.Action!);
        root.Options.OfType<VersionOption>().Single().Description = Say.Of("Shows the version.");
    }

    /// <summary>Help is given whatever else is missing on the line.</summary>
    public override bool ClearsParseErrors => true;

    /// <summary>How wide the help is in a terminal of so many columns.</summary>
    internal static int WidthIn(int columns) => Math.Max(columns, Faces.LeastWidth);

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        var output = parseResult.InvocationConfiguration.Output;
        using var written = new StringWriter { NewLine = output.NewLine };
        parseResult.InvocationConfiguration.Output = written;
        help.MaxWidth = WidthIn(help.MaxWidth);
        int code;
        using (Languages.Speak(Languages.English))
        {
            code = help.Invoke(parseResult);
        }

        parseResult.InvocationConfiguration.Output = output;
        output.Write(Headings().Aggregate(written.ToString(), (text, heading) => text.Replace(heading.Written, heading.Spoken, StringComparison.Ordinal)));
        return code;
    }

    /// <summary>What the library writes; it is asked for English, for it does not have all of it in every language.</summary>
    private static IEnumerable<(string Written, string Spoken)> Headings() =>
    [
        ("Description:\n", Say.Of("What it is for:") + "\n"), ("Usage:\n", Say.Of("Usage:") + "\n"), ("Arguments:\n", Say.Of("Arguments:") + "\n"),
        ("Options:\n", Say.Of("Options:") + "\n"), ("Commands:\n", Say.Of("Commands:") + "\n"),
        ("[command]", Say.Of("[command]")), ("[options]", Say.Of("[options]")), ("[default: ", Say.Of("[usual: ")),
    ];
}
