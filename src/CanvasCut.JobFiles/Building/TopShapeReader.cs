using System.Collections.Immutable;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>The outline of the top as far as the file gives it.</summary>
internal static class TopShapeReader
{
    /// <summary>Its measures; null while one of them is missing or wrong.</summary>
    public static TopShape? Of(JobValues values)
    {
        ImmutableArray<TopWidth?> widths = values.Tables("top.width_at").Any()
            ? [.. values.Tables("top.width_at").Select(path => WidthOf(values, path))]
            : [values.Length("top.width") is { } width ? new TopWidth(Length.Zero, width / 2, width / 2) : null];
        return values.Length("top.length") is { } length && !widths.Contains(null)
            ? new(length, [.. widths.OfType<TopWidth>()])
            {
                Forward = EndsOf(values, "top.forward_edge"),
                Aft = EndsOf(values, "top.aft_edge"),
                Corners = new(CornerOf(values, "forward_port"), CornerOf(values, "forward_starboard"), CornerOf(values, "aft_port"), CornerOf(values, "aft_starboard")),
            }
            : null;
    }

    /// <summary>The outline; null while it is not known, or there is none.</summary>
    public static TopOutline? OutlineOf(JobValues values) => Of(values) is { } shape && IsInOrder(shape) ? TopOutline.Of(shape) : null;

    /// <summary>Whether the widths run aft and none hangs over more than it can, so that sides can be drawn.</summary>
    public static bool IsInOrder(TopShape shape) => shape.Widths.Zip(shape.Widths.Skip(1)).All(pair => pair.First.Station < pair.Second.Station && IsShallow(pair.First, pair.Second));

    /// <summary>Whether the edge between two stations is less hollow than a half circle would be.</summary>
    public static bool IsShallow(TopWidth width, TopWidth next) => UnitMath.Abs(width.HollowAft) < (next.Station - width.Station) / 2;

    /// <summary>The width where the top is narrowest at a station that is given.</summary>
    public static Length? LeastWidth(JobValues values) => values.Tables("top.width_at").Any()
        ? values.Tables("top.width_at").Select(path => WidthOf(values, path)).Min(width => width?.Port + width?.Starboard)
        : values.Length("top.width");

    /// <summary>The widest place where a width is given; null while it is not known.</summary>
    public static Length? MostWidth(JobValues values) => values.Tables("top.width_at").Any()
        ? values.Tables("top.width_at").Select(path => WidthOf(values, path)).Max(width => width?.Port + width?.Starboard)
        : values.Length("top.width");

    private static TopWidth? WidthOf(JobValues values, string path)
    {
        var half = values.Length($"{path}.width") / 2;
        return values.Length($"{path}.station") is { } station && (values.Length($"{path}.port") ?? half) is { } port && (values.Length($"{path}.starboard") ?? half) is { } starboard
            ? new(station, port, starboard) { HollowAft = values.Length($"{path}.hollow_aft") ?? Length.Zero }
            : null;
    }

    private static EdgeEnds EndsOf(JobValues values, string path) =>
        new(values.Length($"{path}.port") ?? Length.Zero, values.Length($"{path}.starboard") ?? Length.Zero, values.Text($"{path}.form") == "round");

    private static TopCorner CornerOf(JobValues values, string corner) => values.Length($"top.corners.cut.{corner}") is { Millimeters: > 0 } cut
        ? new(cut, IsCut: true)
        : new(values.Length($"top.corners.rounded.{corner}") ?? Length.Zero, IsCut: false);
}
