using BenchmarkDotNet.Running;
using CanvasCut.Benchmarks;

// "whole" times the program from outside, "pages" many template pages, "nest" lays published tasks; anything else goes to the benchmarks of its parts.
if (args is ["whole", ..])
{
    WholeProcess.Run(Console.Out);
    return 0;
}

if (args is ["pages", ..])
{
    PagesTiming.Run(Console.Out);
    return 0;
}

if (args is ["nest", ..])
{
    return NestingTiming.Run(args, Console.Out);
}

BenchmarkSwitcher.FromAssembly(typeof(JobBenchmarks).Assembly).Run(args);
return 0;
