using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>One thing that holds the panel down.</summary>
/// <param name="Code">The check.</param>
/// <param name="Subject">What holds, in plain words.</param>
/// <param name="Load">The load at the wind it was worked out for, and what may be put on it.</param>
/// <param name="HoldsTo">The wind at which the load is all that may be put on it; load grows with the square of the speed.</param>
public sealed record WindHold(string Code, string Subject, Measured Load, Speed HoldsTo);
