using CanvasCut.Design;
using CanvasCut.Geometry;

namespace CanvasCut.Patterns;

/// <summary>
/// The carrier's port and starboard edge are worked out as its ends: turned a quarter to the left about the origin, starboard lies
/// forward and port aft, and what was forward lies to port. An end stays as it is.
/// </summary>
/// <param name="Quarters">How often the plan is turned to the left before an edge is worked out.</param>
public readonly record struct EdgeFrame(int Quarters)
{
    /// <summary>How the plan is turned for an edge.</summary>
    public static EdgeFrame Of(Side side) => new(side is Side.Port or Side.Starboard ? 1 : 0);

    /// <summary>The end as which an edge is worked out.</summary>
    public static Side EndOf(Side side) => side is Side.Forward or Side.Starboard ? Side.Forward : Side.Aft;

    /// <summary>A box of the plan, turned.</summary>
    public Box Turned(Box plan) => plan.Turned(Quarters);

    /// <summary>A box back in the plan.</summary>
    public Box Back(Box turned) => turned.Turned(-Quarters);

    /// <summary>A point back in the plan.</summary>
    public Point Back(Point turned) => Turn.Quarters(turned, -Quarters);

    /// <summary>A step of the plan, turned.</summary>
    public Step Turned(Step step) => Turn.Quarters(new Point(0, 0) + step, Quarters) - new Point(0, 0);

    /// <summary>An outline back in the plan.</summary>
    public Outline Back(Outline turned) => turned.Mapped(Back);
}
