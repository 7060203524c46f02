using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Drawing;

/// <summary>One thing on a sheet. Every length is in millimetres on paper, X to the right and Y up.</summary>
public abstract record Figure
{
    private protected Figure()
    {
    }

    /// <summary>Which thing it shows, as a key of the user's own for a program that reads the drawing; empty for none.</summary>
    public string Shows { get; init; } = string.Empty;
}

/// <summary>A line through points.</summary>
/// <param name="Role">What the line tells.</param>
/// <param name="Points">At least two.</param>
/// <param name="IsClosed">Whether it returns to its first point, which is then not repeated.</param>
public sealed record Stroke(LineRole Role, ImmutableArray<Point> Points, bool IsClosed) : Figure
{
    /// <summary>An open line through points.</summary>
    public static Stroke Open(LineRole role, params ImmutableArray<Point> points) => new(role, points, IsClosed: false);

    /// <summary>A closed line round an outline.</summary>
    public static Stroke Closed(LineRole role, Outline outline) => new(role, outline.Corners, IsClosed: true);
}

/// <summary>An evenly grey area without an edge.</summary>
/// <param name="Outline">Its outline.</param>
/// <param name="Darkness">0 is white, 1 is black.</param>
public sealed record Tint(Outline Outline, double Darkness) : Figure;

/// <summary>One line of text.</summary>
/// <param name="Text">Without line breaks.</param>
/// <param name="At">On the base line: the left end, middle or right end as <paramref name="Anchor"/> says.</param>
/// <param name="HeightMm">The height of a capital letter.</param>
/// <param name="Anchor">Which part of the text stands at <paramref name="At"/>.</param>
/// <param name="TurnDegrees">Turned to the left about <paramref name="At"/>.</param>
/// <param name="IsBold">Whether in bold letters.</param>
public sealed record Lettering(
    string Text, Point At, double HeightMm, TextAnchor Anchor = TextAnchor.Left, double TurnDegrees = 0, bool IsBold = false) : Figure;

/// <summary>A window through which part of other figures is seen, moved and scaled.</summary>
/// <param name="Figures">What is seen, in a plane of its own.</param>
/// <param name="Window">The part of that plane that is seen; nothing outside it shows.</param>
/// <param name="At">Where the window's lower left corner lies on this sheet.</param>
/// <param name="Scale">Millimetres on this sheet for one there; above zero. Line widths and letters scale along.</param>
public sealed record Inset(ImmutableArray<Figure> Figures, Box Window, Point At, double Scale) : Figure;

/// <summary>Which part of a text stands at its place.</summary>
public enum TextAnchor
{
    /// <summary>Its left end.</summary>
    Left,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its right end.</summary>
    Right,
}
