namespace CanvasCut.Geometry;

/// <summary>The isometric view of a space from above, from the right of its Y axis and behind its X axis.</summary>
/// <remarks>
/// On paper X runs down to the right, Y up to the right and Z up, all three at the same scale; X, minus Y and Z are 120°
/// apart (ISO 5456-3, from memory). The viewer is far away, so lines of sight are parallel.
/// </remarks>
public static class Isometric
{
    private static readonly double Cosine30 = Math.Sqrt(0.75);

    /// <summary>From anything to the viewer's eye, of length 1.</summary>
    public static SpaceStep TowardViewer { get; } = new SpaceStep(1, -1, 1).Unit();

    /// <summary>Where a place is drawn; lengths along the axes are true.</summary>
    public static Point Of(SpacePoint place) => new((place.X + place.Y) * Cosine30, place.Z + ((place.Y - place.X) / 2));

    /// <summary>How much nearer to the viewer a place is than the origin.</summary>
    public static double NearnessMm(SpacePoint place) => (place - default(SpacePoint)).Dot(TowardViewer);
}
