using System.Diagnostics;
using System.Globalization;
using CanvasCut.Nesting;

namespace CanvasCut.Benchmarks;

/// <summary>Lays 300 pieces for a short and for a long time, and tells how much the long time gains.</summary>
internal static class ShopDayTiming
{
    private const int Pieces = 300;
    private const double MostMebibytes = 500;
    private const double MostPart = 0.02;

    /// <summary>Writes a row for each time, then whether the aims are met; "shop-day [short seconds [long seconds [seed]]]".</summary>
    /// <remarks>With "shop-day steps SHORT LONG [SEED]" the searches end after so many tried places, which a busy machine does not change.</remarks>
    public static void Run(IReadOnlyList<string> args, TextWriter output)
    {
        var inSteps = args is [_, "steps", ..];
        string[] numbers = [.. args.Skip(inSteps ? 2 : 1)];
        double[] limits = [NumberAt(numbers, 0, 10), NumberAt(numbers, 1, 60)];
        var task = ShopDay.Of(Pieces, (ulong)NumberAt(numbers, 2, 1));
        NestingBudget Budget(double limit) => inSteps ? NestingBudget.OfSteps((long)limit) : NestingBudget.OfTime(TimeSpan.FromSeconds(limit));
        output.WriteLine("| search | limit | wall, s | processor, s | length, mm | cloth used % | peak, MiB |\n|---|---|---|---|---|---|---|");
        Row(output, "piece by piece", new BottomLeftSearch(), task, Budget(limits[0]));
        var lengths = limits.Select(limit => Row(output, "pulling apart", new SeparationSearch(), task, Budget(limit))).ToList();
        var more = (lengths[0] - lengths[1]) / lengths[1];
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"\nno layout can be shorter than {new LengthBounds(task).Best(lengths[1]).LengthMm:0.0} mm"));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"with the short limit {100 * more:0.00} % longer than with the long one: {Verdict(more <= MostPart)} (aim: at most 2 %)"));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"peak memory {PeakMebibytes():0} MiB: {Verdict(PeakMebibytes() <= MostMebibytes)} (aim: at most 500)"));
    }

    private static double Row(TextWriter output, string name, INestingSearch search, NestingTask task, NestingBudget budget)
    {
        using var process = Process.GetCurrentProcess();
        var (clock, before) = (Stopwatch.StartNew(), process.TotalProcessorTime);
        var layout = search.Find(task, new(budget)) ?? throw new InvalidOperationException("The pieces cannot be laid.");
        process.Refresh();
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"| {name} | {(budget.Steps < long.MaxValue ? $"{budget.Steps} places" : $"{budget.Time.TotalSeconds} s")} | {clock.Elapsed.TotalSeconds:0.0} | {(process.TotalProcessorTime - before).TotalSeconds:0.0} | {layout.LengthMm:0.0} | {100 * layout.Use:0.0} | {PeakMebibytes():0} |"));
        return layout.LengthMm;
    }

    private static string Verdict(bool isMet) => isMet ? "reached" : "NOT reached";

    private static double PeakMebibytes()
    {
        using var process = Process.GetCurrentProcess();
        return process.PeakWorkingSet64 / 1024.0 / 1024;
    }

    private static double NumberAt(string[] args, int place, double otherwise) =>
        args.Length > place ? double.Parse(args[place], CultureInfo.InvariantCulture) : otherwise;
}
