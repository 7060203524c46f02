using CanvasCut.Design;

namespace CanvasCut.Patterns;

/// <summary>How many movements of the hand it takes to get the carrier off.</summary>
public static class RemovalActions
{
    /// <summary>The cover over the panel and the plug.</summary>
    private const int CoverAndPlug = 2;

    /// <summary>A rod's stop, and the rod.</summary>
    private const int StopAndRod = 2;

    /// <summary>The cover, the plug, each edge, each corner out of its pocket; each snap of a weather strip, hook-and-loop of one in one pull.</summary>
    public static int Of(MountedFastenings fastened) => CoverAndPlug + fastened.Edges.Sum(Of) + fastened.Pockets.Length + fastened.Strips.Sum(Of);

    private static int Of(StripPlace strip) => strip.Holding?.Kind switch
    {
        StripHold.Snaps => strip.Holding.Centres.Length,
        StripHold.HookAndLoop => 1,
        _ => 0,
    };

    /// <summary>
    /// A zipper is opened and hook-and-loop pulled in one movement, each snap or twist fastener in its own; a lacing is
    /// untied and drawn out of every eyelet of the carrier; of a rod a stop is taken off, and the rod drawn out.
    /// </summary>
    public static int Of(EdgePlace edge) => edge is FlapPlace { Fasteners: { } row }
        ? row.Count + (edge.Kind == MountKind.Lacing ? 1 : 0)
        : edge.Kind == MountKind.Sleeve ? StopAndRod : 1;
}
