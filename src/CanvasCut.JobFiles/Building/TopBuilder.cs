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
        var outline = TopOutline.Of(shape)!;
        ImmutableArray<TopTube> tubes = [.. given.Values.Tables("top.tube").Select(path => Tube(given, path, outline))];
        ImmutableArray<TopFixture> fixtures = [.. given.Values.Tables("top.fixed").Select(path => FixtureReader.Of(given, path))];
        return shape.IsRectangle ? new(length, given.Values.Length("top.width") ?? (shape.Widths[0].Port * 2), edges, bows, keepOuts) { Tubes = tubes, Fixtures = fixtures, Boom = Boom(given) }
            : new(length, outline, edges) { Bows = bows, Tubes = tubes, KeepOuts = keepOuts, Fixtures = fixtures, Boom = Boom(given) };
    }

    private static TopBoom? Boom(GivenValues given) => given.Values.IsWritten("top.boom")
        ? new(given.Length("top.boom.pivot"), given.Length("top.boom.end"), given.Quantity<UnitsNet.Angle>("top.boom.swing"), given.Values.Length("top.boom.height"), given.Length("top.boom.clearance"))
        : null;

    private static TopTube Tube(GivenValues given, string path, TopOutline outline)
    {
        var (from, to) = TubeEnds.Of(given.Values, path, outline)!.Value;
        return new(given.Text($"{path}.name"), from, to, given.Length($"{path}.diameter"));
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
