using BenchmarkDotNet.Running;
using CanvasCut.Benchmarks;

// "whole" times the program from outside, "pages" many template pages, "nest" lays published tasks, "checks" the checks of the examples,
// "together" several panels, "plans" the cut plans of the examples, "shop-day" 300 pieces at once;
// anything else goes to the benchmarks of its parts.
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

if (args is ["checks", ..])
{
    ChecksTiming.Run(Console.Out);
    return 0;
}

if (args is ["together", ..])
{
    TogetherTiming.Run(Console.Out);
    return 0;
}

if (args is ["plans", ..])
{
    PlansTiming.Run(Console.Out);
    return 0;
}

if (args is ["shop-day", ..])
{
    ShopDayTiming.Run(args, Console.Out);
    return 0;
}

BenchmarkSwitcher.FromAssembly(typeof(JobBenchmarks).Assembly).Run(args);
return 0;
