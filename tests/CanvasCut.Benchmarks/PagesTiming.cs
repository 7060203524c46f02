using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using CanvasCut.Drawing;
using CanvasCut.Drawing.Pages;
using CanvasCut.Export.Pdf;
using CanvasCut.Geometry;

namespace CanvasCut.Benchmarks;

/// <summary>A large made-up piece on about 300 pages, against a bare PDF of as many pages and lines.</summary>
internal static class PagesTiming
{
    private const int Runs = 3;

    private static readonly TilePiece Piece = new("sheet", "A made-up sheet",
    [
        .. Enumerable.Range(0, 60).Select(i => Stroke.Closed(i == 0 ? LineRole.Cut : LineRole.Mark, Outline.Of(new(i * 20, i * 20, 4700 - (i * 20), 2850 - (i * 20))))),
    ]);

    public static void Run(TextWriter output)
    {
        var pages = Tiled();
        ImmutableArray<Sheet> bare = [.. pages.Select(Bare)];
        var (tiled, plain) = (Median(() => Written(Tiled())), Median(() => Written(bare)));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{pages.Length} pages, {bare.Sum(page => page.Figures.Length)} lines"));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"tiled and written: {tiled / pages.Length:0.00} ms a page; bare: {plain / pages.Length:0.00} ms a page; ratio {tiled / plain:0.00}"));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"peak memory {Process.GetCurrentProcess().PeakWorkingSet64 / 1048576.0:0} MiB"));
    }

    private static ImmutableArray<Sheet> Tiled() => TilePages.Of([Piece], new("Templates", "a job", "a footer"), PaperSize.A4, 10, 10);

    /// <summary>The same lines, words left out, each directly on its sheet.</summary>
    private static Sheet Bare(Sheet page) =>
        page with { Figures = [.. page.Figures.Concat(page.Figures.OfType<Inset>().SelectMany(inset => inset.Figures)).OfType<Stroke>()] };

    private static long Written(IReadOnlyList<Sheet> pages)
    {
        using var stream = new MemoryStream();
        PdfWriter.Write(pages, "Templates", stream);
        return stream.Length;
    }

    private static double Median(Func<long> work)
    {
        var times = Enumerable.Range(0, Runs).Select(_ => Timed(work)).Order().ToList();
        return times[Runs / 2];
    }

    private static double Timed(Func<long> work)
    {
        var clock = Stopwatch.StartNew();
        return work() > 0 ? clock.Elapsed.TotalMilliseconds : throw new InvalidOperationException("Nothing was written.");
    }
}
