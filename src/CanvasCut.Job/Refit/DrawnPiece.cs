using System.Collections.Immutable;
using System.Globalization;
using CanvasCut.Patterns;

namespace CanvasCut.Job;

/// <summary>A piece as results.json holds it, to tell whether two are drawn alike.</summary>
/// <param name="Id">What its files are named after.</param>
/// <param name="Name">What the sewist calls it.</param>
/// <param name="Finished">Its finished outline, as written.</param>
/// <param name="Cut">Its cut outline, as written.</param>
/// <param name="Lines">What else is drawn on it, as written, a line each; not what stands beside them, which may be in another language.</param>
/// <param name="CutMm">Its cut outline.</param>
internal sealed record DrawnPiece(string Id, string Name, string Finished, string Cut, ImmutableArray<string> Lines, ImmutableArray<PointPart> CutMm)
{
    /// <summary>Whether all that is drawn is the same to the last digit; words do not count.</summary>
    public bool IsDrawnLike(DrawnPiece other) => Finished == other.Finished && Cut == other.Cut && Lines.SequenceEqual(other.Lines);

    /// <summary>A piece as it would be written.</summary>
    public static DrawnPiece Of(PatternPiece piece) => Of(
        piece.Key.Id,
        piece.Title.Name,
        ResultsJson.Points(piece.Shape.Finished.Corners),
        ResultsJson.Points(piece.Shape.Cut.Corners),
        piece.Lines.Select(line => Line(line.Kind, line.IsClosed, ResultsJson.Points(line.Points))));

    /// <summary>A piece as it was written.</summary>
    public static DrawnPiece Of(string id, string name, ImmutableArray<PointPart> finished, ImmutableArray<PointPart> cut, IEnumerable<string> lines) =>
        new(id, name, Text(finished), Text(cut), [.. lines], cut);

    /// <summary>A line on a piece.</summary>
    public static string Line(PieceLineKind kind, bool isClosed, ImmutableArray<PointPart> points) => $"{kind} {isClosed} {Text(points)}";

    private static string Text(ImmutableArray<PointPart> points) => string.Join(' ', points.Select(point => $"{Number(point.X)},{Number(point.Y)}"));

    private static string Number(double number) => number.ToString("R", CultureInfo.InvariantCulture);
}
