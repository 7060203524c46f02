using CanvasCut.Design;
using CanvasCut.Patterns;

namespace CanvasCut.Takeoff;

/// <summary>What is told of an edge's fastening in sentences.</summary>
public static class MountText
{
    /// <summary>How an edge is closed, as in "zip".</summary>
    public static string Close(MountKind kind) => kind switch
    {
        MountKind.Zipper => "zip",
        MountKind.Snaps => "snap closed",
        MountKind.Twist => "twist closed",
        MountKind.HookAndLoop => "press down",
        _ => "lace",
    };

    /// <summary>How an edge is opened, as in "open it".</summary>
    public static string Open(EdgePlace edge) => edge switch
    {
        { Kind: MountKind.Zipper } => "open it",
        { Kind: MountKind.HookAndLoop } => "peel the edge off from one end",
        FlapPlace { Kind: MountKind.Lacing } => "untie the line and draw it out of every eyelet of the carrier",
        FlapPlace { Fasteners: { } row } => FormattableString.Invariant($"open all {row.Count}, the middle ones last"),
        _ => "open it",
    };

    /// <summary>What is said of the top's side while the carrier lies on it, as in "Zip the top's halves on."</summary>
    internal static string TapeDown(MountedFastenings fastened) => string.Join(' ', fastened.Edges.Select(Prepare).Distinct());

    /// <summary>What is marked through the carrier, after "Mark pockets"; empty with zippers alone.</summary>
    internal static string MarkThrough(MountedFastenings fastened) => fastened.Flaps.Any(flap => flap.Fasteners is not null)
        ? " Mark every fastener's centre on the top through the carrier's own, and round the strips that go there."
        : string.Empty;

    private static string Prepare(EdgePlace edge) => edge.Kind switch
    {
        MountKind.Zipper => edge is ZipperPlace ? "Zip the top's halves on." : string.Empty,
        MountKind.HookAndLoop => "Press the loop tape on the carrier's hook tape.",
        MountKind.Lacing => "Lay the top's flap beside the carrier's, the gap between.",
        _ => "Leave the fasteners open.",
    };
}
