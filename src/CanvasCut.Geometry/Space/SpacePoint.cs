namespace CanvasCut.Geometry;

/// <summary>A place in space.</summary>
/// <param name="X">To the right, in millimetres.</param>
/// <param name="Y">Away from the viewer, in millimetres.</param>
/// <param name="Z">Up, in millimetres.</param>
/// <remarks>The space is right-handed. Equality is exact, component by component.</remarks>
public readonly record struct SpacePoint(double X, double Y, double Z)
{
    /// <summary>The place reached by a step from here.</summary>
    public static SpacePoint operator +(SpacePoint from, SpaceStep step) => new(from.X + step.X, from.Y + step.Y, from.Z + step.Z);

    /// <summary>The step from one place to another.</summary>
    public static SpaceStep operator -(SpacePoint to, SpacePoint from) => new(to.X - from.X, to.Y - from.Y, to.Z - from.Z);

    /// <summary>The straight distance to another place.</summary>
    public double DistanceMm(SpacePoint other) => (other - this).LengthMm;

    /// <summary>The place a part of the way to another: 0 is here, 1 is there.</summary>
    public SpacePoint Toward(SpacePoint other, double part) => this + ((other - this) * part);
}
