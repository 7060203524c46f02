using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;

namespace CanvasCut.Patterns;

/// <summary>What a line on a piece is for.</summary>
public enum PieceLineKind
{
    /// <summary>A row of stitches.</summary>
    Stitch,

    /// <summary>A fold.</summary>
    Fold,

    /// <summary>A mark to be transferred: where something lies, a tick, a centre line.</summary>
    Mark,

    /// <summary>The edge of a hole, cut when all is sewn and bonded; marked until then.</summary>
    Hole,
}

/// <summary>A line on a piece, in the piece's own plane.</summary>
/// <param name="Kind">What it is for.</param>
/// <param name="Points">At least two, in millimetres.</param>
/// <param name="IsClosed">Whether it returns to its first point.</param>
/// <param name="Shows">What it shows.</param>
/// <param name="Use">What a row of stitches does; null for other lines.</param>
public sealed record PieceLine(PieceLineKind Kind, ImmutableArray<Point> Points, bool IsClosed, LineShows Shows = LineShows.Nothing, RowUse? Use = null)
{
    /// <summary>How many there are of what it shows.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Which of several panels it shows; nothing for other lines.</summary>
    public MountingName Panel { get; init; }

    /// <summary>What is written at it, in the language of the moment; empty for none.</summary>
    public string Text => LineText.Of(this);

    /// <summary>A straight line.</summary>
    public static PieceLine Straight(PieceLineKind kind, Point from, Point to, LineShows shows = LineShows.Nothing) => new(kind, [from, to], IsClosed: false, shows);

    /// <summary>A straight row of stitches.</summary>
    public static PieceLine Row(Point from, Point to, RowUse use) => new(PieceLineKind.Stitch, [from, to], IsClosed: false, Use: use);

    /// <summary>A closed line.</summary>
    public static PieceLine Round(PieceLineKind kind, Outline outline, LineShows shows = LineShows.Nothing) => new(kind, outline.Corners, IsClosed: true, shows);

    /// <summary>The line with its points moved.</summary>
    public PieceLine Mapped(Func<Point, Point> move) => this with { Points = [.. Points.Select(move)] };
}
