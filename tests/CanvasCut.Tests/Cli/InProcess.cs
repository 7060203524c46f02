using CanvasCut.Cli;

namespace CanvasCut.Tests.Cli;

/// <summary>A command in the process of the tests.</summary>
internal static class InProcess
{
    /// <summary>Runs it as if its output went into a file.</summary>
    public static (int Code, string Output, string Errors) Run(params string[] arguments)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var errors = new StringWriter { NewLine = "\n" };
        var code = CanvasCutCommand.Run(arguments, new(output, errors, IsTerminal: false));
        return (code, output.ToString(), errors.ToString());
    }
}
