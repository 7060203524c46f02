namespace CanvasCut.Design;

/// <summary>The four sides of something that lies on the top.</summary>
public enum Side
{
    /// <summary>Toward the bow.</summary>
    Forward,

    /// <summary>Toward the stern.</summary>
    Aft,

    /// <summary>Left, looking forward.</summary>
    Port,

    /// <summary>Right, looking forward.</summary>
    Starboard,
}

/// <summary>One value for each side.</summary>
/// <typeparam name="T">The kind of value.</typeparam>
/// <param name="Forward">For the forward side.</param>
/// <param name="Aft">For the aft side.</param>
/// <param name="Port">For the port side.</param>
/// <param name="Starboard">For the starboard side.</param>
public sealed record Sides<T>(T Forward, T Aft, T Port, T Starboard)
{
    /// <summary>The value of a side.</summary>
    public T this[Side side] => side switch
    {
        Side.Forward => Forward,
        Side.Aft => Aft,
        Side.Port => Port,
        _ => Starboard,
    };

    /// <summary>The same values after a quarter turn clockwise as seen from above: what was forward lies to starboard.</summary>
    public Sides<T> TurnedClockwise() => new(Forward: Port, Aft: Starboard, Port: Aft, Starboard: Forward);
}

/// <summary>Makes <see cref="Sides{T}"/>.</summary>
public static class Sides
{
    /// <summary>The same value on every side.</summary>
    public static Sides<T> All<T>(T value) => new(value, value, value, value);

    /// <summary>The value that each side is given.</summary>
    public static Sides<T> Of<T>(Func<Side, T> of) => new(of(Side.Forward), of(Side.Aft), of(Side.Port), of(Side.Starboard));
}
