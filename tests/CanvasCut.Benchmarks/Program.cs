using BenchmarkDotNet.Running;
using CanvasCut.Benchmarks;

// "whole" times the program from outside; anything else goes to the benchmarks of its parts.
if (args is ["whole", ..])
{
    WholeProcess.Run(Console.Out);
    return 0;
}

BenchmarkSwitcher.FromAssembly(typeof(JobBenchmarks).Assembly).Run(args);
return 0;
