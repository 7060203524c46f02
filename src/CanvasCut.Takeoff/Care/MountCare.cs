using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.Takeoff;

/// <summary>What keeps the fastenings of the edges sound.</summary>
internal static class MountCare
{
    /// <summary>Where an edge gives first.</summary>
    public static string Ends(ImmutableArray<MountSpec> mounts) => mounts.All(mount => mount.IsZippersAtBothEnds) ? Say.Of("the zippers' ends") : Say.Of("all that holds the edges");

    /// <summary>What holds the free edges of the weather strips there are.</summary>
    public static StripHold Strip(Fastenings fastenings) => fastenings.WeatherStrip.Edges.IsEmpty ? StripHold.Nothing : fastenings.WeatherStrip.Held;

    public static IEnumerable<CareTask> Tasks(Fastenings fastenings)
    {
        var (mount, strip) = (fastenings.Mount, Strip(fastenings));
        if (mount.Uses(MountKind.Zipper))
        {
            yield return new("zipper-wax", Say.Of("Wash and wax the zippers"), Say.Of("Rinse out the salt, free a stiff slider with vinegar, rinse again, rub the teeth with a candle or zipper wax."), new(6, 6), Say.Of("vinegar and wax: a boating column, 2017; the interval is common practice, no source"));
        }

        if (mount.Uses(MountKind.Snaps) || mount.Uses(MountKind.Twist) || strip == StripHold.Snaps)
        {
            yield return new("fasteners", Say.Of("Rinse and try the fasteners"), Say.Of("Rinse out the salt, open and close each, put a little wax or petroleum jelly on it. Replace one that has worn loose, and mend cloth that has begun to tear round it."), new(6, 6), Say.Of("common practice, no source"));
        }

        if (mount.Uses(MountKind.Sleeve))
        {
            yield return new("rods", Say.Of("Draw out the rods"), Say.Of("Rinse rods and sleeves, look along each rod: straight, no splinter, no bared fibre. Wear gloves. Seal a bared place with clear varnish, replace one that has cracked or stays bent; put new caps on."), new(6, 6), Say.Of("common practice, no source"));
        }

        if (mount.Uses(MountKind.Lacing))
        {
            yield return new("lacing-line", Say.Of("Replace the lacing line"), Say.Of("Draw in a new one; look at every eyelet for sharp edges first."), new(24, 24), Say.Of("from memory: thin polyester line in strong sun"));
        }
    }

    /// <summary>Lines of the six-month check.</summary>
    public static IEnumerable<string> Checks(Fastenings fastenings)
    {
        var (mount, strip) = (fastenings.Mount, Strip(fastenings));
        if (mount.Uses(MountKind.Zipper))
        {
            yield return Say.Of("Zippers: run from end to end by hand; teeth whole; ends capped.");
        }

        if (mount.Uses(MountKind.Snaps) || mount.Uses(MountKind.Twist) || strip == StripHold.Snaps)
        {
            yield return Say.Of("Fasteners: each closes with a click or a turn; none loose, no cloth torn round it.");
        }

        if (mount.Uses(MountKind.Sleeve))
        {
            yield return Say.Of("Sleeves: no lug torn or worn through at the rod; stops tight, caps on.");
        }

        if (strip == StripHold.Rod)
        {
            yield return Say.Of("Weather strip: its rod straight and whole, the hem sewn shut at both ends.");
        }

        if (mount.Uses(MountKind.Lacing))
        {
            yield return Say.Of("Lacing: line not furry or stiff; eyelets tight, no sharp edge.");
        }
    }
}
