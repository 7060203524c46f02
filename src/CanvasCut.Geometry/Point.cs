namespace CanvasCut.Geometry;

/// <summary>A place in the plane.</summary>
/// <param name="X">To the right, in millimetres.</param>
/// <param name="Y">Upward, in millimetres.</param>
/// <remarks>The plane is right-handed with Y up. Equality is exact, component by component.</remarks>
public readonly record struct Point(double X, double Y)
{
    /// <summary>The place reached by a step from here.</summary>
    public static Point operator +(Point from, Step step) => new(from.X + step.X, from.Y + step.Y);

    /// <summary>The place from which a step leads here.</summary>
    public static Point operator -(Point from, Step step) => new(from.X - step.X, from.Y - step.Y);

    /// <summary>The step from one place to another.</summary>
    public static Step operator -(Point to, Point from) => new(to.X - from.X, to.Y - from.Y);

    /// <summary>The straight distance to another place.</summary>
    public double DistanceMm(Point other) => (other - this).LengthMm;

    /// <summary>The place a part of the way to another: 0 is here, 1 is there.</summary>
    public Point Toward(Point other, double part) => this + ((other - this) * part);
}
