using CanvasCut.Geometry;

namespace CanvasCut.Checks;

/// <summary>A distance that must be kept.</summary>
/// <param name="Code">The check it belongs to.</param>
/// <param name="Subject">Between what.</param>
/// <param name="DistanceMm">How far apart they are; negative by how far they lie on each other.</param>
/// <param name="NeededMm">How far apart they must be.</param>
internal sealed record Clearance(string Code, string Subject, double DistanceMm, double NeededMm)
{
    /// <summary>What is left beyond what is needed; negative when it is not enough.</summary>
    public double SpareMm => DistanceMm - NeededMm;

    /// <summary>The distance between two boxes; negative by the shorter way out when they lie on each other.</summary>
    public static double BetweenMm(Box first, Box second)
    {
        var across = Math.Max(first.Left - second.Right, second.Left - first.Right);
        var along = Math.Max(first.Bottom - second.Top, second.Bottom - first.Top);
        return across > 0 && along > 0 ? double.Hypot(across, along) : Math.Max(across, along);
    }

    /// <summary>The distance between two boxes along the boat alone, as if both reached across all of it.</summary>
    public static double AlongMm(Box first, Box second) => Math.Max(first.Bottom - second.Top, second.Bottom - first.Top);
}
