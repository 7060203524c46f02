using CanvasCut.Design;

namespace CanvasCut.Takeoff;

/// <summary>What keeps the fastenings of the edges sound.</summary>
internal static class MountCare
{
    /// <summary>Where an edge gives first.</summary>
    public static string Ends(MountSpec mount) => mount.IsZippersAtBothEnds ? "the zippers' ends" : "all that holds the edges";

    public static IEnumerable<CareTask> Tasks(MountSpec mount)
    {
        if (mount.Uses(MountKind.Zipper))
        {
            yield return new("zipper-wax", "Wash and wax the zippers", "Rinse out the salt, free a stiff slider with vinegar, rinse again, rub the teeth with a candle or zipper wax.", new(6, 6), "vinegar and wax: a boating column, 2017; the interval is common practice, no source");
        }

        if (mount.Uses(MountKind.Snaps) || mount.Uses(MountKind.Twist))
        {
            yield return new("fasteners", "Rinse and try the fasteners", "Rinse out the salt, open and close each, put a little wax or petroleum jelly on it. Replace one that has worn loose, and mend cloth that has begun to tear round it.", new(6, 6), "common practice, no source");
        }

        if (mount.Uses(MountKind.Lacing))
        {
            yield return new("lacing-line", "Replace the lacing line", "Draw in a new one; look at every eyelet for sharp edges first.", new(24, 24), "from memory: thin polyester line in strong sun");
        }
    }

    /// <summary>Lines of the six-month check.</summary>
    public static IEnumerable<string> Checks(MountSpec mount)
    {
        if (mount.Uses(MountKind.Zipper))
        {
            yield return "Zippers: run from end to end by hand; teeth whole; ends capped.";
        }

        if (mount.Uses(MountKind.Snaps) || mount.Uses(MountKind.Twist))
        {
            yield return "Fasteners: each closes with a click or a turn; none loose, no cloth torn round it.";
        }

        if (mount.Uses(MountKind.Lacing))
        {
            yield return "Lacing: line not furry or stiff; eyelets tight, no sharp edge.";
        }
    }
}
