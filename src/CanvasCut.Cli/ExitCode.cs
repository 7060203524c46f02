namespace CanvasCut.Cli;

/// <summary>What the program tells the shell when it ends; documented in README.md.</summary>
internal static class ExitCode
{
    /// <summary>Done, and no check failed.</summary>
    public const int Done = 0;

    /// <summary>Done, but a check failed.</summary>
    public const int CheckFailed = 1;

    /// <summary>The job file or the command line is wrong; nothing was written.</summary>
    public const int WrongInput = 2;

    /// <summary>A file could not be read or written; earlier results are whole.</summary>
    public const int NotWritten = 3;
}
