using UnitsNet;

namespace CanvasCut.Design;

/// <summary>One unit of a kind of quantity: how it is written, and how it is printed.</summary>
/// <param name="From">The quantity of so many of it.</param>
/// <param name="In">How many of it a quantity is.</param>
/// <param name="Words">The ways in which people may write it, the plain one first; empty for a bare number.</param>
internal sealed record UnitOf<T>(Func<QuantityValue, T> From, Func<T, double> In, params string[] Words)
    where T : struct, IQuantity
{
    private const string Short = "0.###";

    /// <summary>Whether it is read only and never printed.</summary>
    public bool IsReadOnly => Format is null;

    private string? Format { get; init; }

    private int Decimals { get; init; }

    private string Sign { get; init; } = string.Empty;

    /// <summary>The same, printed with so many decimals at most and its plain word.</summary>
    public UnitOf<T> Printed(int decimals) => Printed(decimals, " " + Words[0]);

    /// <summary>The same, printed with so many decimals at most and a sign behind the number, the space before it included.</summary>
    public UnitOf<T> Printed(int decimals, string sign, string format = Short) => this with { Format = format, Decimals = decimals, Sign = sign };

    /// <summary>A quantity in this unit.</summary>
    public string Print(T quantity, RoundTo way) => Print(quantity, way, Decimals);

    /// <summary>The same with no decimals.</summary>
    public string PrintWhole(T quantity, RoundTo way) => Print(quantity, way, decimals: 0);

    private string Print(T quantity, RoundTo way, int decimals) =>
        Rounded.Text(In(quantity), decimals, way, Format ?? Short) + Sign;
}
