namespace CanvasCut.Geometry;

/// <summary>Neighbouring edges of a line that make up one arc, or a single straight edge.</summary>
/// <param name="Start">The index of the point where it begins.</param>
/// <param name="Edges">How many edges it takes; at least one.</param>
/// <param name="Bulge">
/// The tangent of a quarter of the arc's angle, above zero when it turns to the left on its way; zero for a straight edge.
/// </param>
public readonly record struct ArcRun(int Start, int Edges, double Bulge);
