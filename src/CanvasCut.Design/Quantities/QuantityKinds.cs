using System.Collections.Immutable;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>Every kind of quantity that is read or printed, one row each: add a kind here and nowhere else.</summary>
/// <remarks>
/// The first unit of a row is the plain one, which results.json gives; those with decimals are printed, in this order. Fields
/// of a job file are tied to a row in the table of field kinds.
/// </remarks>
public static class QuantityKinds
{
    /// <summary>
    /// The coldest air ever measured was -89.2 C (World Meteorological Organization); black cloth in the sun stays well below the boiling of
    /// water.
    /// </summary>
    private const double Coldest = -90;
    private const double Hottest = 100;

    /// <summary>Lengths, in every way that a tape measure is read.</summary>
    public static QuantityKind<Length> Length { get; } = new LengthKind();

    /// <summary>Masses.</summary>
    public static QuantityKind<Mass> Mass { get; } = new(
        "2.3 kg",
        () => Say.Of("a mass in kg, g, lb or oz"),
        new UnitOf<Mass>(UnitsNet.Mass.FromKilograms, mass => mass.Kilograms, "kg").Printed(2),
        new UnitOf<Mass>(UnitsNet.Mass.FromPounds, mass => mass.Pounds, "lb", "lbs").Printed(1),
        new UnitOf<Mass>(UnitsNet.Mass.FromGrams, mass => mass.Grams, "g"),
        new UnitOf<Mass>(UnitsNet.Mass.FromOunces, mass => mass.Ounces, "oz"));

    /// <summary>Speeds of the wind.</summary>
    public static QuantityKind<Speed> Speed { get; } = new(
        "35 kn",
        () => Say.Of("a wind speed in kn, m/s, mph or km/h"),
        new UnitOf<Speed>(UnitsNet.Speed.FromKnots, speed => speed.Knots, "kn", "kt", "knots").Printed(1),
        new UnitOf<Speed>(UnitsNet.Speed.FromMetersPerSecond, speed => speed.MetersPerSecond, "m/s").Printed(1),
        new UnitOf<Speed>(UnitsNet.Speed.FromMilesPerHour, speed => speed.MilesPerHour, "mph"),
        new UnitOf<Speed>(UnitsNet.Speed.FromKilometersPerHour, speed => speed.KilometersPerHour, "km/h"));

    /// <summary>Forces.</summary>
    public static QuantityKind<Force> Force { get; } = new(
        "9 lbf",
        () => Say.Of("a force in N, lbf or kgf"),
        new UnitOf<Force>(UnitsNet.Force.FromNewtons, force => force.Newtons, "N").Printed(1),
        new UnitOf<Force>(UnitsNet.Force.FromPoundsForce, force => force.PoundsForce, "lbf").Printed(1),
        new UnitOf<Force>(UnitsNet.Force.FromKilogramsForce, force => force.KilogramsForce, "kgf"));

    /// <summary>Forces on a seam or an edge.</summary>
    public static QuantityKind<ForcePerLength> ForcePerLength { get; } = new(
        "200 N/m",
        () => Say.Of("a force per length in N/m or lbf/in"),
        new UnitOf<ForcePerLength>(UnitsNet.ForcePerLength.FromNewtonsPerMeter, line => line.NewtonsPerMeter, "N/m").Printed(0),
        new UnitOf<ForcePerLength>(UnitsNet.ForcePerLength.FromPoundsForcePerInch, line => line.PoundsForcePerInch, "lbf/in").Printed(2));

    /// <summary>Pressures.</summary>
    public static QuantityKind<Pressure> Pressure { get; } = new(
        "2 kPa",
        () => Say.Of("a pressure in kPa, Pa or psi"),
        new UnitOf<Pressure>(UnitsNet.Pressure.FromPascals, pressure => pressure.Pascals, "Pa").Printed(0),
        new UnitOf<Pressure>(UnitsNet.Pressure.FromPoundsForcePerSquareInch, pressure => pressure.PoundsForcePerSquareInch, "psi").Printed(3),
        new UnitOf<Pressure>(UnitsNet.Pressure.FromKilopascals, pressure => pressure.Kilopascals, "kPa"));

    /// <summary>Temperatures of air and cloth.</summary>
    public static QuantityKind<Temperature> Temperature { get; } = new(
        "20 C",
        () => Say.Of("a temperature in C or F"),
        new UnitOf<Temperature>(UnitsNet.Temperature.FromDegreesCelsius, temperature => temperature.DegreesCelsius, "C", "°C").Printed(1, " °C"),
        new UnitOf<Temperature>(UnitsNet.Temperature.FromDegreesFahrenheit, temperature => temperature.DegreesFahrenheit, "F", "°F").Printed(0, " °F"))
    {
        Limit = new(Coldest, Hottest, () => Say.Of("is colder or hotter than any air or cloth; check the unit and the sign.")),
    };

    /// <summary>Differences of temperature.</summary>
    public static QuantityKind<TemperatureDelta> TemperatureStep { get; } = new(
        "3 C",
        () => Say.Of("a difference of temperature in C or F"),
        new UnitOf<TemperatureDelta>(TemperatureDelta.FromDegreesCelsius, step => step.DegreesCelsius, "C", "°C").Printed(1, " °C"),
        new UnitOf<TemperatureDelta>(TemperatureDelta.FromDegreesFahrenheit, step => step.DegreesFahrenheit, "F", "°F").Printed(1, " °F"));

    /// <summary>Relative humidities.</summary>
    public static QuantityKind<RelativeHumidity> Humidity { get; } = new(
        "65 %",
        () => Say.Of("a relative humidity"),
        new UnitOf<RelativeHumidity>(RelativeHumidity.FromPercent, humidity => humidity.Percent, "%").Printed(0))
    {
        Limit = new(double.NegativeInfinity, 100, () => Say.Of("is more than 100 %; air holds no more water than that.")),
    };

    /// <summary>Angles.</summary>
    public static QuantityKind<Angle> Angle { get; } = new(
        "5 deg",
        () => Say.Of("an angle in degrees"),
        new UnitOf<Angle>(UnitsNet.Angle.FromDegrees, angle => angle.Degrees, "deg", "°").Printed(1, "°", "0.0"));

    /// <summary>Times.</summary>
    public static QuantityKind<Duration> Duration { get; } = new(
        "4 h",
        () => Say.Of("a time in h, min or days"),
        new UnitOf<Duration>(UnitsNet.Duration.FromHours, duration => duration.Hours, "h", "hours", "hour").Printed(1),
        new UnitOf<Duration>(UnitsNet.Duration.FromMinutes, duration => duration.Minutes, "min", "minutes"),
        new UnitOf<Duration>(UnitsNet.Duration.FromDays, duration => duration.Days, "days", "day", "d"));

    /// <summary>Parts of a whole.</summary>
    public static QuantityKind<Ratio> Share { get; } = new(
        "1 %",
        () => Say.Of("a percentage"),
        new UnitOf<Ratio>(Ratio.FromPercent, share => share.Percent, "%").Printed(1));

    /// <summary>Numbers without a unit.</summary>
    public static QuantityKind<Scalar> Number { get; } = new(
        "2",
        () => Say.Of("a number"),
        new UnitOf<Scalar>(Scalar.FromAmount, count => count.Amount, "count", string.Empty).Printed(2, string.Empty));

    /// <summary>Voltages.</summary>
    public static QuantityKind<ElectricPotential> Voltage { get; } = new(
        "18.9 V",
        () => Say.Of("a voltage in V or mV"),
        new UnitOf<ElectricPotential>(ElectricPotential.FromVolts, voltage => voltage.Volts, "V").Printed(2),
        new UnitOf<ElectricPotential>(ElectricPotential.FromMillivolts, voltage => voltage.Millivolts, "mV"));

    /// <summary>Currents.</summary>
    public static QuantityKind<ElectricCurrent> Current { get; } = new(
        "5.6 A",
        () => Say.Of("a current in A or mA"),
        new UnitOf<ElectricCurrent>(ElectricCurrent.FromAmperes, current => current.Amperes, "A").Printed(1),
        new UnitOf<ElectricCurrent>(ElectricCurrent.FromMilliamperes, current => current.Milliamperes, "mA"));

    /// <summary>Powers.</summary>
    public static QuantityKind<Power> Power { get; } = new(
        "100 W",
        () => Say.Of("a power in W or kW"),
        new UnitOf<Power>(UnitsNet.Power.FromWatts, power => (double)power.Watts, "W").Printed(1),
        new UnitOf<Power>(UnitsNet.Power.FromKilowatts, power => (double)power.Kilowatts, "kW"));

    /// <summary>What a battery holds.</summary>
    public static QuantityKind<ElectricCharge> Charge { get; } = new(
        "200 Ah",
        () => Say.Of("a charge in Ah"),
        new UnitOf<ElectricCharge>(ElectricCharge.FromAmpereHours, charge => charge.AmpereHours, "Ah").Printed(1));

    /// <summary>Resistances.</summary>
    public static QuantityKind<ElectricResistance> Resistance { get; } = new(
        "0.05 ohm",
        () => Say.Of("a resistance in ohm"),
        new UnitOf<ElectricResistance>(ElectricResistance.FromOhms, resistance => resistance.Ohms, "ohm", "Ω").Printed(3));

    /// <summary>Energies.</summary>
    public static QuantityKind<Energy> Energy { get; } = new(
        "400 Wh",
        () => Say.Of("an energy in Wh or kWh"),
        new UnitOf<Energy>(UnitsNet.Energy.FromWattHours, energy => energy.WattHours, "Wh").Printed(0),
        new UnitOf<Energy>(UnitsNet.Energy.FromKilowattHours, energy => energy.KilowattHours, "kWh"));

    /// <summary>By what part a figure of a panel changes with each kelvin.</summary>
    public static QuantityKind<CoefficientOfThermalExpansion> Coefficient { get; } = new(
        "-0.30 %/K",
        () => Say.Of("a change in %/K"),
        new UnitOf<CoefficientOfThermalExpansion>(
            part => CoefficientOfThermalExpansion.FromPerKelvin((double)part / 100), change => change.PerKelvin * 100, "%/K", "%/C", "%/°C").Printed(2));

    /// <summary>All of them.</summary>
    public static ImmutableArray<QuantityKind> All { get; } =
    [
        Length, Mass, Speed, Force, ForcePerLength, Pressure, Temperature, TemperatureStep, Humidity, Angle, Duration, Share, Number,
        Voltage, Current, Power, Charge, Resistance, Energy, Coefficient,
    ];

    /// <summary>Lengths are read and printed as a tape measure is.</summary>
    private sealed class LengthKind() : QuantityKind<Length>(
        "1040 mm",
        () => Say.Of("a length, such as \"1040 mm\" or \"41 in\""),
        new UnitOf<Length>(UnitsNet.Length.FromMillimeters, length => length.Millimeters, "mm"))
    {
        public override Length? Read(string text) => LengthText.Parse(text).Value;

        private protected override string Text(Length quantity, RoundTo way) => LengthText.InUnits(quantity, PrintUnits.Both, InchFraction.Sixteenth, way);
    }
}
