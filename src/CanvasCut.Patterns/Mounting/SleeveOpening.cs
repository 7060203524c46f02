using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>What is cut out of a sleeve for the other's lugs.</summary>
public static class SleeveOpening
{
    /// <summary>How far an opening reaches from the fold, on each ply: to as far from the sleeve's row as a row lies from a fold.</summary>
    public static Length DepthOf(SleeveSpec sleeve) => UnitMath.Max(sleeve.Depth - StitchRows.FromFold, sleeve.Depth / 2);
}
