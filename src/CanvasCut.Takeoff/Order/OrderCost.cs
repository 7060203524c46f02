using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.Takeoff;

/// <summary>A line of the order with its price.</summary>
/// <param name="Line">The line.</param>
/// <param name="Price">The price of one; null when the price file has none.</param>
/// <param name="Amount">Number times price, rounded to the money's decimals; null without a price.</param>
public sealed record PricedLine(OrderLine Line, Price? Price, decimal? Amount);

/// <summary>What it all costs.</summary>
/// <param name="List">The prices.</param>
/// <param name="Lines">Every line of the order.</param>
/// <remarks>
/// All in decimal, no binary fraction anywhere. Each amount is rounded half away from zero to the money's decimals, and the
/// sums are those of the rounded amounts, so that whoever adds up the column gets the same.
/// </remarks>
public sealed record OrderCost(PriceList List, ImmutableArray<PricedLine> Lines)
{
    /// <summary>The priced lines.</summary>
    public decimal Materials => Lines.Sum(line => line.Amount ?? 0);

    /// <summary>What is added to the materials.</summary>
    public decimal Waste => Rounded(Materials * List.Waste);

    /// <summary>The sewist's time; zero when it is not counted.</summary>
    public decimal Labour => List.Labour is { } labour ? Rounded(labour.Hours * labour.Rate) : 0;

    /// <summary>Everything that has a price.</summary>
    public decimal Total => Materials + Waste + Labour;

    /// <summary>How many lines have no price and are not in the total.</summary>
    public int Unpriced => Lines.Count(line => line.Amount is null);

    /// <summary>Prices an order.</summary>
    public static OrderCost Of(ImmutableArray<OrderLine> order, PriceList list) => new(list, [.. order.Select(line => Priced(line, list))]);

    /// <summary>An amount in figures, with the money's decimals.</summary>
    public string Text(decimal amount) => amount.ToString("F" + List.Money.Decimals.ToString(System.Globalization.CultureInfo.InvariantCulture), System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>The total with its currency and date, and what is not in it.</summary>
    public string Summary
    {
        get
        {
            var unpriced = Unpriced switch
            {
                0 => string.Empty,
                1 => Say.Of(" WITHOUT 1 line that has no price"),
                var several => Say.Of($" WITHOUT {several} lines that have no price"),
            };
            var labour = List.Labour is null ? Say.Of("labour not counted") : Say.Of("labour counted");
            return Say.Of($"Total {List.Money.Currency} {Text(Total)}{unpriced}; prices of {List.Money.Date:yyyy-MM-dd}; {labour}.");
        }
    }

    private decimal Rounded(decimal amount) => decimal.Round(amount, List.Money.Decimals, MidpointRounding.AwayFromZero);

    private static PricedLine Priced(OrderLine line, PriceList list) =>
        list.Of(line.Thing.Grade, line.Thing.Length) is { } price && line.Bought.In(price.Per) is { } number
            ? new(line, price, decimal.Round(number * price.Amount, list.Money.Decimals, MidpointRounding.AwayFromZero))
            : new(line, null, null);
}
