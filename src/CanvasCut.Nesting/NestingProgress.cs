namespace CanvasCut.Nesting;

/// <summary>How far a search has come.</summary>
/// <param name="BestMm">The shortest length found.</param>
/// <param name="BoundMm">No layout can be shorter.</param>
/// <param name="Elapsed">The time since the search began.</param>
public sealed record NestingProgress(double BestMm, double BoundMm, TimeSpan Elapsed);
