using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml;
using System.Xml.Linq;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Readback;

/// <summary>Reads closed paths of straight lines whose data-role is cut, true size by the sheet's width, height and view box.</summary>
internal static partial class SvgCutLines
{
    private const string Millimetres = "mm";

    /// <summary>The lines, in millimetres, Y up from the sheet's upper edge downward as negative values.</summary>
    /// <exception cref="InvalidDataException">It is no SVG of that kind.</exception>
    public static IEnumerable<ImmutableArray<Point>> In(byte[] content)
    {
        var root = Root(content);
        var view = (root.Attribute("viewBox")?.Value ?? string.Empty).Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Number).ToArray();
        if (view is not [_, _, > 0, > 0])
        {
            throw new InvalidDataException(Say.Of("the drawing has no view box."));
        }

        var (scaleX, scaleY) = (LengthMm(root, "width") / view[2], LengthMm(root, "height") / view[3]);
        return root.Descendants()
            .Where(element => element.Attribute("data-role")?.Value == "cut")
            .Select(path => PointsOf(path).Select(point => new Point(point.X * scaleX, -point.Y * scaleY)).ToImmutableArray())
            .ToList();
    }

    private static XElement Root(byte[] content)
    {
        try
        {
            using var stream = new MemoryStream(content);
            return XDocument.Load(stream).Root!;
        }
        catch (XmlException exception)
        {
            throw new InvalidDataException(Say.Of($"the drawing is broken or cut short at line {exception.LineNumber}."), exception);
        }
    }

    private static double LengthMm(XElement root, string name) =>
        root.Attribute(name)?.Value is { } text && text.EndsWith(Millimetres, StringComparison.Ordinal)
            ? Number(text[..^Millimetres.Length])
            : throw new InvalidDataException(Say.Of($"the sheet's {name} is not given in millimetres."));

    private static IEnumerable<Point> PointsOf(XElement path)
    {
        var data = path.Attribute("d")?.Value ?? string.Empty;
        if (path.AncestorsAndSelf().Any(element => element.Attribute("transform") is not null) || path.Ancestors().Count(element => element.Name.LocalName == "svg") > 1)
        {
            throw new InvalidDataException(Say.Of("a cut line is moved by a transform or an inner view, which our drawings have not."));
        }

        if (!StraightPath().IsMatch(data))
        {
            throw new InvalidDataException(Say.Of("a cut line is not a closed path of straight lines."));
        }

        return Coordinate().Matches(data).Select(match => Number(match.Value)).Chunk(2).Select(pair => new Point(pair[0], pair[1]));
    }

    private static double Number(string text) => double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
        ? number
        : throw new InvalidDataException(Say.Of($"\"{text}\" is no number."));

    [GeneratedRegex(@"^M[-0-9.e]+ [-0-9.e]+(L[-0-9.e]+ [-0-9.e]+){2,}Z$")]
    private static partial Regex StraightPath();

    [GeneratedRegex("[-0-9.e]+")]
    private static partial Regex Coordinate();
}
