using CanvasCut.Design;
using CanvasCut.Language;
using UnitsNet;
using static CanvasCut.JobFiles.RuleLog;

namespace CanvasCut.JobFiles;

/// <summary>Sizes across and along the boat.</summary>
internal static class MountedSize
{
    /// <summary>The panel as its fittings are described: with the long side athwart unless it must lie fore and aft.</summary>
    public static (Length? Athwart, Length? ForeAft) Of(JobValues values)
    {
        var (length, width) = (values.Length("panel.length"), values.Length("panel.width"));
        return values.Text("panel.long_side") == "fore-aft" ? (width, length) : (length, width);
    }

    /// <summary>The carrier's smallest size across and along, for every way the panel may lie.</summary>
    public static (Length? Athwart, Length? ForeAft) SmallestCarrier(JobValues values)
    {
        if (values.Row is not null)
        {
            return SmallestWithRow(values);
        }

        var (athwart, foreAft) = Of(values);
        if (!values.IsWritten("panel.long_side"))
        {
            (athwart, foreAft) = (values.Length("panel.width"), values.Length("panel.width"));
        }

        return (Between(values, athwart, "port", "starboard"), Between(values, foreAft, "forward", "aft"));
    }

    /// <summary>What is said of a row that is longer than the top whichever way its panels may lie; null when it is not.</summary>
    public static string? RowBeyondTop(JobValues values)
    {
        var ((athwart, foreAft), width) = (SmallestWithRow(values), TopShapeReader.MostWidth(values));
        return values.Row?.Axis == RowAxis.Athwart
            ? athwart > width ? Say.Of($"makes the row longer than the top is wide: with gaps and borders the carrier is {In(athwart)} from port to starboard, and the top is {In(width)} wide. Lay the row fore and aft (beside = \"aft\"), or give a panel a carrier of its own.") : null
            : foreAft > values.Length("top.length") ? Say.Of($"makes the row longer than the top: with gaps and borders the carrier is {In(foreAft)} from forward to aft, and the top is {In(values.Length("top.length"))} long. Lay the row across (beside = \"starboard\"), or give a panel a carrier of its own.") : null;
    }

    private static (Length? Athwart, Length? ForeAft) SmallestWithRow(JobValues values)
    {
        string[] ways = values.Text("panel.long_side") is { } given ? [given] : ["athwart", "fore-aft"];
        var rows = ways.Select(way => RowOf(values, way)).ToList();
        return (
            Between(values, Smallest(rows.Select(row => row.Athwart)), "port", "starboard"),
            Between(values, Smallest(rows.Select(row => row.ForeAft)), "forward", "aft"));
    }

    /// <summary>The row's own size; panels that do not say which way they lie, lie as the first does.</summary>
    private static (Length? Athwart, Length? ForeAft) RowOf(JobValues values, string way)
    {
        var row = values.Row!;
        (Length? Athwart, Length? ForeAft)[] sizes = [.. row.After.Prepend(values).Select(panel => Lying(panel, panel.Text("panel.long_side") ?? way))];
        var gaps = row.After.Aggregate((Length?)Length.Zero, (sum, panel) => sum + panel.Length("panel.gap"));
        Length? Sum(IEnumerable<Length?> along) => along.Aggregate(gaps, (sum, next) => sum + next);
        Length? Largest(IEnumerable<Length?> across) => across.Aggregate((largest, next) => next > largest ? next : largest);
        return row.Axis == RowAxis.Athwart
            ? (Sum(sizes.Select(size => size.Athwart)), Largest(sizes.Select(size => size.ForeAft)))
            : (Largest(sizes.Select(size => size.Athwart)), Sum(sizes.Select(size => size.ForeAft)));
    }

    private static (Length? Athwart, Length? ForeAft) Lying(JobValues values, string way) => way == "fore-aft"
        ? (values.Length("panel.width"), values.Length("panel.length"))
        : (values.Length("panel.length"), values.Length("panel.width"));

    private static Length? Smallest(IEnumerable<Length?> lengths) => lengths.Aggregate((smallest, next) => next < smallest ? next : smallest);

    private static Length? Between(JobValues values, Length? size, string near, string far) =>
        size + BorderOf(values, near) + BorderOf(values, far);

    /// <summary>The border with what is kept for a later panel.</summary>
    public static Length? BorderOf(JobValues values, string side) =>
        values.Length($"carrier.border.{side}") + values.Length($"carrier.keep_room.{side}");
}
