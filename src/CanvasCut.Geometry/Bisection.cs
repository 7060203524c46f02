namespace CanvasCut.Geometry;

/// <summary>Finds where a growing function crosses zero.</summary>
internal static class Bisection
{
    /// <summary>Halves the interval until it cannot be halved further, so the answer is as good as a double allows.</summary>
    public static double Root(Func<double, double> growing, double low, double high)
    {
        while (true)
        {
            var middle = low + ((high - low) / 2);
            if (middle <= low || middle >= high)
            {
                return middle;
            }

            (low, high) = growing(middle) < 0 ? (middle, high) : (low, middle);
        }
    }
}
