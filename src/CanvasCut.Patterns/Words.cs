using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.Patterns;

/// <summary>The trade's words for the values of the design.</summary>
public static class Words
{
    /// <summary>As in "starboard".</summary>
    public static string Of(Side side) => side switch
    {
        Side.Forward => Say.Of("forward"),
        Side.Aft => Say.Of("aft"),
        Side.Port => Say.Of("port"),
        _ => Say.Of("starboard"),
    };

    /// <summary>The side in names that no language changes, as in "weather-strip-forward" and in the job file.</summary>
    public static string Id(Side side) => side switch
    {
        Side.Forward => "forward",
        Side.Aft => "aft",
        Side.Port => "port",
        _ => "starboard",
    };

    /// <summary>As in "twist fasteners".</summary>
    public static string Of(MountKind kind) => kind switch
    {
        MountKind.Zipper => Say.Of("zipper"),
        MountKind.Snaps => Say.Of("snaps"),
        MountKind.Twist => Say.Of("twist fasteners"),
        MountKind.HookAndLoop => Say.Of("hook-and-loop"),
        MountKind.Sleeve => Say.Of("rod sleeve"),
        _ => Say.Of("lacing"),
    };

    /// <summary>The table of the job file that tells of a kind set at a pitch.</summary>
    public static string Table(MountKind kind) => kind switch
    {
        MountKind.Snaps => "snaps",
        MountKind.Twist => "twist",
        MountKind.HookAndLoop => "hook_and_loop",
        MountKind.Sleeve => "sleeve",
        _ => "lacing",
    };

    /// <summary>As in "fore and aft".</summary>
    public static string Of(WarpDirection warp) => warp == WarpDirection.ForeAft ? Say.Of("fore and aft") : Say.Of("athwart");

    /// <summary>As in "fore and aft".</summary>
    public static string Of(LongSide side) => side == LongSide.ForeAft ? Say.Of("fore and aft") : Say.Of("athwart");
}
