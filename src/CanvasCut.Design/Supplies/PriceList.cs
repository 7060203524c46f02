using System.Collections.Immutable;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>The user's own prices.</summary>
/// <param name="Money">Currency, date and decimals.</param>
/// <param name="Waste">Added to the materials: 0.05 is five per cent.</param>
/// <param name="Labour">Hours at a rate; null when labour is not counted.</param>
/// <param name="Prices">The prices, in the order of the file.</param>
public sealed record PriceList(Money Money, decimal Waste, Labour? Labour, ImmutableArray<Price> Prices)
{
    /// <summary>The price of an item; null when there is none.</summary>
    /// <param name="item">The grade's id.</param>
    /// <param name="length">The length it is sold in, for zippers by the piece; null for anything else.</param>
    public Price? Of(string item, Length? length) => Prices.FirstOrDefault(price => price.Item == item && Same(price.Length, length));

    /// <summary>Whether two lengths on sale are the same, to half a millimetre.</summary>
    public static bool Same(Length? one, Length? other) =>
        one is { } a && other is { } b ? Math.Abs((a - b).Millimeters) < 0.5 : one is null && other is null;
}

/// <summary>The money that prices are told in.</summary>
/// <param name="Currency">Three capitals, as in EUR.</param>
/// <param name="Date">When the prices were true.</param>
/// <param name="Decimals">Digits after the point to which each amount is rounded, half away from zero.</param>
public sealed record Money(string Currency, DateOnly Date, int Decimals);

/// <summary>One price.</summary>
/// <param name="Item">The grade's id.</param>
/// <param name="Length">The length of the piece, for zippers that are sold by the piece; else null.</param>
/// <param name="Per">m, yd, piece, pack, roll or spool.</param>
/// <param name="Amount">Not negative.</param>
public sealed record Price(string Item, Length? Length, string Per, decimal Amount);

/// <summary>The sewist's time.</summary>
/// <param name="Hours">How many.</param>
/// <param name="Rate">For an hour.</param>
public sealed record Labour(decimal Hours, decimal Rate);
