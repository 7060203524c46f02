using UnitsNet;

namespace CanvasCut.Design;

/// <summary>A further panel on the same carrier, beside the one before it.</summary>
/// <param name="Name">What the user calls it.</param>
/// <param name="Panel">The panel; the way it lies is given.</param>
/// <param name="Gap">From the panel before to this one.</param>
/// <param name="Beside">To starboard or aft of the one before.</param>
public sealed record RowPanel(string Name, SolarPanel Panel, Length Gap, Side Beside);
