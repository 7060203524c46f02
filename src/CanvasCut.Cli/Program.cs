using System.Runtime.InteropServices;
using System.Text;
using CanvasCut.Cli;
using CanvasCut.Job;

Console.OutputEncoding = Encoding.UTF8;

// Whoever asks it to stop gets no half-made files left behind.
static void Stop(PosixSignalContext context)
{
    context.Cancel = true;
    MakingFolder.EndAll();
    Environment.Exit(ExitCode.Stopped);
}

using var interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, Stop);
using var terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, Stop);
using var hangUp = PosixSignalRegistration.Create(PosixSignal.SIGHUP, Stop);
return CanvasCutCommand.Run(args, new(Console.Out, Console.Error, !Console.IsOutputRedirected, !Console.IsErrorRedirected), Environment.GetEnvironmentVariable(LanguageChoice.Variable));
