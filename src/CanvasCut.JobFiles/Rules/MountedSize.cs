using UnitsNet;

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
        var (athwart, foreAft) = Of(values);
        if (!values.IsWritten("panel.long_side"))
        {
            (athwart, foreAft) = (values.Length("panel.width"), values.Length("panel.width"));
        }

        return (Between(values, athwart, "port", "starboard"), Between(values, foreAft, "forward", "aft"));
    }

    private static Length? Between(JobValues values, Length? size, string near, string far) =>
        size + BorderOf(values, near) + BorderOf(values, far);

    /// <summary>The border with what is kept for a later panel.</summary>
    public static Length? BorderOf(JobValues values, string side) =>
        values.Length($"carrier.border.{side}") + values.Length($"carrier.keep_room.{side}");
}
