using CanvasCut.Geometry;

namespace CanvasCut.Placing;

/// <summary>How far a part lies from something after a step of the mounting; asked so often that it keeps plain numbers.</summary>
internal abstract class MovedDistance
{
    /// <summary>The distance after a step; where it is known to be at least enough, any number that is enough too.</summary>
    public abstract double At(double x, double y, double enough);

    /// <summary>By how much it can change at most when the step changes by no more than this in each direction.</summary>
    public virtual double Change(double x, double y) => Math.Sqrt((x * x) + (y * y));
}

/// <summary>A distance that changes evenly in one direction.</summary>
internal sealed class EvenDistance(Step unit, double atOrigin) : MovedDistance
{
    /// <summary>The direction.</summary>
    public Step Unit { get; } = unit;

    /// <summary>The distance without a step.</summary>
    public double AtOrigin { get; } = atOrigin;

    private readonly (double X, double Y, double AtOrigin) _is = (unit.X, unit.Y, atOrigin);

    public override double At(double x, double y, double enough) => (_is.X * x) + (_is.Y * y) + _is.AtOrigin;

    public override double Change(double x, double y) => (Math.Abs(_is.X) * x) + (Math.Abs(_is.Y) * y);
}

/// <summary>A distance from a band without ends, on either side of it.</summary>
internal sealed class BesideDistance(Step across, double atOrigin, double halfMm) : MovedDistance
{
    private readonly (double X, double Y, double AtOrigin, double HalfMm) _is = (across.X, across.Y, atOrigin, halfMm);

    public override double At(double x, double y, double enough) => Math.Abs((_is.X * x) + (_is.Y * y) + _is.AtOrigin) - _is.HalfMm;

    public override double Change(double x, double y) => (Math.Abs(_is.X) * x) + (Math.Abs(_is.Y) * y);
}

/// <summary>A distance from an upright rectangle.</summary>
internal sealed class BlockDistance(Box part, Box block) : MovedDistance
{
    private readonly (Box Part, Box Block) _is = (part, block);

    public override double At(double x, double y, double enough) => _is.Part.MovedBy(new(x, y)).DistanceMm(_is.Block);
}

/// <summary>A distance from a convex zone that is set out all round.</summary>
internal sealed class ZoneDistance(ConvexZone zone, double halfMm) : MovedDistance
{
    private readonly (ConvexZone Zone, Box Round, double HalfMm) _is = (zone, zone.Bounds, halfMm);

    public override double At(double x, double y, double enough)
    {
        var round = Math.Max(Math.Max(_is.Round.Left - x, x - _is.Round.Right), Math.Max(_is.Round.Bottom - y, y - _is.Round.Top)) - _is.HalfMm;
        return round > enough ? round : _is.Zone.DistanceMm(x, y) - _is.HalfMm;
    }
}
