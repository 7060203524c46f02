using CanvasCut.Geometry;

namespace CanvasCut.Nesting;

/// <summary>A part of a stretch, from 0 at its start to 1 at its end, or <see cref="Before"/> to <see cref="Beyond"/>.</summary>
internal readonly record struct StretchPart(double From, double To)
{
    /// <summary>Where a part starts that holds more than touches the stretch's start.</summary>
    public const double Before = double.NegativeInfinity;

    /// <summary>Where a part ends that holds more than touches the stretch's end.</summary>
    public const double Beyond = double.PositiveInfinity;
}

/// <summary>A straight line of places along which a free one is looked for.</summary>
internal readonly record struct Stretch(Point From, Point To)
{
    /// <summary>How long it is.</summary>
    public double LengthMm => From.DistanceMm(To);

    /// <summary>The same places, starting from the left (or from below where it stands upright).</summary>
    public Stretch FromTheLeft => From.X < To.X || (From.X == To.X && From.Y <= To.Y) ? this : new(To, From);

    /// <summary>A place on it; its ends without round-off.</summary>
    public Point At(double part) => part <= 0 ? From : part >= 1 ? To : From.Toward(To, part);

    /// <summary>The part that lies in a box or touches it.</summary>
    public StretchPart? Inside(Box box)
    {
        var across = Between(From.X - box.Left, To.X - box.Left, Between(box.Right - From.X, box.Right - To.X, new(0, 1)));
        return Between(From.Y - box.Bottom, To.Y - box.Bottom, Between(box.Top - From.Y, box.Top - To.Y, across));
    }

    private static StretchPart? Between(double startMm, double endMm, StretchPart? part)
    {
        if (part is not { } whole || Math.Max(startMm, endMm) < -ForbiddenZone.TouchMm)
        {
            return null;
        }

        var crossing = Math.Clamp(startMm / (startMm - endMm), 0, 1);
        var from = startMm < -ForbiddenZone.TouchMm ? Math.Max(whole.From, crossing) : whole.From;
        var to = endMm < -ForbiddenZone.TouchMm ? Math.Min(whole.To, crossing) : whole.To;
        return from <= to ? new(from, to) : null;
    }
}
