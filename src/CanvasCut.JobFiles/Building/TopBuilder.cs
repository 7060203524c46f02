using CanvasCut.Design;

namespace CanvasCut.JobFiles;

/// <summary>Makes the top.</summary>
internal static class TopBuilder
{
    public static TopCloth Build(GivenValues given) => new(
        given.Length("top.length"),
        given.Length("top.width"),
        new(given.Length("top.edge_margin"), given.Length("top.corner_radius")),
        [.. given.Values.Tables("top.bow").Select(path => Bow(given, path))],
        [.. given.Values.Tables("top.keep_out").Select(path => KeepOut(given, path))]);

    private static Bow Bow(GivenValues given, string path) => new(
        given.Length($"{path}.station"),
        given.Length($"{path}.diameter"),
        BowArc.Of(given.Values, path).Arc() is { } arc ? BowHalves.Even(arc) : null,
        given.Values.Length($"{path}.height"),
        sagAft: UnitsNet.Length.Zero);

    private static KeepOut KeepOut(GivenValues given, string path) => new(
        given.Text($"{path}.name"),
        given.Values.Pair($"{path}.station")!.Value,
        given.Values.Pair($"{path}.offset")!.Value,
        given.Length($"{path}.clearance"));
}
