using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Text;
using CanvasCut.Drawing;
using CanvasCut.Export.Pdf;
using CanvasCut.Export.Png;
using CanvasCut.Export.Svg;
using CanvasCut.Language;

namespace CanvasCut.Job;

/// <summary>A file of the results that is still to be made; its name is known before, for results.json lists them all.</summary>
/// <param name="Name">Its place in the results folder, with forward slashes.</param>
/// <param name="Make">Makes it, from nothing that another file changes.</param>
internal sealed record FilePlan(string Name, Func<ResultFile> Make)
{
    /// <summary>Dots per millimetre of a picture; 8 is about 200 an inch.</summary>
    private const double PictureDotsPerMm = 6;

    /// <summary>Makes the files, several at a time; the result is in the order of the plans, whichever is ready first.</summary>
    public static ImmutableArray<ResultFile> MakeAll(IReadOnlyList<FilePlan> plans, CancellationToken cancellation)
    {
        var files = new ResultFile[plans.Count];
        Parallel.ForEach(
            Partitioner.Create(Enumerable.Range(0, plans.Count), EnumerablePartitionerOptions.NoBuffering),
            new ParallelOptions { CancellationToken = cancellation },
            i => files[i] = plans[i].Make());
        return [.. files];
    }

    public static FilePlan Pdf(string name, string tells, string title, Func<IReadOnlyList<Sheet>> sheets) =>
        Pdf(name, title, () => (sheets(), tells));

    /// <summary>A PDF file of which only its sheets tell what it is for.</summary>
    public static FilePlan Pdf(string name, string title, Func<(IReadOnlyList<Sheet> Sheets, string Tells)> make) => new(name, () =>
    {
        using var stream = new MemoryStream();
        var (sheets, tells) = make();
        PdfWriter.Write(sheets, title, stream, Languages.Code);
        return new(name, stream.ToArray(), tells);
    });

    public static FilePlan Png(string name, string tells, Func<Sheet> sheet) => new(name, () =>
    {
        using var stream = new MemoryStream();
        PngWriter.Write(sheet(), PictureDotsPerMm, stream);
        return new(name, stream.ToArray(), tells);
    });

    public static FilePlan Svg(string name, string tells, Func<Sheet> sheet) => Written(name, tells, output => SvgWriter.Write(sheet(), output));

    public static FilePlan Text(string name, string tells, Func<string> text) => new(name, () => new(name, Encoding.UTF8.GetBytes(text()), tells));

    /// <summary>A text file, its lines ended as everywhere.</summary>
    public static FilePlan Written(string name, string tells, Action<TextWriter> write) => Text(name, tells, () =>
    {
        using var output = new StringWriter { NewLine = "\n" };
        write(output);
        return output.ToString();
    });
}
