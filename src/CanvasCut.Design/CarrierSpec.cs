using UnitsNet;

namespace CanvasCut.Design;

/// <summary>How two hems meet at a corner.</summary>
public enum CornerKind
{
    /// <summary>Folded along the diagonal, the surplus trimmed away.</summary>
    Mitred,

    /// <summary>One hem folded over the other, nothing trimmed.</summary>
    Square,
}

/// <summary>How an edge is finished.</summary>
public enum EdgeFinish
{
    /// <summary>Turned under and hemmed.</summary>
    Hem,

    /// <summary>Cut at the finished size and bound with tape.</summary>
    Binding,
}

/// <summary>A turned hem.</summary>
/// <param name="TurnUnder">The raw edge folded in first.</param>
/// <param name="Width">The hem that shows.</param>
public sealed record Hem(Length TurnUnder, Length Width)
{
    /// <summary>The cloth a hem takes up beyond the finished edge.</summary>
    public Length Allowance => TurnUnder + Width;
}

/// <summary>A place on the top.</summary>
/// <param name="Station">From the top's forward edge along the centreline.</param>
/// <param name="Offset">From the centreline along the cloth; port negative.</param>
public sealed record TopPlace(Length Station, Length Offset);

/// <summary>How the borders may change for a later panel.</summary>
/// <param name="Kept">What is added to the border of each side so that a later panel may be larger; usually zero.</param>
/// <param name="Widest">The widest border a carrier may have when a smaller panel is put on it.</param>
public sealed record BorderChange(Sides<Length> Kept, Length Widest);

/// <summary>The carrier as wanted.</summary>
/// <param name="Border">The canvas showing beyond the panel, with what is kept for a later panel.</param>
/// <param name="Hem">The hem of every hemmed edge.</param>
/// <param name="Corner">How hems meet.</param>
/// <param name="Edges">How each edge is finished.</param>
/// <param name="Position">Where its middle lies; null when the program chooses.</param>
/// <param name="Room">How the borders may change for a later panel.</param>
public sealed record CarrierSpec(
    Sides<Length> Border, Hem Hem, CornerKind Corner, Sides<EdgeFinish> Edges, TopPlace? Position, BorderChange Room)
{
    /// <summary>The cloth beyond the finished edge on each side.</summary>
    public Sides<Length> Allowances => Sides.Of(side => Edges[side] == EdgeFinish.Hem ? Hem.Allowance : Length.Zero);

    /// <summary>The border without what is kept for a later panel.</summary>
    public Sides<Length> AskedBorder => Sides.Of(side => Border[side] - Room.Kept[side]);
}
