using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Placing;

/// <summary>A distance that must be kept.</summary>
/// <param name="Kind">What it is kept for.</param>
/// <param name="Subject">Between what.</param>
/// <param name="Distance">How far apart they are; negative by how far they lie on each other.</param>
/// <param name="Needed">How far apart they must be.</param>
public sealed record Clearance(ClearanceKind Kind, string Subject, Length Distance, Length Needed)
{
    /// <summary>What it lies between on the side of what is mounted; null for all of it.</summary>
    public PartKey? Of { get; private init; }

    /// <summary>What it is measured to; null for nothing that has a key.</summary>
    public PartKey? To { get; private init; }

    /// <summary>The same between two things.</summary>
    internal Clearance Between(PartKey? of, PartKey to) => this with { Of = of, To = to };

    /// <summary>What is left beyond what is needed; negative when it is not enough.</summary>
    internal double SpareMm => Distance.Millimeters - Needed.Millimeters;

    /// <summary>The same from the plane.</summary>
    internal static Clearance OfMm(ClearanceKind kind, string subject, double distanceMm, double neededMm) =>
        new(kind, subject, Length.FromMillimeters(distanceMm), Length.FromMillimeters(neededMm));
}
