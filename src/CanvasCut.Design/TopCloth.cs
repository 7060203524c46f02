using System.Collections.Immutable;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>The top: the stretched cloth that carries everything, with the tubes under it.</summary>
public sealed class TopCloth
{
    /// <summary>Describes a top.</summary>
    /// <param name="length">Fore and aft along the cloth on the centreline; above zero.</param>
    /// <param name="width">Across along the cloth; above zero.</param>
    /// <param name="edges">How much of the cloth's rim is not to be used.</param>
    /// <param name="bows">Forward to aft; may be empty.</param>
    /// <param name="keepOuts">What must stay clear; may be empty.</param>
    public TopCloth(Length length, Length width, TopEdges edges, ImmutableArray<Bow> bows, ImmutableArray<KeepOut> keepOuts)
    {
        Length = Require.Positive(length);
        Width = Require.Positive(width);
        (Edges, Bows, KeepOuts) = (edges, bows, keepOuts);
    }

    /// <summary>Fore and aft along the cloth.</summary>
    public Length Length { get; }

    /// <summary>Across along the cloth.</summary>
    public Length Width { get; }

    /// <summary>How much of the rim is not to be used.</summary>
    public TopEdges Edges { get; }

    /// <summary>The bows, forward to aft.</summary>
    public ImmutableArray<Bow> Bows { get; }

    /// <summary>What must stay clear.</summary>
    public ImmutableArray<KeepOut> KeepOuts { get; }
}

/// <summary>The rim of a top.</summary>
/// <param name="Margin">Along every edge nothing may be mounted within this distance.</param>
/// <param name="CornerRadius">
/// The radius at which the bows bend down at port and starboard; cloth within this distance of a side edge is counted
/// as bent, not as crowned. Zero when the edges lie before the bend.
/// </param>
public sealed record TopEdges(Length Margin, Length CornerRadius);
