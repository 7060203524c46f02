using UnitsNet;

namespace CanvasCut.Design;

/// <summary>What was found where a bow crosses the centreline.</summary>
/// <param name="Height">Of the tube's middle, over the level of the ends' heights; null when it was not measured.</param>
/// <param name="Cloth">The cloth's height there over the same level; null when it is not known.</param>
/// <param name="Diameter">The tube's; zero for an edge without a tube, null when it was not measured.</param>
/// <param name="SagAft">How far the cloth hangs below a straight line, halfway to the next bow aft; null when it was not measured.</param>
public sealed record BowMiddle(WrittenLength? Height, Length? Cloth, WrittenLength? Diameter, WrittenLength? SagAft)
{
    /// <summary>Nothing was measured.</summary>
    public static BowMiddle Unknown { get; } = new(null, null, null, null);

    /// <summary>Whether there is no tube.</summary>
    public bool IsBare => Diameter is { Value.Millimeters: <= 0 };
}
