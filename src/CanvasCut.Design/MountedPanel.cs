using UnitsNet;

namespace CanvasCut.Design;

/// <summary>The panel the way it lies on the top.</summary>
/// <param name="LongSide">Which way its long side lies.</param>
/// <param name="Athwart">Its size across the boat.</param>
/// <param name="ForeAft">Its size along the boat.</param>
/// <param name="Fittings">What lies on it, in the same sense.</param>
public sealed record MountedPanel(LongSide LongSide, Length Athwart, Length ForeAft, PanelFittings Fittings)
{
    /// <summary>The panel with its long side as asked.</summary>
    public static MountedPanel Of(SolarPanel panel, LongSide longSide)
    {
        var (length, width) = (panel.Body.Length, panel.Body.Width);
        var fittings = panel.LongSide is null && longSide == LongSide.ForeAft
            ? panel.Fittings.TurnedClockwise(foreAft: width)
            : panel.Fittings;
        return longSide == LongSide.Athwart ? new(longSide, length, width, fittings) : new(longSide, width, length, fittings);
    }
}
