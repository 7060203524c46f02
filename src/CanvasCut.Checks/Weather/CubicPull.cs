namespace CanvasCut.Checks;

/// <summary>The pull at which slack and stretch together give the cloth the way that its load takes.</summary>
internal static class CubicPull
{
    private const int MostSteps = 100;

    /// <summary>The one root above zero of stretch·T³ + slack·T² = load, by Newton's steps from above.</summary>
    /// <param name="stretch">Above zero.</param>
    /// <param name="slack">Not below zero.</param>
    /// <param name="load">Not below zero.</param>
    public static double Of(double stretch, double slack, double load)
    {
        var pull = Math.Cbrt(load / stretch);
        for (var step = 0; step < MostSteps && pull > 0; step++)
        {
            var change = ((((stretch * pull) + slack) * pull * pull) - load) / (((3 * stretch * pull) + (2 * slack)) * pull);
            pull -= change;
            if (Math.Abs(change) <= 1e-12 * pull)
            {
                break;
            }
        }

        return pull;
    }
}
