using System.Globalization;
using System.Text.RegularExpressions;
using CanvasCut.Geometry;

namespace CanvasCut.Tests.Export;

/// <summary>Measures the paths in an SVG file that another program has written.</summary>
internal static partial class SvgGeometry
{
    private static readonly string[] StartAndEnd = ["M", "L", "H", "V", "Z"];

    /// <summary>The boxes round all paths of straight lines, in the file's own unit, after the transforms written on the paths themselves.</summary>
    public static IEnumerable<Box> PathBoxes(string svg) =>
        from Match path in PathElement().Matches(svg)
        let data = Data().Match(path.Value)
        where data.Success
        let points = Points(data.Groups[1].Value)
        where points.Count > 1
        select Box.Holding(points.Select(MatrixOf(path.Value)));

    private static List<Point> Points(string data)
    {
        var tokens = Token().Matches(data).Select(match => match.Value).ToList();
        if (tokens.Any(token => char.IsLetter(token[0]) && !StartAndEnd.Contains(token)))
        {
            return [];
        }

        var numbers = tokens.Where(token => !char.IsLetter(token[0])).Select(Number).ToList();
        return [.. numbers.Chunk(2).Where(pair => pair.Length == 2).Select(pair => new Point(pair[0], pair[1]))];
    }

    private static Func<Point, Point> MatrixOf(string element)
    {
        var match = Matrix().Match(element);
        if (!match.Success)
        {
            return point => point;
        }

        var m = Token().Matches(match.Groups[1].Value).Select(token => Number(token.Value)).ToArray();
        return point => new((m[0] * point.X) + (m[2] * point.Y) + m[4], (m[1] * point.X) + (m[3] * point.Y) + m[5]);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    [GeneratedRegex("<path[^>]*>")]
    private static partial Regex PathElement();

    [GeneratedRegex("\\sd=\"([^\"]*)\"")]
    private static partial Regex Data();

    [GeneratedRegex("matrix\\(([^)]*)\\)")]
    private static partial Regex Matrix();

    [GeneratedRegex("[A-Za-z]|-?[0-9.]+(?:[eE][-+]?[0-9]+)?")]
    private static partial Regex Token();
}
