using CanvasCut.Geometry;

namespace CanvasCut.Nesting;

/// <summary>How a piece is held before it is moved to its place: mirrored or not, then turned to the left about the origin.</summary>
/// <remarks>Quarter turns are exact to the last digit.</remarks>
public readonly record struct Pose
{
    /// <summary>Describes a pose.</summary>
    /// <param name="degrees">The turn to the left in whole degrees; any whole number, kept from 0 to 359.</param>
    /// <param name="isMirrored">Whether the piece is first seen in a mirror that stands on the Y axis.</param>
    public Pose(int degrees, bool isMirrored = false) => (Degrees, IsMirrored) = (((degrees % 360) + 360) % 360, isMirrored);

    /// <summary>The turn to the left, from 0 to 359.</summary>
    public int Degrees { get; }

    /// <summary>Whether the piece is mirrored before it is turned.</summary>
    public bool IsMirrored { get; }

    /// <summary>An outline held in this pose.</summary>
    public Outline Of(Outline shape)
    {
        var seen = IsMirrored ? shape.Mirrored() : shape;
        if (Degrees % 90 == 0)
        {
            return Degrees == 0 ? seen : seen.Turned(Degrees / 90);
        }

        var (sine, cosine) = Math.SinCos(Degrees * Math.PI / 180);
        return seen.Mapped(p => new((p.X * cosine) - (p.Y * sine), (p.X * sine) + (p.Y * cosine)));
    }
}
