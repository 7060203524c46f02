using System.Collections.Immutable;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>One ply where it lies.</summary>
/// <param name="Kind">What it is of.</param>
/// <param name="Ply">A convex outline.</param>
internal sealed record SewnLayer(LayerKind Kind, Outline Ply)
{
    public static IEnumerable<SewnLayer> Of(LayerKind kind, FoldedSheet sheet) => sheet.Plies.Select(ply => new SewnLayer(kind, ply));
}

/// <summary>A part of a row that goes through the same plies all along.</summary>
/// <param name="Length">Along the row.</param>
/// <param name="Stack">What it goes through.</param>
public sealed record SewnRun(Length Length, LayerCount Stack);

/// <summary>Cuts rows into runs.</summary>
internal static class SewnRuns
{
    private const double SmallestMm = 1e-6;

    /// <summary>The runs of a line through the layers; where there is nothing to sew there is no run.</summary>
    public static IEnumerable<SewnRun> Of(ImmutableArray<Point> line, IReadOnlyList<SewnLayer> layers) =>
        Enumerable.Range(1, line.Length - 1).SelectMany(i => Straight(line[i - 1], line[i], layers));

    private static IEnumerable<SewnRun> Straight(Point from, Point to, IReadOnlyList<SewnLayer> layers)
    {
        var length = from.DistanceMm(to);
        List<(LayerKind Kind, double From, double To)> spans =
        [
            .. layers.SelectMany(layer => layer.Ply.Inside([from, to])
                .Select(part => (layer.Kind, from.DistanceMm(part[0]), from.DistanceMm(part[^1])))),
        ];
        double[] stops = [.. spans.SelectMany(span => new[] { span.From, span.To }).Append(0).Append(length).Order()];
        for (var i = 1; i < stops.Length; i++)
        {
            var middle = (stops[i - 1] + stops[i]) / 2;
            int Count(LayerKind kind) => spans.Count(span => span.Kind == kind && span.From < middle && middle < span.To);
            var stack = new LayerCount(Count(LayerKind.Cloth), Count(LayerKind.ZipperTape), Count(LayerKind.Binding), Count(LayerKind.Webbing), Count(LayerKind.HookAndLoop), Count(LayerKind.Patch));
            if (stops[i] - stops[i - 1] > SmallestMm && stack.Plies > 0)
            {
                yield return new(Length.FromMillimeters(stops[i] - stops[i - 1]), stack);
            }
        }
    }
}
