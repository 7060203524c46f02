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

    /// <summary>The program itself went wrong; no file is half written.</summary>
    public const int Fault = 4;

    /// <summary>Asked to stop, as by Ctrl-C; no file is half written. The shell's own number for it.</summary>
    public const int Stopped = 130;
}
