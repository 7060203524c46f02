using UnitsNet;

namespace CanvasCut.Design;

/// <summary>What the adhesive is pressed to.</summary>
public enum BondSurface
{
    /// <summary>A smooth tape or webbing that is sewn to the cloth.</summary>
    SewnTape,

    /// <summary>A coated, smooth patch that is sewn to the cloth.</summary>
    CoatedPatch,

    /// <summary>The woven cloth itself.</summary>
    RawCloth,
}

/// <summary>How the panel is bonded to the carrier.</summary>
/// <param name="Onto">What the adhesive is pressed to.</param>
/// <param name="TapeWidth">The width of the adhesive tape; null for that of its grade.</param>
/// <param name="TapeLength">How much is laid at most, at least once round the panel; null for as many strips as leave no wide gap.</param>
/// <param name="Day">The weather of the day; what is not given is null.</param>
/// <param name="Limits">What the day must be like.</param>
public sealed record BondingSpec(BondSurface Onto, Length? TapeWidth, Length? TapeLength, BondingDay Day, BondingLimits Limits);

/// <summary>The weather at the hour of bonding and after.</summary>
/// <param name="Air">The air; null when not given.</param>
/// <param name="Humidity">Relative humidity; null when not given.</param>
/// <param name="Surface">The colder of the two surfaces to be bonded; null when not given.</param>
/// <param name="Clear">How long it stays dry and no colder than the hard stop once the work is done; null when not given.</param>
public sealed record BondingDay(Temperature? Air, RelativeHumidity? Humidity, Temperature? Surface, Duration? Clear);

/// <summary>What a day for bonding must be like.</summary>
/// <param name="LeastSurface">Below this the adhesive wets the surface badly.</param>
/// <param name="MostSurface">Above this it is too hot to work well.</param>
/// <param name="HardStop">Below this nothing is bonded, and nothing cures.</param>
/// <param name="DewMargin">How far the surface must be above the dew point.</param>
/// <param name="Cure">How long the bond takes to be full.</param>
public sealed record BondingLimits(Temperature LeastSurface, Temperature MostSurface, Temperature HardStop, TemperatureDelta DewMargin, Duration Cure)
{
    /// <summary>Those that a job file takes when it names none; docs/job-file.md has their sources.</summary>
    public static BondingLimits Usual { get; } = new(
        Temperature.FromDegreesCelsius(15),
        Temperature.FromDegreesCelsius(38),
        Temperature.FromDegreesCelsius(10),
        TemperatureDelta.FromDegreesCelsius(3),
        Duration.FromHours(72));
}

/// <summary>One hour of a forecast.</summary>
/// <param name="Time">When, by the clock of the place.</param>
/// <param name="Air">The air.</param>
/// <param name="Humidity">Relative humidity.</param>
/// <param name="Surface">The surface to be bonded.</param>
/// <param name="IsDry">Whether no rain falls.</param>
public sealed record ForecastHour(DateTime Time, Temperature Air, RelativeHumidity Humidity, Temperature Surface, bool IsDry);
