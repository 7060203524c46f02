using System.Collections.Immutable;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>What is on a top already.</summary>
public enum FixtureKind
{
    /// <summary>A seam of the top's own cloth.</summary>
    Seam,

    /// <summary>A window.</summary>
    Window,

    /// <summary>A zipper, as of a side curtain.</summary>
    Zipper,

    /// <summary>A strap or a webbing.</summary>
    Strap,

    /// <summary>A patch that strengthens or mends.</summary>
    Patch,
}

/// <summary>What may not lie on a fixture.</summary>
public enum Forbidden
{
    /// <summary>Anything.</summary>
    Everything,

    /// <summary>Rows of stitches to the top.</summary>
    Stitches,

    /// <summary>The edges of the carrier, what holds them, pockets and the junction box.</summary>
    HardEdges,

    /// <summary>Cells.</summary>
    Cells,
}

/// <summary>Something that is on the top already.</summary>
/// <param name="Name">What the user calls it; not blank.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Places">Two opposite corners of a rectangle, three or more corners of an area, or the points of a line.</param>
/// <param name="LineWidth">How wide a line is; null for an area.</param>
/// <param name="Forbids">What may not lie on it; may be empty.</param>
/// <param name="Clearance">How far that must stay away; not negative.</param>
public sealed record TopFixture(
    string Name, FixtureKind Kind, ImmutableArray<TopPlace> Places, Length? LineWidth, ImmutableArray<Forbidden> Forbids, Length Clearance)
{
    /// <summary>Whether a line runs along the boat rather than across it.</summary>
    public bool RunsForeAft => UnitMath.Abs(Places[^1].Station - Places[0].Station) > UnitMath.Abs(Places[^1].Offset - Places[0].Offset);

    /// <summary>What a kind forbids when nothing else is said; common practice, no source.</summary>
    public static ImmutableArray<Forbidden> UsualOf(FixtureKind kind) => kind switch
    {
        FixtureKind.Seam => [Forbidden.Stitches],
        FixtureKind.Patch => [Forbidden.Stitches, Forbidden.HardEdges],
        _ => [Forbidden.Everything],
    };
}
