using System.Collections.Immutable;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>The top: the stretched cloth that carries everything, with the tubes under it.</summary>
public sealed class TopCloth
{
    /// <summary>Describes a rectangular top.</summary>
    /// <param name="length">Fore and aft along the cloth on the centreline; above zero.</param>
    /// <param name="width">Across along the cloth; above zero.</param>
    /// <param name="edges">How much of the cloth's rim is not to be used.</param>
    /// <param name="bows">Forward to aft; may be empty.</param>
    /// <param name="keepOuts">What must stay clear; may be empty.</param>
    public TopCloth(Length length, Length width, TopEdges edges, ImmutableArray<Bow> bows, ImmutableArray<KeepOut> keepOuts)
        : this(length, TopOutline.Rectangle(Require.Positive(length), Require.Positive(width)), edges)
    {
        (Width, Bows, KeepOuts) = (width, bows, keepOuts);
    }

    /// <summary>Describes a top of any outline, with nothing under it or on it yet.</summary>
    /// <param name="length">Fore and aft along the cloth on the centreline; above zero.</param>
    /// <param name="outline">Its edge.</param>
    /// <param name="edges">How much of the cloth's rim is not to be used.</param>
    public TopCloth(Length length, TopOutline outline, TopEdges edges)
    {
        ArgumentNullException.ThrowIfNull(outline);
        (Length, Outline, Edges) = (Require.Positive(length), outline, edges);
        Width = UnitsNet.Length.FromMillimeters(outline.Shape.Bounds.WidthMm);
    }

    private TopCloth(TopCloth other, ImmutableArray<Bow> bows)
    {
        (Length, Width, Outline, Edges) = (other.Length, other.Width, other.Outline, other.Edges);
        (Bows, Tubes, KeepOuts, Fixtures, Boom) = (bows, other.Tubes, other.KeepOuts, other.Fixtures, other.Boom);
    }

    /// <summary>Fore and aft along the cloth, on the centreline.</summary>
    public Length Length { get; }

    /// <summary>Across along the cloth, between the outermost places to port and to starboard.</summary>
    public Length Width { get; }

    /// <summary>Its edge, seen from above.</summary>
    public TopOutline Outline { get; }

    /// <summary>How much of the rim is not to be used.</summary>
    public TopEdges Edges { get; }

    /// <summary>The bows, forward to aft.</summary>
    public ImmutableArray<Bow> Bows { get; init; } = [];

    /// <summary>Other tubes under it.</summary>
    public ImmutableArray<TopTube> Tubes { get; init; } = [];

    /// <summary>What must stay clear.</summary>
    public ImmutableArray<KeepOut> KeepOuts { get; init; } = [];

    /// <summary>What is on it already.</summary>
    public ImmutableArray<TopFixture> Fixtures { get; init; } = [];

    /// <summary>The boom that swings over it; null when there is none.</summary>
    public TopBoom? Boom { get; init; }

    /// <summary>The same top over other bows.</summary>
    public TopCloth Over(ImmutableArray<Bow> bows) => new(this, bows);
}

/// <summary>The rim of a top.</summary>
/// <param name="Margin">Along every edge nothing may be mounted within this distance.</param>
/// <param name="CornerRadius">
/// The radius at which the bows bend down at port and starboard; cloth within this distance of a side edge is counted
/// as bent, not as crowned. Zero when the edges lie before the bend.
/// </param>
public sealed record TopEdges(Length Margin, Length CornerRadius);
