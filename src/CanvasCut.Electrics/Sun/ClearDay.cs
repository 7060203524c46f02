using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>A clear day on level ground and on a panel.</summary>
/// <param name="Level">On level ground.</param>
/// <param name="Plane">On the panel, less what its face throws back.</param>
/// <param name="Usual">The light that most of the energy comes with: each moment weighed by its own light.</param>
public sealed record ClearDay(Irradiation Level, Irradiation Plane, Irradiance Usual)
{
    private const int StepMinutes = 10;

    /// <summary>What the panel gets of what falls on level ground.</summary>
    public Ratio OfLevel => Ratio.FromDecimalFractions(Level <= Irradiation.Zero ? 0 : Plane / Level);

    /// <summary>The day at a latitude, for a panel on a boat that swings or whose bow points somewhere.</summary>
    public static ClearDay Of(Angle latitude, int dayOfYear, PanelLie lies, (Angle? Heading, Ratio Albedo) boat)
    {
        var (declination, outside) = (SunPosition.Declination(dayOfYear), SunPosition.OutsideTheAir(dayOfYear));
        var (level, plane, weighed) = (0.0, 0.0, 0.0);
        for (var minute = StepMinutes / 2.0; minute < 24 * 60; minute += StepMinutes)
        {
            var sun = SunPosition.At(latitude, declination, Angle.FromDegrees((minute / 4) - 180));
            var light = ClearSky.Haurwitz(sun.Zenith);
            if (light <= Irradiance.Zero)
            {
                continue;
            }

            level += light.WattsPerSquareMeter;
            weighed += light.WattsPerSquareMeter * light.WattsPerSquareMeter;
            plane += OnPlane(sun, (light, outside), lies, boat);
        }

        const double Hours = StepMinutes / 60.0;
        return new(
            Irradiation.FromWattHoursPerSquareMeter(level * Hours),
            Irradiation.FromWattHoursPerSquareMeter(plane * Hours),
            Irradiance.FromWattsPerSquareMeter(level > 0 ? weighed / level : 0));
    }

    private static double OnPlane(SunPosition sun, (Irradiance Level, Irradiance Outside) light, PanelLie lies, (Angle? Heading, Ratio Albedo) boat)
    {
        var split = PlaneLight.Split(light.Level, sun.Zenith, light.Outside);
        var beam = boat.Heading is { } heading
            ? PlaneLight.Useful(sun.Incidence(lies.Tilt, heading + lies.Toward))
            : PlaneLight.MeanPassing(lies.Tilt, sun.Zenith);
        return (split.Beam.WattsPerSquareMeter * beam)
            + PlaneLight.OfSky(split.Sky, lies.Tilt).WattsPerSquareMeter
            + PlaneLight.OfGround(light.Level, boat.Albedo, lies.Tilt).WattsPerSquareMeter;
    }
}
