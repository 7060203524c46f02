using UnitsNet;

namespace CanvasCut.Placing;

/// <summary>A distance that must be kept.</summary>
/// <param name="Kind">What it is kept for.</param>
/// <param name="Subject">Between what.</param>
/// <param name="Distance">How far apart they are; negative by how far they lie on each other.</param>
/// <param name="Needed">How far apart they must be.</param>
public sealed record Clearance(ClearanceKind Kind, string Subject, Length Distance, Length Needed)
{
    /// <summary>What is left beyond what is needed; negative when it is not enough.</summary>
    internal double SpareMm => Distance.Millimeters - Needed.Millimeters;

    /// <summary>The same from the plane.</summary>
    internal static Clearance OfMm(ClearanceKind kind, string subject, double distanceMm, double neededMm) =>
        new(kind, subject, Length.FromMillimeters(distanceMm), Length.FromMillimeters(neededMm));
}
