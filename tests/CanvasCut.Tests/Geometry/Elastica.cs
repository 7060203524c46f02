namespace CanvasCut.Tests.Geometry;

/// <summary>The exact curve of a thin strip, whatever its slope: the curvature falls by the load's part square to it.</summary>
internal static class Elastica
{
    /// <summary>A strip lifted in the middle, its ends on a level and free to turn and slide.</summary>
    /// <param name="endSlope">The angle at its ends, in radians.</param>
    /// <returns>From end to end, the rise, and the curvature in the middle.</returns>
    public static (double Length, double Rise, double Curvature) MiddleLifted(double endSlope)
    {
        const double Step = 1e-4;
        var state = new[] { 0, 0, endSlope, 0.0 };
        while (true)
        {
            var next = Stepped(state, Step);
            if (next[2] <= 0)
            {
                return (2 * state[0], state[1], state[3]);
            }

            state = next;
        }
    }

    /// <summary>One step of Runge and Kutta's fourth-order rule for x' = cos θ, y' = sin θ, θ' = −k, k' = cos θ.</summary>
    private static double[] Stepped(double[] state, double h)
    {
        var one = Rates(state);
        var two = Rates(Plus(state, one, h / 2));
        var three = Rates(Plus(state, two, h / 2));
        var four = Rates(Plus(state, three, h));
        return [.. state.Select((value, i) => value + (h * (one[i] + (2 * two[i]) + (2 * three[i]) + four[i]) / 6))];
    }

    private static double[] Rates(double[] state) => [Math.Cos(state[2]), Math.Sin(state[2]), -state[3], Math.Cos(state[2])];

    private static double[] Plus(double[] state, double[] rates, double times) => [.. state.Select((value, i) => value + (times * rates[i]))];
}
