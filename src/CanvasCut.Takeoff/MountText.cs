using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Takeoff;

/// <summary>What is told of an edge's fastening in sentences.</summary>
public static class MountText
{
    /// <summary>How an edge is closed, as in "zip".</summary>
    public static string Close(MountKind kind) => kind switch
    {
        MountKind.Zipper => Say.Of("zip"),
        MountKind.Snaps => Say.Of("snap closed"),
        MountKind.Twist => Say.Of("twist closed"),
        MountKind.HookAndLoop => Say.Of("press down"),
        MountKind.Sleeve => Say.Of("thread the rod and stop it"),
        _ => Say.Of("lace"),
    };

    /// <summary>How an edge is opened, as in "open it".</summary>
    public static string Open(EdgePlace edge) => edge switch
    {
        { Kind: MountKind.Zipper } => Say.Of("open it"),
        { Kind: MountKind.HookAndLoop } => Say.Of("peel the edge off from one end"),
        FlapPlace { Kind: MountKind.Lacing } => Say.Of("untie the line and draw it out of every eyelet of the carrier"),
        { Kind: MountKind.Sleeve } => Say.Of("take the stop off one end of the rod and draw the rod out by the other"),
        FlapPlace { Fasteners: { } row } => Say.Of($"open all {row.Count}, the middle ones last"),
        _ => Say.Of("open it"),
    };

    /// <summary>What is said of the top's side while the carrier lies on it, as in "Zip the top's halves on."</summary>
    internal static string TapeDown(MountedFastenings fastened) => string.Join(' ', fastened.Edges.Select(Prepare).Distinct());

    /// <summary>What is marked through the carrier, after "Mark pockets"; empty with zippers alone.</summary>
    internal static string MarkThrough(MountedFastenings fastened) => fastened.Flaps.Any(flap => flap.Fasteners is not null)
        ? Say.Of(" Mark every fastener's centre on the top through the carrier's own, and round the strips that go there.")
        : string.Empty;

    private static string Prepare(EdgePlace edge) => edge.Kind switch
    {
        MountKind.Zipper => edge is ZipperPlace ? Say.Of("Zip the top's halves on.") : string.Empty,
        MountKind.HookAndLoop => Say.Of("Press the loop tape on the carrier's hook tape."),
        MountKind.Sleeve => Say.Of("Thread the rod through both sleeves, lug by lug."),
        MountKind.Lacing => Say.Of("Lay the top's flap beside the carrier's, the gap between."),
        _ => Say.Of("Leave the fasteners open."),
    };
}
