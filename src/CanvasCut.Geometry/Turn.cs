namespace CanvasCut.Geometry;

/// <summary>Turns about the origin; exact for quarter turns.</summary>
public static class Turn
{
    /// <summary>A point turned to the left by quarter turns; any whole number.</summary>
    public static Point Quarters(Point point, int quarters) => (((quarters % 4) + 4) % 4) switch
    {
        1 => new(-point.Y, point.X),
        2 => new(-point.X, -point.Y),
        3 => new(point.Y, -point.X),
        _ => point,
    };
}
