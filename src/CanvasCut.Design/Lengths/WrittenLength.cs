using UnitsNet;

namespace CanvasCut.Design;

/// <summary>A length and how it was written, so that it can be carried over as it is.</summary>
/// <param name="Value">The length.</param>
/// <param name="Form">How it was written.</param>
public sealed record WrittenLength(Length Value, LengthForm Form);
