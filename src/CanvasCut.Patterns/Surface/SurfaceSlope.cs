using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>How the cloth slopes at a place.</summary>
/// <param name="ForeAft">How it falls going aft; below zero where it rises.</param>
/// <param name="Athwart">How it falls going to starboard; below zero where it rises.</param>
/// <param name="Steepest">How it falls the steepest way: the angle between the cloth and the level, never below zero.</param>
public sealed record SurfaceSlope(Angle ForeAft, Angle Athwart, Angle Steepest);
