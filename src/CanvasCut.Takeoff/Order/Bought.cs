using System.Globalization;
using CanvasCut.Design;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>A quantity as a shop sells it.</summary>
/// <param name="Number">How many; exact.</param>
/// <param name="Unit">piece, pack, roll, spool, m or yd.</param>
/// <param name="Other">The same in the other system; null for what is counted.</param>
public sealed record Bought(decimal Number, string Unit, Bought? Other = null)
{
    private const decimal MetresPerYard = 0.9144m;
    private const int Decimals = 3;

    /// <summary>So that a length that is a whole number of steps but for round-off is not rounded up.</summary>
    private const decimal RoundOff = 0.000_001m;

    /// <summary>How many of a unit; null when it is not sold so.</summary>
    public decimal? In(string unit) => unit == Unit ? Number : Other?.Unit == unit ? Other.Number : null;

    /// <summary>As in "1.1 m (1.203 yd)".</summary>
    public override string ToString() => Other is null ? $"{Text(Number)} {Say.Of(Unit)}" : $"{Text(Number)} {Say.Of(Unit)} ({Text(Other.Number)} {Say.Of(Other.Unit)})";

    /// <summary>A length that is cut in multiples of a step: exact in the unit of the job, to a thousandth in the other.</summary>
    public static Bought InSteps(Length length, Length step, PrintUnits units)
    {
        var steps = decimal.Ceiling((Millimetres(length) / Millimetres(step)) - RoundOff);
        var metres = steps * Millimetres(step) / 1000;
        return Both(decimal.Round(metres, Decimals), decimal.Round(metres / MetresPerYard, Decimals), units);
    }

    /// <summary>A length in whole metres and in whole yards, each rounded up.</summary>
    public static Bought Whole(Length length, PrintUnits units)
    {
        var metres = Millimetres(length) / 1000;
        return Both(decimal.Ceiling(metres - RoundOff), decimal.Ceiling((metres / MetresPerYard) - RoundOff), units);
    }

    /// <summary>A length in whole rolls or spools.</summary>
    public static Bought InRolls(Length length, Length roll, string unit) => new(decimal.Ceiling((Millimetres(length) / Millimetres(roll)) - RoundOff), unit);

    /// <summary>A number in whole packs.</summary>
    public static Bought InPacks(int count, int pack) => pack == 1 ? new(count, Say.Later("piece")) : new((count + pack - 1) / pack, Say.Later("pack"));

    private static Bought Both(decimal metres, decimal yards, PrintUnits units) =>
        units == PrintUnits.Imperial ? new(yards, "yd", new(metres, "m")) : new(metres, "m", new(yards, "yd"));

    private static decimal Millimetres(Length length) => (decimal)length.Millimeters;

    private static string Text(decimal number) => number.ToString("0.###", CultureInfo.InvariantCulture);
}
