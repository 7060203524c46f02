using UnitsNet;

namespace CanvasCut.Design;

/// <summary>Limits as people read them: rounded to the safe side in every unit, so that what is printed is never beyond the limit.</summary>
public static class LimitWords
{
    /// <summary>What may be at most so much, rounded down.</summary>
    public static string Most(IQuantity limit) => QuantityWords.Of(limit, RoundTo.Down);

    /// <summary>What must be at least so much, rounded up.</summary>
    public static string Least(IQuantity limit) => QuantityWords.Of(limit, RoundTo.Up);

    /// <summary>A length of at most so much, in the units asked for.</summary>
    public static string Most(Length limit, PrintUnits units, InchFraction finest = InchFraction.Sixteenth) => LengthText.InUnits(limit, units, finest, RoundTo.Down);

    /// <summary>A length of at least so much, in the units asked for.</summary>
    public static string Least(Length limit, PrintUnits units, InchFraction finest = InchFraction.Sixteenth) => LengthText.InUnits(limit, units, finest, RoundTo.Up);

    /// <summary>A temperature of at least so much in whole degrees, in the units asked for.</summary>
    public static string Least(Temperature limit, PrintUnits units) => QuantityKinds.Temperature.Whole(limit, units, RoundTo.Up);

    /// <summary>A temperature of at most so much in whole degrees, in the units asked for.</summary>
    public static string Most(Temperature limit, PrintUnits units) => QuantityKinds.Temperature.Whole(limit, units, RoundTo.Down);

    /// <summary>A difference of at least so much in whole degrees, in the units asked for.</summary>
    public static string Least(TemperatureDelta limit, PrintUnits units) => QuantityKinds.TemperatureStep.Whole(limit, units, RoundTo.Up);

    /// <summary>A wind of at most so much in whole knots: to be read from a card, or said on the radio.</summary>
    public static int Knots(Speed limit) => (int)Rounded.Decimals(limit.Knots, 0, RoundTo.Down);

    /// <summary>The same in whole metres a second.</summary>
    public static int MetersPerSecond(Speed limit) => (int)Rounded.Decimals(limit.MetersPerSecond, 0, RoundTo.Down);
}
