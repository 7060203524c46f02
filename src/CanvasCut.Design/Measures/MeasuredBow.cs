using UnitsNet;

namespace CanvasCut.Design;

/// <summary>A line across the top that was measured: a bow, or an edge without one.</summary>
/// <param name="Name">What the user calls it.</param>
/// <param name="Height">Its ends' height over any level common to all bows.</param>
public sealed record MeasuredBow(string Name, Length Height);
