using CanvasCut.Design;
using CanvasCut.Geometry;

namespace CanvasCut.Patterns;

/// <summary>A corner of the carrier.</summary>
/// <param name="End">Forward or aft.</param>
/// <param name="Hand">Port or starboard.</param>
public sealed record Corner(Side End, Side Hand)
{
    /// <summary>All four, forward before aft, port before starboard.</summary>
    public static IReadOnlyList<Corner> All { get; } =
    [
        new(Side.Forward, Side.Port),
        new(Side.Forward, Side.Starboard),
        new(Side.Aft, Side.Port),
        new(Side.Aft, Side.Starboard),
    ];

    /// <summary>The direction outward across the boat: −1 to port, 1 to starboard.</summary>
    public int OutwardX => Hand == Side.Starboard ? 1 : -1;

    /// <summary>The direction outward along the boat: −1 aft, 1 forward.</summary>
    public int OutwardY => End == Side.Forward ? 1 : -1;

    /// <summary>The corner of a box.</summary>
    public Point Of(Box box) => new(OutwardX > 0 ? box.Right : box.Left, OutwardY > 0 ? box.Top : box.Bottom);

    /// <summary>As in "pocket-forward-port", the same in every language.</summary>
    public string Id => $"{Words.Id(End)}-{Words.Id(Hand)}";

    /// <summary>As in "forward port".</summary>
    public override string ToString() => $"{Words.Of(End)} {Words.Of(Hand)}";
}
