using System.Collections.Immutable;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Readback;

/// <summary>Reads the cut lines of a drawing in one of the formats that are known.</summary>
/// <remarks>A reader for one more format is a class beside the others and a line in <see cref="Readers"/>.</remarks>
public static class CutLines
{
    private static readonly Dictionary<string, Func<byte[], IEnumerable<ImmutableArray<Point>>>> Readers = new(StringComparer.Ordinal)
    {
        [".dxf"] = DxfCutLines.In,
        [".hpgl"] = HpglCutLines.In,
        [".pdf"] = PdfCutLines.In,
        [".svg"] = SvgCutLines.In,
    };

    /// <summary>Whether files of this name can be read.</summary>
    public static bool CanRead(string fileName) => Readers.ContainsKey(Path.GetExtension(fileName));

    /// <summary>The closed cut lines in the order of the file, in millimetres, Y up; the first point is not repeated.</summary>
    /// <param name="fileName">Its ending tells the format.</param>
    /// <param name="content">The whole file.</param>
    /// <exception cref="InvalidDataException">The file is broken; the message says where.</exception>
    /// <exception cref="ArgumentException">There is no reader for the format.</exception>
    public static ImmutableArray<ImmutableArray<Point>> In(string fileName, byte[] content) =>
        Readers.TryGetValue(Path.GetExtension(fileName), out var reader)
            ? [.. reader(content).Select(WithoutRepeats).Select(Sound)]
            : throw new ArgumentException($"There is no reader for {fileName}.", nameof(fileName));

    private static ImmutableArray<Point> WithoutRepeats(ImmutableArray<Point> line) =>
        line.Length > 1 && line[0].DistanceMm(line[^1]) < 1e-9 ? line[..^1] : line;

    private static ImmutableArray<Point> Sound(ImmutableArray<Point> line) => line.Length >= 3 && line.All(point => double.IsFinite(point.X) && double.IsFinite(point.Y))
        ? line
        : throw new InvalidDataException(Say.Of("a cut line encloses nothing."));
}
