using CanvasCut.Geometry;

namespace CanvasCut.Nesting;

/// <summary>Where one copy of an item lies.</summary>
/// <param name="Item">The item's place in the task, from 0.</param>
/// <param name="Copy">Which copy of it, from 0.</param>
/// <param name="Quarters">By how many quarters to the left it is turned about the origin, before it is moved.</param>
/// <param name="Offset">How it is moved after the turn.</param>
public sealed record NestingPlacement(int Item, int Copy, int Quarters, Step Offset);
