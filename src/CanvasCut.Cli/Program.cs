using System.Text;
using CanvasCut.Cli;

Console.OutputEncoding = Encoding.UTF8;
return CanvasCutCommand.Run(args, new(Console.Out, Console.Error, !Console.IsOutputRedirected, !Console.IsErrorRedirected), Environment.GetEnvironmentVariable(LanguageChoice.Variable));
