using System.Collections.Immutable;
using CanvasCut.Design;

namespace CanvasCut.JobFiles;

/// <summary>Makes the top.</summary>
internal static class TopBuilder
{
    public static TopCloth Build(GivenValues given)
    {
        var (length, edges) = (given.Length("top.length"), new TopEdges(given.Length("top.edge_margin"), given.Length("top.corner_radius")));
        var shape = TopShapeReader.Of(given.Values)!;
        ImmutableArray<Bow> bows = [.. given.Values.Tables("top.bow").Select(path => Bow(given, path))];
        ImmutableArray<KeepOut> keepOuts = [.. given.Values.Tables("top.keep_out").Select(path => KeepOut(given, path))];
        return shape.IsRectangle ? new(length, given.Values.Length("top.width") ?? (shape.Widths[0].Port * 2), edges, bows, keepOuts)
            : new(length, TopOutline.Of(shape)!, edges) { Bows = bows, KeepOuts = keepOuts };
    }

    private static Bow Bow(GivenValues given, string path) => new(
        given.Length($"{path}.station"),
        given.Length($"{path}.diameter"),
        BowArc.Of(given.Values, path).Halves(),
        given.Values.Length($"{path}.height"),
        given.Values.Length($"{path}.sag_aft") ?? UnitsNet.Length.Zero);

    private static KeepOut KeepOut(GivenValues given, string path) => new(
        given.Text($"{path}.name"),
        given.Values.Pair($"{path}.station")!.Value,
        given.Values.Pair($"{path}.offset")!.Value,
        given.Length($"{path}.clearance"));
}
