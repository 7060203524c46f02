using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>A straight cut from selvage to selvage that meets no piece.</summary>
/// <param name="After">The number of the last piece before it.</param>
/// <param name="At">From the cut end; midway between the pieces on both sides.</param>
public sealed record StraightCut(int After, Length At);
