using UnitsNet;

namespace CanvasCut.Design;

/// <summary>A straight tube under the top beside its bows: slanted across, fore and aft, or a short strut.</summary>
/// <param name="Name">What the user calls it; not blank.</param>
/// <param name="From">The middle of one end; the port or the forward one where it runs from edge to edge.</param>
/// <param name="To">The middle of the other end.</param>
/// <param name="Diameter">Its outside diameter; above zero.</param>
public sealed record TopTube(string Name, TopPlace From, TopPlace To, Length Diameter)
{
    /// <summary>Whether it runs along the boat rather than across it.</summary>
    public bool RunsForeAft => UnitMath.Abs(To.Station - From.Station) > UnitMath.Abs(To.Offset - From.Offset);
}
