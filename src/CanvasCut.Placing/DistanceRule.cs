using System.Collections.Immutable;
using CanvasCut.Geometry;
using CanvasCut.Patterns;

namespace CanvasCut.Placing;

/// <summary>A distance that a mounting must keep, wherever it lies: verdicts and the search for the best place both come from it.</summary>
/// <param name="Kind">What it is kept for.</param>
/// <param name="Subject">Between what.</param>
/// <param name="Parts">What keeps it, with the mounting where the rule was made; the nearest counts.</param>
/// <param name="From">What it is kept from.</param>
/// <param name="NeededMm">How large it must be.</param>
internal sealed record DistanceRule(ClearanceKind Kind, string Subject, ImmutableArray<Box> Parts, Obstacle From, double NeededMm)
{
    /// <summary>What it lies between on the side of what is mounted; null for all of it.</summary>
    public PartKey? Of { get; init; }

    /// <summary>What it is measured to.</summary>
    public required PartKey To { get; init; }

    /// <summary>What is left of it after a step of the mounting; negative when it is not enough.</summary>
    public double SpareMm(Step step) => DistanceMm(step) - NeededMm;

    /// <summary>The distance where the mounting lies.</summary>
    public Clearance Clearance => Placing.Clearance.OfMm(Kind, Subject, DistanceMm(new(0, 0)), NeededMm).Between(Of, To);

    /// <summary>What must be kept for it by a mounting whose middle was at the origin when the rule was made.</summary>
    /// <remarks>Of parts that one straight edge keeps, the one that reaches furthest stands for all.</remarks>
    public IEnumerable<SpareChoice> Choices(PlaceUnknowns at)
    {
        var all = Parts.SelectMany(part => From.Ways(part, at)).ToList();
        var straight = all.Where(ways => ways.Length == 1)
            .GroupBy(ways => (ways[0].Terms[0].Factor, ways[0].Terms[1].Factor))
            .Select(alike => alike.MinBy(ways => ways[0].Constant));
        return straight.Concat(all.Where(ways => ways.Length > 1))
            .Select(ways => new SpareChoice([.. ways.Select(way => way with { Constant = way.Constant - NeededMm })]));
    }

    private double DistanceMm(Step step)
    {
        var nearest = double.PositiveInfinity;
        foreach (var part in Parts)
        {
            nearest = Math.Min(nearest, From.DistanceMm(part.MovedBy(step)));
        }

        return nearest;
    }
}
