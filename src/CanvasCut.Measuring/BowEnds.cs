using UnitsNet;

namespace CanvasCut.Measuring;

/// <summary>Where the ends of a bow lie, seen from above, from the middle of the forward bow.</summary>
/// <param name="PortOffset">The port end's offset; port is negative.</param>
/// <param name="PortStation">Its distance aft of the forward bow's line.</param>
/// <param name="StarboardOffset">The starboard end's offset.</param>
/// <param name="StarboardStation">Its distance aft.</param>
public sealed record BowEnds(Length PortOffset, Length PortStation, Length StarboardOffset, Length StarboardStation);
