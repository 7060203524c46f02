using System.Collections.Immutable;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>The grades that a job is made of.</summary>
/// <param name="Cloth">The cloth.</param>
/// <param name="Sewing">Thread and needle.</param>
/// <param name="Zipper">The zippers.</param>
/// <param name="Tapes">The tapes.</param>
/// <param name="Notions">The small things.</param>
public sealed record JobSupplies(ClothGrade Cloth, SewingGrades Sewing, ZipperGrade Zipper, TapeGrades Tapes, NotionGrades Notions)
{
    /// <summary>Every grade, for a table of them.</summary>
    public ImmutableArray<Grade> Grades =>
    [
        Cloth.Grade, Sewing.Thread.Grade, Sewing.Needle.Grade, Zipper.Grade,
        Tapes.Basting.Grade, Tapes.Binding.Grade, Tapes.Foam.Grade, Tapes.Webbing.Grade,
        Notions.Slider.Grade, Notions.Stop.Grade, Notions.Grommet.Grade, Notions.Wipe.Grade, Notions.Patch.Grade,
    ];

    /// <summary>Every grade that a job may buy: those of fastenings only where it has them.</summary>
    public ImmutableArray<Grade> GradesFor(Fastenings fastenings)
    {
        var (mount, strip) = (fastenings.Mount, fastenings.WeatherStrip.Edges.IsEmpty ? StripHold.Nothing : fastenings.WeatherStrip.Held);
        return
        [
            .. Grades,
            .. mount.Uses(MountKind.HookAndLoop) || strip == StripHold.HookAndLoop ? [Tapes.Mount.HookAndLoop.Grade] : Array.Empty<Grade>(),
            .. mount.Uses(MountKind.Lacing) ? [Tapes.Mount.Lacing.Grade] : Array.Empty<Grade>(),
            .. mount.Uses(MountKind.Sleeve) || strip == StripHold.Rod ? Notions.Mount.Rod.All.Select(part => part.Grade) : [],
            .. new[] { MountKind.Snaps, MountKind.Twist, MountKind.Lacing }.Where(kind => mount.Uses(kind) || (kind == MountKind.Snaps && strip == StripHold.Snaps)).Select(kind => Notions.Mount.Of(kind)!.Grade),
        ];
    }
}

/// <summary>What it is sewn with.</summary>
/// <param name="Thread">The thread.</param>
/// <param name="Needle">The needle that suits it.</param>
public sealed record SewingGrades(ThreadGrade Thread, PackGrade Needle);

/// <summary>The tapes of a job.</summary>
/// <param name="Basting">Holds layers before they are sewn.</param>
/// <param name="Binding">Goes round raw edges.</param>
/// <param name="Foam">Bonds the panel.</param>
/// <param name="Webbing">The smooth ground for the foam tape.</param>
/// <param name="Mount">What holds the carrier's edges in the place of zippers.</param>
public sealed record TapeGrades(TapeGrade Basting, TapeGrade Binding, TapeGrade Foam, TapeGrade Webbing, MountTapes Mount);

/// <summary>What holds the carrier's edges and is bought by length.</summary>
/// <param name="HookAndLoop">Hook on one part, loop on the other.</param>
/// <param name="Lacing">The line of a lacing.</param>
public sealed record MountTapes(TapeGrade HookAndLoop, TapeGrade Lacing);

/// <summary>The small things of a job.</summary>
/// <param name="Slider">For continuous zippers.</param>
/// <param name="Stop">For continuous zippers.</param>
/// <param name="Grommet">For the cable's hole.</param>
/// <param name="Wipe">For cleaning what is bonded.</param>
/// <param name="Patch">The coated patch under the panel.</param>
/// <param name="Mount">What holds the carrier's edges in the place of zippers.</param>
public sealed record NotionGrades(PackGrade Slider, PackGrade Stop, PackGrade Grommet, PackGrade Wipe, PackGrade Patch, MountNotions Mount);

/// <summary>What holds the carrier's edges and is counted.</summary>
/// <param name="Snap">Cap, socket, stud and post.</param>
/// <param name="Twist">Eyelet with its washer, and the turning part with its washer.</param>
/// <param name="Eyelet">A two-part eyelet of a lacing.</param>
/// <param name="Rod">The rod of a sleeve.</param>
public sealed record MountNotions(PackGrade Snap, PackGrade Twist, PackGrade Eyelet, RodNotions Rod)
{
    /// <summary>What a kind of fastening is counted in; null for kinds that are not.</summary>
    public PackGrade? Of(MountKind kind) => kind switch
    {
        MountKind.Snaps => Snap,
        MountKind.Twist => Twist,
        MountKind.Lacing => Eyelet,
        _ => null,
    };
}

/// <summary>A rod and what goes on its ends.</summary>
/// <param name="Rod">The rod, bought in the length that an edge needs or cut from a longer one.</param>
/// <param name="Cap">A cap, so that an end neither splinters nor chafes.</param>
/// <param name="Stop">A ring held by a thumb screw, so that the rod does not walk out.</param>
public sealed record RodNotions(PackGrade Rod, PackGrade Cap, PackGrade Stop)
{
    /// <summary>All of them.</summary>
    public ImmutableArray<PackGrade> All => [Rod, Cap, Stop];
}

/// <summary>How things are bought.</summary>
/// <param name="Spare">Cloth added before rounding to the shop's step: 0.05 is five per cent.</param>
/// <param name="Prices">What things cost; null when no price file is named.</param>
/// <param name="RollWidths">The widths in which the cloth is on sale, growing; the job's own need not be among them.</param>
public sealed record BuyingSpec(decimal Spare, PriceList? Prices, ImmutableArray<Length> RollWidths);
