using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Drawing;

/// <summary>One piece of a sewn product as data for another program, not as a drawing. Millimetres, Y up.</summary>
/// <param name="Title">What it is called and cut from.</param>
/// <param name="Boundary">Where it is cut.</param>
/// <param name="Lines">What lies inside: <see cref="LineRole.Stitch"/> is a sew line, any other role an internal line.</param>
/// <param name="Grain">The direction of the warp, as a line inside the boundary.</param>
/// <param name="Marks">Notches, holes and words.</param>
public sealed record PatternBlock(
    PatternTitle Title, Outline Boundary, ImmutableArray<Stroke> Lines, (Point From, Point To) Grain, PatternMarks Marks);

/// <summary>What a piece is called and cut from.</summary>
/// <param name="Name">Unique among the pieces; letters, digits and hyphens.</param>
/// <param name="Quantity">How often it is cut.</param>
/// <param name="Material">What it is cut from.</param>
/// <param name="Annotations">What else is to be known of it.</param>
public sealed record PatternTitle(string Name, int Quantity, string Material, ImmutableArray<string> Annotations);

/// <summary>What stands at single places of a piece.</summary>
/// <param name="Notches">Slits in its boundary.</param>
/// <param name="DrillHoles">Middles of holes.</param>
/// <param name="Words">Words to be read beside its lines.</param>
public sealed record PatternMarks(ImmutableArray<PatternNotch> Notches, ImmutableArray<Point> DrillHoles, ImmutableArray<Lettering> Words)
{
    /// <summary>No marks.</summary>
    public static PatternMarks None { get; } = new([], [], []);
}

/// <summary>A slit in a boundary, to match two edges by.</summary>
/// <param name="At">Its mouth, on the boundary.</param>
/// <param name="DepthMm">How far it reaches into the cloth; above zero.</param>
/// <param name="AngleDegrees">Its direction into the cloth, to the left of X.</param>
public sealed record PatternNotch(Point At, double DepthMm, double AngleDegrees);

/// <summary>All pieces of a sewn product.</summary>
/// <param name="Style">The product's name.</param>
/// <param name="Size">The one size it is made in.</param>
/// <param name="Author">The program and its version.</param>
/// <param name="Blocks">The pieces.</param>
public sealed record PatternStyle(string Style, string Size, string Author, ImmutableArray<PatternBlock> Blocks);
