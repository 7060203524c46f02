using System.Collections.Immutable;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>The two kinds of zipper.</summary>
public enum ZipperKind
{
    /// <summary>Bought in a length, comes apart in two halves.</summary>
    Separating,

    /// <summary>Cut from a roll, with sliders and stops put on.</summary>
    Continuous,
}

/// <summary>The zippers wanted.</summary>
/// <param name="Gauge">The widths across.</param>
/// <param name="Kind">Separating or continuous.</param>
/// <param name="Setback">From each finished corner of the carrier to the zipper's end.</param>
/// <param name="Reveal">From the carrier's edge out to the middle of the chain.</param>
/// <param name="Stock">The lengths on sale, shortest first; for separating zippers.</param>
/// <param name="CapTurn">Turned under along the edges of an end cap; zero for edges sealed with a hot knife.</param>
public sealed record ZipperSpec(
    ZipperGauge Gauge,
    ZipperKind Kind,
    Length Setback,
    Length Reveal,
    ImmutableArray<Length> Stock,
    Length CapTurn = default)
{
    /// <summary>The side at which the forward and the aft zipper start: port or starboard.</summary>
    public Side Start { get; init; } = Side.Port;

    /// <summary>From the carrier's corner to where a zipper starts; null for as far as keeps it clear of the pocket.</summary>
    public Length? StartSetback { get; init; }

    /// <summary>Where the zipper of an edge starts; that of a side at its forward end.</summary>
    public Side StartOf(Side edge) => edge is Side.Forward or Side.Aft ? Start : Side.Forward;

    /// <summary>From the carrier's edge out to the outer edge of the top's tape.</summary>
    public Length OuterTapeEdge => Reveal + (Gauge.OverallWidth / 2);
}

/// <summary>A zipper's widths.</summary>
/// <param name="Chain">Across the closed teeth.</param>
/// <param name="OverallWidth">Across both tapes, closed.</param>
public sealed record ZipperGauge(Length Chain, Length OverallWidth);

/// <summary>The corner pockets wanted.</summary>
/// <param name="Leg">Along each leg seam; null for as large as is needed to hold and can be fitted, without shading a cell.</param>
/// <param name="Ease">How far the leg seams lie outside what they go round.</param>
/// <param name="Mouth">The hem of the mouth.</param>
/// <param name="SeamAllowance">Turned under along the legs.</param>
/// <param name="OverZipper">Whether the pocket goes over the zipper's end, or lies between the zippers' ends and the corner.</param>
public sealed record PocketSpec(Length? Leg, Length Ease, Hem Mouth, Length SeamAllowance, bool OverZipper);

/// <summary>What a weather strip is sewn to; its free edge lies on the other.</summary>
public enum StripGround
{
    /// <summary>To the top, beyond what it covers.</summary>
    Top,

    /// <summary>To the carrier, along its edge; it comes off with it.</summary>
    Carrier,
}

/// <summary>What holds a weather strip's free edge.</summary>
public enum StripHold
{
    /// <summary>Its own weight.</summary>
    Nothing,

    /// <summary>Squares of hook-and-loop.</summary>
    HookAndLoop,

    /// <summary>Press fasteners.</summary>
    Snaps,

    /// <summary>A rod in its hem, which holds nothing but weighs it down and keeps it straight.</summary>
    Rod,
}

/// <summary>The weather strip wanted.</summary>
/// <param name="Edges">Which edges it covers; none for no strip.</param>
/// <param name="Overlap">How far it reaches over the carrier.</param>
/// <param name="SeamAllowance">Turned under along the seam on the top.</param>
/// <param name="Hem">Of the free edge and the ends.</param>
/// <param name="Overhang">How far it reaches past the carrier at each end.</param>
public sealed record WeatherStripSpec(ImmutableArray<Side> Edges, Length Overlap, Length SeamAllowance, Hem Hem, Length Overhang)
{
    /// <summary>From what it covers out to its seam, where that is settled; null where the job's rows decide.</summary>
    public Length? SeamClearance { get; init; }

    /// <summary>What the strip of each edge is sewn to.</summary>
    public Sides<StripGround> SewnTo { get; init; } = Sides.All(StripGround.Top);

    /// <summary>What holds the free edges.</summary>
    public StripHold Held { get; init; }

    /// <summary>The most from one snap or square to the next.</summary>
    public Length Pitch { get; init; }

    /// <summary>How long and wide a square of hook-and-loop is.</summary>
    public Length Square { get; init; }

    /// <summary>The diameter of the rod in a hem.</summary>
    public Length Rod { get; init; }

    /// <summary>The edges whose strip is sewn to the top.</summary>
    public ImmutableArray<Side> OnTop => [.. Edges.Where(side => SewnTo[side] == StripGround.Top)];
}

/// <summary>The chafe patches wanted.</summary>
/// <param name="WidthBeyondTube">How far a patch reaches beyond the tube on each side.</param>
/// <param name="TurnUnder">Along every edge.</param>
public sealed record ChafeSpec(Length WidthBeyondTube, Length TurnUnder);
