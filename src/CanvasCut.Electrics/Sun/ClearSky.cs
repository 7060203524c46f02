using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>What falls on level ground when no cloud is there.</summary>
public static class ClearSky
{
    /// <summary>MJ/m² a minute, FAO-56.</summary>
    private const double SolarMegajoules = 0.0820;

    /// <summary>A minute; the sums of finer steps are the same to 1 in 100 000.</summary>
    private const int StepsPerDay = 24 * 60;

    /// <summary>FAO-56 equation 37, at the sea.</summary>
    private const double FaoClearPart = 0.75;

    /// <summary>At one moment: Haurwitz 1945.</summary>
    public static Irradiance Haurwitz(Angle zenith)
    {
        var cosine = Math.Cos(zenith.Radians);
        return Irradiance.FromWattsPerSquareMeter(cosine <= 0 ? 0 : 1098 * cosine * Math.Exp(-0.059 / cosine));
    }

    /// <summary>How many times the air straight overhead the rays pass: Kasten and Young 1989.</summary>
    public static Scalar AirMass(Angle zenith) => Scalar.FromAmount(
        1 / (Math.Cos(zenith.Radians) + (0.50572 * Math.Pow(96.07995 - zenith.Degrees, -1.6364))));

    /// <summary>Over a day: Haurwitz 1945, the sun after Spencer.</summary>
    public static Irradiation HaurwitzDay(Angle latitude, int dayOfYear)
    {
        var declination = SunPosition.Declination(dayOfYear);
        var sum = Enumerable.Range(0, StepsPerDay).Sum(step =>
            Haurwitz(SunPosition.At(latitude, declination, Angle.FromDegrees(((step + 0.5) * 360 / StepsPerDay) - 180)).Zenith).WattsPerSquareMeter);
        return Irradiation.FromWattHoursPerSquareMeter(sum * 24 / StepsPerDay);
    }

    /// <summary>
    /// What falls outside the air on level ground in a day: FAO Irrigation and Drainage Paper 56, equations 21 to 25; good up to 55 degrees of
    /// latitude.
    /// </summary>
    public static Irradiation OutsideDay(Angle latitude, int dayOfYear)
    {
        var (lat, dec) = (latitude.Radians, FaoDeclination(dayOfYear).Radians);
        var sunset = SunsetAngle(latitude, FaoDeclination(dayOfYear)).Radians;
        var near = 1 + (0.033 * Math.Cos(2 * Math.PI * dayOfYear / 365));
        var megajoules = 1440 / Math.PI * SolarMegajoules * near * ((sunset * Math.Sin(lat) * Math.Sin(dec)) + (Math.Cos(lat) * Math.Cos(dec) * Math.Sin(sunset)));
        return Irradiation.FromJoulesPerSquareMeter(megajoules * 1e6);
    }

    /// <summary>Over a day at the sea: FAO-56 equation 37.</summary>
    public static Irradiation FaoDay(Angle latitude, int dayOfYear) => FaoClearPart * OutsideDay(latitude, dayOfYear);

    /// <summary>The two sums of a clear day: no day gives more than the larger, an ordinary clear one the smaller.</summary>
    public static (Irradiation Ordinary, Irradiation Most) Day(Angle latitude, int dayOfYear)
    {
        var (first, second) = (HaurwitzDay(latitude, dayOfYear), FaoDay(latitude, dayOfYear));
        return first < second ? (first, second) : (second, first);
    }

    /// <summary>From sunrise to sunset.</summary>
    public static Duration DayLength(Angle latitude, Angle declination) => Duration.FromHours(24 / Math.PI * SunsetAngle(latitude, declination).Radians);

    /// <summary>How far north of the equator FAO-56 has the sun.</summary>
    public static Angle FaoDeclination(int dayOfYear) => Angle.FromRadians(0.409 * Math.Sin((2 * Math.PI * dayOfYear / 365) - 1.39));

    private static Angle SunsetAngle(Angle latitude, Angle declination) =>
        Angle.FromRadians(Math.Acos(Math.Clamp(-Math.Tan(latitude.Radians) * Math.Tan(declination.Radians), -1, 1)));
}
