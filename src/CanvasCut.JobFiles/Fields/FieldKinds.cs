using System.Globalization;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>Which kinds of fields hold quantities, and of what kind.</summary>
internal static class FieldKinds
{
    /// <summary>The kind of quantity in a field, or in each item of a list; null for fields that hold none.</summary>
    public static QuantityKind? QuantityIn(FieldKind kind) => kind switch
    {
        FieldKind.Length or FieldKind.LengthPair or FieldKind.LengthList => QuantityKinds.Length,
        FieldKind.Percent or FieldKind.Share => QuantityKinds.Share,
        FieldKind.Mass => QuantityKinds.Mass,
        FieldKind.Speed => QuantityKinds.Speed,
        FieldKind.Force => QuantityKinds.Force,
        FieldKind.Pressure => QuantityKinds.Pressure,
        FieldKind.Temperature => QuantityKinds.Temperature,
        FieldKind.TemperatureStep => QuantityKinds.TemperatureStep,
        FieldKind.Humidity => QuantityKinds.Humidity,
        FieldKind.Angle => QuantityKinds.Angle,
        FieldKind.Duration => QuantityKinds.Duration,
        FieldKind.Voltage => QuantityKinds.Voltage,
        FieldKind.Current => QuantityKinds.Current,
        FieldKind.Power => QuantityKinds.Power,
        FieldKind.Charge => QuantityKinds.Charge,
        FieldKind.Energy => QuantityKinds.Energy,
        FieldKind.Coefficient => QuantityKinds.Coefficient,
        FieldKind.Text or FieldKind.Word or FieldKind.WordList or FieldKind.NameList or FieldKind.Flag or FieldKind.Count
            or FieldKind.Factor or FieldKind.Date or FieldKind.Paper => null,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "This kind of field stands in no table."),
    };

    /// <summary>A quantity as the model has it: a share is a plain part of one.</summary>
    public static object InModel(IQuantity quantity) => quantity is Ratio share ? share.DecimalFractions : quantity;

    /// <summary>A size to compare within one kind of field, in its plain unit.</summary>
    public static double SizeOf(FieldKind kind, object value) => value switch
    {
        IQuantity quantity => QuantityWords.Plain(quantity).Number,
        int count => count,
        double share when QuantityIn(kind) == QuantityKinds.Share => Ratio.FromDecimalFractions(share).Percent,
        _ => (double)value,
    };

    /// <summary>The size of an end of a usual range, which is written as in a file.</summary>
    public static double SizeOf(FieldKind kind, string text) =>
        QuantityIn(kind) is { } quantities ? SizeOf(kind, quantities.Parse(text)!) : double.Parse(text, CultureInfo.InvariantCulture);
}
