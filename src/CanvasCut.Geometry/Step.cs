namespace CanvasCut.Geometry;

/// <summary>A direction with a length: what leads from one <see cref="Point"/> to another.</summary>
/// <param name="X">To the right, in millimetres.</param>
/// <param name="Y">Upward, in millimetres.</param>
public readonly record struct Step(double X, double Y)
{
    /// <summary>How long the step is.</summary>
    public double LengthMm => double.Hypot(X, Y);

    /// <summary>The same step turned a quarter turn to the left (counter-clockwise).</summary>
    public Step Left => new(-Y, X);

    /// <summary>As in "(10, 20)"; the record's own form would print <see cref="Left"/>, and its left, without end.</summary>
    public override string ToString() => FormattableString.Invariant($"({X}, {Y})");

    /// <summary>One step after another.</summary>
    public static Step operator +(Step first, Step second) => new(first.X + second.X, first.Y + second.Y);

    /// <summary>One step after the opposite of another.</summary>
    public static Step operator -(Step first, Step second) => new(first.X - second.X, first.Y - second.Y);

    /// <summary>The opposite step.</summary>
    public static Step operator -(Step step) => new(-step.X, -step.Y);

    /// <summary>A step so many times as long.</summary>
    public static Step operator *(Step step, double times) => new(step.X * times, step.Y * times);

    /// <summary>The same direction with a length of 1.</summary>
    /// <exception cref="InvalidOperationException">The step has no length, so no direction.</exception>
    public Step Unit() => LengthMm > 0 ? this * (1 / LengthMm) : throw new InvalidOperationException("A step without length has no direction.");

    /// <summary>The scalar product, in square millimetres.</summary>
    public double Dot(Step other) => (X * other.X) + (Y * other.Y);

    /// <summary>The cross product, in square millimetres; above zero when <paramref name="other"/> lies to the left.</summary>
    public double Cross(Step other) => (X * other.Y) - (Y * other.X);
}
