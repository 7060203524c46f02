using BenchmarkDotNet.Attributes;
using CanvasCut.Job;

namespace CanvasCut.Benchmarks;

/// <summary>The parts of making the built-in example, as ratios to reading and working it out.</summary>
/// <remarks>In this process: a project made on the way would not see what ours refer to, for references are not handed on.</remarks>
[InProcess]
[MemoryDiagnoser]
public class JobBenchmarks
{
    private readonly string _text = BuiltInExample.Text;
    private JobRun _outcome = null!;

    /// <summary>Works the example out once, for the parts that need it.</summary>
    [GlobalSetup]
    public void SetUp() => _outcome = Outcome();

    /// <summary>Reads the job, chooses the place, makes the pieces, checks them and lays them out.</summary>
    [Benchmark(Baseline = true)]
    public JobRun Outcome() => JobRun.Of(_text, BuiltInExample.FileName).Value
        ?? throw new InvalidOperationException("The built-in example is not valid.");

    /// <summary>Draws and writes every file, in memory.</summary>
    [Benchmark]
    public int Files() => ResultFiles.Of(_outcome).Length;
}
