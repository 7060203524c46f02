using System.Collections.Immutable;
using System.Globalization;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>One thing to buy.</summary>
/// <param name="Thing">What to ask for.</param>
/// <param name="Bought">How much, in the unit a shop sells it by.</param>
/// <param name="Also">How that was come to; may be empty.</param>
/// <param name="Rounding">The rule by which it was rounded.</param>
/// <param name="Use">What it is for.</param>
public sealed record OrderLine(OrderThing Thing, Bought Bought, string Also, string Rounding, OrderUse Use)
{
    /// <summary>What to ask for.</summary>
    public string Item => Thing.Name;

    /// <summary>How much, as a number with a point.</summary>
    public string Quantity => Bought.Number.ToString(CultureInfo.InvariantCulture);

    /// <summary>Of what the number counts: piece, pack, roll, spool, m, yd.</summary>
    public string Unit => Bought.Unit;
}

/// <summary>What to ask for.</summary>
/// <param name="Grade">The grade's id, by which a price file names it.</param>
/// <param name="Name">In words.</param>
/// <param name="Length">The length of each, for what is sold by the piece in lengths; else null.</param>
public sealed record OrderThing(string Grade, string Name, Length? Length = null);

/// <summary>What something is for.</summary>
/// <param name="Text">In words.</param>
/// <param name="Pieces">The pieces it is for; empty when it is for none of them.</param>
public sealed record OrderUse(string Text, ImmutableArray<PieceKey> Pieces);
