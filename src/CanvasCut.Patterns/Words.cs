using CanvasCut.Design;

namespace CanvasCut.Patterns;

/// <summary>The trade's words for the values of the design.</summary>
public static class Words
{
    /// <summary>As in "starboard".</summary>
    public static string Of(Side side) => side switch
    {
        Side.Forward => "forward",
        Side.Aft => "aft",
        Side.Port => "port",
        _ => "starboard",
    };

    /// <summary>As in "twist fasteners".</summary>
    public static string Of(MountKind kind) => kind switch
    {
        MountKind.Zipper => "zipper",
        MountKind.Snaps => "snaps",
        MountKind.Twist => "twist fasteners",
        MountKind.HookAndLoop => "hook-and-loop",
        MountKind.Sleeve => "rod sleeve",
        _ => "lacing",
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
    public static string Of(WarpDirection warp) => warp == WarpDirection.ForeAft ? "fore and aft" : "athwart";

    /// <summary>As in "fore and aft".</summary>
    public static string Of(LongSide side) => side == LongSide.ForeAft ? "fore and aft" : "athwart";
}
