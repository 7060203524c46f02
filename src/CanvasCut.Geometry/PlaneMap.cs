namespace CanvasCut.Geometry;

/// <summary>From one plane to another with the same directions: stretched about the origin along each axis, then moved.</summary>
/// <param name="Move">Where the origin comes to lie.</param>
/// <param name="AlongX">By how much it is stretched along X; below zero it is mirrored too.</param>
/// <param name="AlongY">By how much it is stretched along Y.</param>
public readonly record struct PlaneMap(Step Move, double AlongX = 1, double AlongY = 1)
{
    /// <summary>Moved so that the origin comes to lie at a point.</summary>
    public static PlaneMap To(Point origin) => new(origin - new Point(0, 0));

    /// <summary>A point in the other plane.</summary>
    public Point Of(Point point) => new((point.X * AlongX) + Move.X, (point.Y * AlongY) + Move.Y);

    /// <summary>A box in the other plane.</summary>
    public Box Of(Box box) => Box.Holding([Of(new Point(box.Left, box.Bottom)), Of(new Point(box.Right, box.Top))]);

    /// <summary>An outline in the other plane.</summary>
    public Outline Of(Outline outline) => outline.Mapped(Of);
}
