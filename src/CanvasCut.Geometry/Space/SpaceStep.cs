namespace CanvasCut.Geometry;

/// <summary>A direction in space with a length: what leads from one <see cref="SpacePoint"/> to another.</summary>
/// <param name="X">To the right, in millimetres.</param>
/// <param name="Y">Away from the viewer, in millimetres.</param>
/// <param name="Z">Up, in millimetres.</param>
public readonly record struct SpaceStep(double X, double Y, double Z)
{
    /// <summary>How long the step is.</summary>
    public double LengthMm => Math.Sqrt(Dot(this));

    /// <summary>One step after another.</summary>
    public static SpaceStep operator +(SpaceStep first, SpaceStep second) => new(first.X + second.X, first.Y + second.Y, first.Z + second.Z);

    /// <summary>One step after the opposite of another.</summary>
    public static SpaceStep operator -(SpaceStep first, SpaceStep second) => new(first.X - second.X, first.Y - second.Y, first.Z - second.Z);

    /// <summary>A step so many times as long.</summary>
    public static SpaceStep operator *(SpaceStep step, double times) => new(step.X * times, step.Y * times, step.Z * times);

    /// <summary>The same direction with a length of 1.</summary>
    /// <exception cref="InvalidOperationException">The step has no length, so no direction.</exception>
    public SpaceStep Unit() => LengthMm > 0 ? this * (1 / LengthMm) : throw new InvalidOperationException("A step without length has no direction.");

    /// <summary>The scalar product, in square millimetres.</summary>
    public double Dot(SpaceStep other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

    /// <summary>The vector product: square to both, by the right-hand rule.</summary>
    public SpaceStep Cross(SpaceStep other) =>
        new((Y * other.Z) - (Z * other.Y), (Z * other.X) - (X * other.Z), (X * other.Y) - (Y * other.X));
}
