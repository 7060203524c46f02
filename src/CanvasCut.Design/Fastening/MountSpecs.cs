using UnitsNet;

namespace CanvasCut.Design;

/// <summary>What holds an edge of the carrier on the top.</summary>
public enum MountKind
{
    /// <summary>A zipper.</summary>
    Zipper,

    /// <summary>Press fasteners at a pitch.</summary>
    Snaps,

    /// <summary>Twist fasteners at a pitch.</summary>
    Twist,

    /// <summary>Hook-and-loop tape from end to end.</summary>
    HookAndLoop,

    /// <summary>A line through two rows of eyelets.</summary>
    Lacing,

    /// <summary>A rod through two sleeves that are cut out into lugs.</summary>
    Sleeve,
}

/// <summary>What holds the carrier's edges.</summary>
/// <param name="Forward">At the forward edge.</param>
/// <param name="Aft">At the aft edge.</param>
/// <param name="Setback">From each finished corner of the carrier to the end of a flap; zippers have their own.</param>
/// <param name="Figures">The sizes of every kind but the zipper.</param>
/// <param name="Port">At the port edge; null when only the pockets hold it.</param>
/// <param name="Starboard">At the starboard edge; null when only the pockets hold it.</param>
public sealed record MountSpec(
    MountKind Forward, MountKind Aft, Length Setback, MountFigures Figures, MountKind? Port = null, MountKind? Starboard = null)
{
    /// <summary>How much of a flap lies under the carrier's edge; common practice, no source.</summary>
    public static readonly Length Lap = Length.FromInches(0.5);

    /// <summary>Zippers at both edges, and no sizes of anything else.</summary>
    public static MountSpec Zippers { get; } = new(MountKind.Zipper, MountKind.Zipper, Length.Zero, MountFigures.None);

    /// <summary>Whether zippers hold the forward and the aft edge, and nothing the sides.</summary>
    public bool IsZippersAtBothEnds => this == OnZippers();

    /// <summary>Whether anything but the pockets holds the sides.</summary>
    public bool HoldsSides => Port is not null || Starboard is not null;

    /// <summary>What holds an edge; null when nothing does but the pockets at its ends.</summary>
    public MountKind? At(Side side) => side switch
    {
        Side.Forward => Forward,
        Side.Aft => Aft,
        Side.Port => Port,
        _ => Starboard,
    };

    /// <summary>Whether any edge is held so.</summary>
    public bool Uses(MountKind kind) => Forward == kind || Aft == kind || Port == kind || Starboard == kind;

    /// <summary>The forward and the aft edge held in one way, the sides as they are.</summary>
    public MountSpec Both(MountKind kind) => this with { Forward = kind, Aft = kind };

    /// <summary>Zippers at the forward and the aft edge, and nothing at the sides.</summary>
    public MountSpec OnZippers() => this with { Forward = MountKind.Zipper, Aft = MountKind.Zipper, Port = null, Starboard = null };
}

/// <summary>The sizes of every kind of fastening but the zipper.</summary>
/// <param name="Snaps">Press fasteners.</param>
/// <param name="Twist">Twist fasteners.</param>
/// <param name="Eyelets">The eyelets of a lacing, in each of its two flaps.</param>
/// <param name="LacingGap">Between the two flaps of a lacing.</param>
/// <param name="HookAndLoop">Hook-and-loop.</param>
/// <param name="Sleeve">A sleeve with its rod.</param>
public sealed record MountFigures(
    FastenerSpec Snaps, FastenerSpec Twist, FastenerSpec Eyelets, Length LacingGap, HookAndLoopSpec HookAndLoop, SleeveSpec Sleeve)
{
    /// <summary>For a job of zippers that gives none.</summary>
    public static MountFigures None { get; } = new(
        FastenerSpec.None, FastenerSpec.None, FastenerSpec.None, Length.Zero, new(Length.Zero, Force.Zero), SleeveSpec.None);

    /// <summary>What is set at a pitch; null for kinds that hold all along.</summary>
    public FastenerSpec? FastenersOf(MountKind kind) => kind switch
    {
        MountKind.Snaps => Snaps,
        MountKind.Twist => Twist,
        MountKind.Lacing => Eyelets,
        _ => null,
    };
}

/// <summary>Fasteners at a pitch.</summary>
/// <param name="Width">How far a flap reaches beyond the edge it is sewn to; the fasteners sit in its middle.</param>
/// <param name="Spacing">How they are spread.</param>
/// <param name="Diameter">Of one, over its cap, plate or rim.</param>
/// <param name="Strength">What pulls one off; null when it is not known.</param>
public sealed record FastenerSpec(Length Width, FastenerSpacing Spacing, Length Diameter, Force? Strength)
{
    /// <summary>None, of no size.</summary>
    public static FastenerSpec None { get; } = new(Length.Zero, new(Length.Zero, Length.Zero), Length.Zero, null);
}

/// <summary>How fasteners are spread along a flap.</summary>
/// <param name="Pitch">The most from one centre to the next.</param>
/// <param name="EndDistance">From the flap's end to the first centre, and from the last to the other end.</param>
public sealed record FastenerSpacing(Length Pitch, Length EndDistance);

/// <summary>Hook-and-loop along a flap.</summary>
/// <param name="Width">How far the flap reaches beyond the edge it is sewn to; the tape lies in its middle.</param>
/// <param name="Peel">What peels an inch of its length off.</param>
public sealed record HookAndLoopSpec(Length Width, Force Peel);
