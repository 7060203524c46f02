using System.Collections.Immutable;

namespace CanvasCut.Geometry;

/// <summary>A spare distance that changes evenly as things are moved: a constant, and so much for each unknown.</summary>
/// <param name="Terms">How much each unknown adds for each millimetre; an unknown that is not named adds nothing.</param>
/// <param name="Constant">The spare where all unknowns are nought.</param>
public sealed record LinearSpare(ImmutableArray<(int Unknown, double Factor)> Terms, double Constant)
{
    /// <summary>The spare at a place.</summary>
    /// <param name="place">A value for every unknown.</param>
    public double At(ReadOnlySpan<double> place)
    {
        var sum = Constant;
        foreach (var (unknown, factor) in Terms)
        {
            sum += factor * place[unknown];
        }

        return sum;
    }
}

/// <summary>A spare that may be had in one of several ways, as to port of a thing or to starboard of it; the best of them counts.</summary>
/// <param name="Ways">At least one.</param>
public sealed record SpareChoice(ImmutableArray<LinearSpare> Ways)
{
    /// <summary>The spare at a place.</summary>
    /// <param name="place">A value for every unknown.</param>
    public double At(ReadOnlySpan<double> place)
    {
        var best = double.NegativeInfinity;
        foreach (var way in Ways)
        {
            best = Math.Max(best, way.At(place));
        }

        return best;
    }
}
