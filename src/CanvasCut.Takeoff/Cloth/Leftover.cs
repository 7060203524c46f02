using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>A rectangle of the cloth ordered that no piece lies on and that is worth keeping.</summary>
/// <param name="Name">A, B, C …, the largest first.</param>
/// <param name="Place">Where it lies: X from the cut end along the roll, Y from the selvage, millimetres.</param>
public sealed record Leftover(string Name, Box Place)
{
    /// <summary>Smaller ones are not worth keeping: common practice, no source.</summary>
    public static readonly Length Least = Length.FromMillimeters(200);

    /// <summary>More are not told.</summary>
    private const int Most = 8;

    /// <summary>How fine is looked; what is found is widened to the pieces.</summary>
    private const double GridMm = 5;

    /// <summary>The leftovers between the selvages, the largest first; none lies on a piece or on another.</summary>
    public static ImmutableArray<Leftover> Of(ClothRoll roll, Length ordered, ImmutableArray<PlacedPiece> placed)
    {
        var frame = new Box(0, roll.Selvage.Millimeters, ordered.Millimeters, (roll.Width - roll.Selvage).Millimeters);
        var rooms = EmptyRoom.Of(frame, [.. placed.Select(piece => piece.Outline)], Least.Millimeters, GridMm);
        return [.. rooms.Take(Most).Select((box, i) => new Leftover(((char)('A' + i)).ToString(), box))];
    }
}
