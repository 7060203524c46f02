using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>To what wind a part holds.</summary>
internal static class WindReach
{
    /// <summary>No wind is stronger; what holds to it is told as holding to more than any boat carries a top in.</summary>
    private const double MostKnots = 1000;

    private const int Halvings = 60;

    /// <summary>The wind at which all that a part may bear is used, for a load that grows with the wind.</summary>
    /// <param name="partUsed">The load at a wind as a part of what may be borne.</param>
    public static Speed Of(Func<Speed, double> partUsed)
    {
        var (low, high) = (0.0, MostKnots);
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = partUsed(Speed.FromKnots(middle)) <= 1 ? (middle, high) : (low, middle);
        }

        return Speed.FromKnots(low);
    }

    /// <summary>The same for a load that grows with the square of the wind.</summary>
    /// <param name="wind">A wind.</param>
    /// <param name="partUsed">The part that is used at it.</param>
    public static Speed Square(Speed wind, double partUsed) => Speed.FromKnots(wind.Knots / Math.Sqrt(partUsed));
}
