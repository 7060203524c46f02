using UnitsNet;

namespace CanvasCut.Design;

/// <summary>A boom over the top: it swings about its pivot on the centreline, as far to port as to starboard.</summary>
/// <param name="Pivot">The station of its forward end; negative forward of the top.</param>
/// <param name="End">The station of its aft end when it lies amidships; aft of the pivot.</param>
/// <param name="Swing">How far it swings to each side; above zero, no more than a right angle.</param>
/// <param name="Height">From the cloth up to it where it comes lowest in its swing; null when it was not measured.</param>
/// <param name="Clearance">How far all must stay below it, and beside its swing what is too high; not negative.</param>
public sealed record TopBoom(Length Pivot, Length End, Angle Swing, Length? Height, Length Clearance);
