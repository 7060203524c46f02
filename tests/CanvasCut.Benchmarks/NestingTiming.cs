using System.Globalization;
using System.Text;
using System.Text.Json;
using CanvasCut.Nesting;

namespace CanvasCut.Benchmarks;

/// <summary>Lays out published tasks and writes a table, and each layout as JSON and SVG.</summary>
internal static class NestingTiming
{
    private const string Usage = "nest --set DIR [--seconds S | --steps N] [--seeds 1,2,3] [--search thorough|contact|separation|bottom-left] [--turns quarter] [--only a,b] [--out DIR]";

    public static int Run(IReadOnlyList<string> args, TextWriter output)
    {
        if (Option(args, "--set") is not { } folder || !Directory.Exists(folder))
        {
            output.WriteLine(Usage);
            return 1;
        }

        var only = Option(args, "--only")?.Split(',');
        int[] seeds = [.. (Option(args, "--seeds") ?? Option(args, "--seed") ?? "1").Split(',').Select(seed => int.Parse(seed, CultureInfo.InvariantCulture))];
        output.WriteLine($"| instance | pieces | area bound | {string.Join(" | ", seeds.Select(seed => $"seed {seed}"))} | median | density % | seconds | processor seconds |");
        output.WriteLine($"|---|---|---|{string.Concat(seeds.Select(_ => "---|"))}---|---|---|---|");
        foreach (var instance in NestingInstance.In(folder, Option(args, "--turns") == "quarter").Where(instance => only?.Contains(instance.Name) ?? true))
        {
            var runs = seeds.Select(seed => NestingRun.Of(instance, SearchOf(args), ControlOf(args, seed))).ToList();
            output.WriteLine(Row(instance, runs));
            Keep(Option(args, "--out"), instance.Name, runs.MinBy(run => run.Layout.LengthMm)!.Layout);
        }

        return 0;
    }

    private static INestingSearch SearchOf(IReadOnlyList<string> args) => Option(args, "--search") switch
    {
        "bottom-left" => new BottomLeftSearch(),
        "contact" => new ContactSearch(),
        "separation" => new SeparationSearch(),
        _ => new ThoroughSearch(),
    };

    private static NestingControl ControlOf(IReadOnlyList<string> args, int seed) => Option(args, "--steps") is { } steps
        ? new(NestingBudget.OfSteps(long.Parse(steps, CultureInfo.InvariantCulture)), seed)
        : new(NestingBudget.OfTime(TimeSpan.FromSeconds(double.Parse(Option(args, "--seconds") ?? "60", CultureInfo.InvariantCulture))), seed);

    private static string? Option(IReadOnlyList<string> args, string name) =>
        args.Zip(args.Skip(1)).Where(pair => pair.First == name).Select(pair => pair.Second).FirstOrDefault();

    /// <summary>The median of an even number of runs is the longer of the two in the middle.</summary>
    private static string Row(NestingInstance instance, List<NestingRun> runs)
    {
        var boundMm = instance.Task.AreaMm2 / instance.Task.StripWidthMm;
        var median = runs.OrderBy(run => run.Layout.LengthMm).ElementAt(runs.Count / 2).Layout;
        var lengths = string.Join(" | ", runs.Select(run => run.Layout.LengthMm.ToString("0.####", CultureInfo.InvariantCulture)));
        return string.Create(
            CultureInfo.InvariantCulture,
            $"| {instance.Name} | {median.Placements.Length} | {boundMm:0.###} | {lengths} | {median.LengthMm:0.####} | {100 * median.Use:0.00} | {runs.Average(run => run.Seconds):0.0} | {runs.Average(run => run.ProcessorSeconds):0.0} |");
    }

    private static void Keep(string? folder, string name, NestingLayout layout)
    {
        if (folder is not null)
        {
            Directory.CreateDirectory(folder);
            File.WriteAllText(Path.Combine(folder, name + ".json"), Json(name, layout));
            File.WriteAllText(Path.Combine(folder, name + ".svg"), Svg(layout));
        }
    }

    private static string Json(string name, NestingLayout layout) => JsonSerializer.Serialize(new
    {
        name,
        length = layout.LengthMm,
        placements = layout.Placements.Select(p => new { item = p.Item, copy = p.Copy, degrees = p.Pose.Degrees, mirrored = p.Pose.IsMirrored, x = p.Offset.X, y = p.Offset.Y }),
    });

    private static string Svg(NestingLayout layout)
    {
        var text = new StringBuilder();
        var (along, across) = (layout.LengthMm, layout.Task.StripWidthMm);
        text.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {along} {across}\" stroke-width=\"{across / 400}\" fill=\"none\" stroke=\"black\">\n");
        text.Append(CultureInfo.InvariantCulture, $"<g transform=\"matrix(1 0 0 -1 0 {across})\"><rect width=\"{along}\" height=\"{across}\"/>\n");
        foreach (var outline in Enumerable.Range(0, layout.Placements.Length).Select(layout.PlacedOutline))
        {
            var points = string.Join(' ', outline.Corners.Select(corner => string.Create(CultureInfo.InvariantCulture, $"{corner.X},{corner.Y}")));
            text.Append(CultureInfo.InvariantCulture, $"<polygon fill=\"#ddd\" points=\"{points}\"/>\n");
        }

        return text.Append("</g></svg>\n").ToString();
    }
}
