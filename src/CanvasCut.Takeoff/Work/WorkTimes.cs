using CanvasCut.Geometry;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>Estimates of working time, for one person with a domestic machine; all from memory, see docs/work-order.md.</summary>
public static class WorkTimes
{
    private static readonly Duration Step = Duration.FromMinutes(5);

    /// <summary>To set up the machine, thread it and sew a trial.</summary>
    public static Duration SetUp { get; } = Duration.FromMinutes(10);

    /// <summary>To fold, tape and sew a metre of row on a piece.</summary>
    public static Duration SewnMetre { get; } = Duration.FromMinutes(6);

    /// <summary>The same on the top, which is large and slides off the bench.</summary>
    public static Duration SewnMetreOnTop { get; } = Duration.FromMinutes(10);

    /// <summary>To lay down a piece and weight it before it is cut or marked.</summary>
    public static Duration Handling { get; } = Duration.FromMinutes(4);

    /// <summary>To cut a metre.</summary>
    public static Duration CutMetre { get; } = Duration.FromMinutes(1.5);

    /// <summary>To mark a metre of line.</summary>
    public static Duration MarkedMetre { get; } = Duration.FromMinutes(1);

    /// <summary>To print, trim, join and weight the template of a piece.</summary>
    public static Duration Template { get; } = Duration.FromMinutes(8);

    /// <summary>So many metres of seam, the machine set up for them.</summary>
    public static Duration Sewing(Length rows) => RoundedUp(SetUp + (SewnMetre * rows.Meters));

    /// <summary>So many metres of seam on the top.</summary>
    public static Duration SewingOnTop(Length rows) => RoundedUp(SetUp + (SewnMetreOnTop * rows.Meters));

    /// <summary>A piece to cut, all its copies.</summary>
    public static Duration Cutting(PatternPiece piece) =>
        RoundedUp((Handling + (CutMetre * (piece.Shape.Cut.PerimeterMm / 1000))) * piece.Title.Quantity);

    /// <summary>Pieces to mark, all their copies.</summary>
    public static Duration Marking(IEnumerable<PatternPiece> pieces) => RoundedUp(Duration.FromMinutes(
        pieces.Sum(piece => (Handling + (MarkedMetre * piece.Lines.Sum(LengthOf).Meters)).Minutes * piece.Title.Quantity)));

    /// <summary>Every row of stitches drawn on a piece, for all its copies.</summary>
    public static Length Rows(PatternPiece piece) =>
        piece.Lines.Where(line => line.Kind == PieceLineKind.Stitch).Sum(LengthOf) * piece.Title.Quantity;

    /// <summary>A time in whole steps of five minutes.</summary>
    public static Duration RoundedUp(Duration time) => Step * Math.Ceiling((time / Step) - 1e-9);

    private static Length Sum(this IEnumerable<PieceLine> lines, Func<PieceLine, Length> of) =>
        lines.Aggregate(Length.Zero, (sum, line) => sum + of(line));

    private static Length LengthOf(PieceLine line)
    {
        var ends = line.IsClosed ? line.Points.Append(line.Points[0]) : line.Points;
        Point[] points = [.. ends];
        return Length.FromMillimeters(points.Zip(points.Skip(1)).Sum(pair => pair.First.DistanceMm(pair.Second)));
    }
}
