using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>A place on the earth.</summary>
/// <param name="Latitude">North positive.</param>
/// <param name="Longitude">East positive.</param>
public sealed record EarthPlace(Angle Latitude, Angle Longitude);

/// <summary>Where the sun stands.</summary>
/// <param name="Zenith">From straight overhead; over 90 degrees it is below the horizon. The air's bending is left out.</param>
/// <param name="Azimuth">From north over east.</param>
public sealed record SunPosition(Angle Zenith, Angle Azimuth)
{
    private const double MinutesPerRadian = 229.18;
    private const double SolarConstant = 1367;

    /// <summary>At a moment and place, by Spencer's series (1971): within a degree and less of the full algorithm.</summary>
    public static SunPosition At(DateTimeOffset moment, EarthPlace place)
    {
        var time = moment.UtcDateTime;
        var day = DayOf(time);
        var solarHours = time.TimeOfDay.TotalHours + (place.Longitude.Degrees / 15) + (EquationOfTime(day).Hours);
        return At(place.Latitude, Declination(day), Angle.FromDegrees(15 * (solarHours - 12)));
    }

    /// <summary>At a latitude, the sun so far north of the equator and so far past noon.</summary>
    public static SunPosition At(Angle latitude, Angle declination, Angle pastNoon)
    {
        var (lat, dec, hour) = (latitude.Radians, declination.Radians, pastNoon.Radians);
        var cosine = (Math.Sin(lat) * Math.Sin(dec)) + (Math.Cos(lat) * Math.Cos(dec) * Math.Cos(hour));
        var fromSouth = Math.Atan2(Math.Sin(hour), (Math.Cos(hour) * Math.Sin(lat)) - (Math.Tan(dec) * Math.Cos(lat)));
        return new(Angle.FromRadians(Math.Acos(Math.Clamp(cosine, -1, 1))), Angle.FromDegrees(180 + Angle.FromRadians(fromSouth).Degrees));
    }

    /// <summary>How far the sun's rays are from square to a panel that is tilted so far toward so much from north over east.</summary>
    public Angle Incidence(Angle tilt, Angle toward)
    {
        var cosine = (Math.Cos(tilt.Radians) * Math.Cos(Zenith.Radians))
            + (Math.Sin(tilt.Radians) * Math.Sin(Zenith.Radians) * Math.Cos((Azimuth - toward).Radians));
        return Angle.FromRadians(Math.Acos(Math.Clamp(cosine, -1, 1)));
    }

    /// <summary>How far north of the equator the sun stands, on a day of the year and its fraction in universal time: Spencer 1971.</summary>
    public static Angle Declination(double dayOfYear)
    {
        var b = YearAngle(dayOfYear);
        return Angle.FromRadians(0.006918 - (0.399912 * Math.Cos(b)) + (0.070257 * Math.Sin(b)) - (0.006758 * Math.Cos(2 * b))
            + (0.000907 * Math.Sin(2 * b)) - (0.002697 * Math.Cos(3 * b)) + (0.00148 * Math.Sin(3 * b)));
    }

    /// <summary>The same by one sine: Cooper 1969; within a degree and a half.</summary>
    public static Angle DeclinationByCooper(int dayOfYear) => Angle.FromDegrees(23.45 * Math.Sin(2 * Math.PI * (284 + dayOfYear) / 365));

    /// <summary>By how much the sun is before a clock that shows mean solar time: Spencer 1971.</summary>
    public static Duration EquationOfTime(double dayOfYear)
    {
        var b = YearAngle(dayOfYear);
        return Duration.FromMinutes(MinutesPerRadian * (0.000075 + (0.001868 * Math.Cos(b)) - (0.032077 * Math.Sin(b))
            - (0.014615 * Math.Cos(2 * b)) - (0.040849 * Math.Sin(2 * b))));
    }

    /// <summary>What comes from the sun outside the air, square to its rays: Spencer 1971, of 1367 W/m².</summary>
    public static Irradiance OutsideTheAir(double dayOfYear)
    {
        var b = YearAngle(dayOfYear);
        return Irradiance.FromWattsPerSquareMeter(SolarConstant * (1.00011 + (0.034221 * Math.Cos(b)) + (0.00128 * Math.Sin(b))
            + (0.000719 * Math.Cos(2 * b)) + (0.000077 * Math.Sin(2 * b))));
    }

    private static double DayOf(DateTime time) => time.DayOfYear + time.TimeOfDay.TotalDays;

    private static double YearAngle(double dayOfYear) => 2 * Math.PI * (dayOfYear - 1) / 365;
}
