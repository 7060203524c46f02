using System.Collections.Immutable;
using CanvasCut.Geometry;
using CanvasCut.Patterns;

namespace CanvasCut.Placing;

/// <summary>Something that must not lie on a tube.</summary>
/// <param name="Kind">What its distance is kept for.</param>
/// <param name="Key">Which part it is.</param>
/// <param name="Name">As in "forward zipper".</param>
/// <param name="Places">Where it lies, in the plan of the top; of several the nearest to a tube counts.</param>
internal sealed record TubePart(ClearanceKind Kind, PartKey Key, string Name, ImmutableArray<Box> Places);
