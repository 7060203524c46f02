using System.Diagnostics;
using CanvasCut.Nesting;

namespace CanvasCut.Benchmarks;

/// <summary>A layout and what it took.</summary>
/// <param name="Layout">The layout.</param>
/// <param name="Seconds">By the clock.</param>
/// <param name="ProcessorSeconds">Of both cores together; on a busy machine this tells more.</param>
internal sealed record NestingRun(NestingLayout Layout, double Seconds, double ProcessorSeconds)
{
    /// <summary>Lays out a task.</summary>
    public static NestingRun Of(NestingInstance instance, INestingSearch search, NestingControl control)
    {
        var (clock, before) = (Stopwatch.StartNew(), Environment.CpuUsage.TotalTime);
        var layout = search.Find(instance.Task, control) ?? throw new InvalidOperationException($"{instance.Name} cannot be laid.");
        return new(layout, clock.Elapsed.TotalSeconds, (Environment.CpuUsage.TotalTime - before).TotalSeconds);
    }
}
