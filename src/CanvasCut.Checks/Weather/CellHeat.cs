using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>How a panel's back is cooled.</summary>
public enum PanelBack
{
    /// <summary>Air passes freely behind it: glass and polymer on an open rack.</summary>
    Free,

    /// <summary>No air passes behind it: glass and polymer with an insulated back.</summary>
    Blocked,
}

/// <summary>How warm cells get in full sun.</summary>
public static class CellHeat
{
    /// <summary>Full sun, in W/m².</summary>
    private const double FullSun = 1000;

    /// <summary>
    /// The Sandia Array Performance Model: E·exp(a + b·wind) + air + E/1000·ΔT, with the coefficients of D. King and
    /// others, SAND2004-3535, as the pvlib documentation lists them.
    /// </summary>
    public static Temperature Of(PanelBack back, Temperature air, Speed wind)
    {
        var (a, b, step) = back == PanelBack.Free ? (-3.56, -0.075, 3.0) : (-2.81, -0.0455, 0.0);
        return Temperature.FromDegreesCelsius((FullSun * Math.Exp(a + (b * wind.MetersPerSecond))) + air.DegreesCelsius + step);
    }
}
