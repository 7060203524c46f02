using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using CanvasCut.Patterns;

namespace CanvasCut.Job;

/// <summary>A piece as results.json holds it, to tell whether two are drawn alike.</summary>
/// <param name="Id">What its files are named after.</param>
/// <param name="Name">What the sewist calls it.</param>
/// <param name="Finished">Its finished outline, as written.</param>
/// <param name="Cut">Its cut outline, as written.</param>
/// <param name="Lines">What else is drawn on it, as written, a line each; not what stands beside them, which may be in another language.</param>
internal sealed record DrawnPiece(string Id, string Name, string Finished, string Cut, ImmutableArray<string> Lines)
{
    /// <summary>Whether all that is drawn is the same to the last digit; words do not count.</summary>
    public bool IsDrawnLike(DrawnPiece other) => Finished == other.Finished && Cut == other.Cut && Lines.SequenceEqual(other.Lines);

    /// <summary>A piece as it would be written.</summary>
    public static DrawnPiece Of(PatternPiece piece) => new(
        piece.Key.Id,
        piece.Title.Name,
        Text(ResultsJson.Points(piece.Shape.Finished.Corners)),
        Text(ResultsJson.Points(piece.Shape.Cut.Corners)),
        [.. piece.Lines.Select(line => Line(ResultsJson.KindOf(line), line.IsClosed, ResultsJson.Points(line.Points)))]);

    /// <summary>A piece as it was written.</summary>
    /// <exception cref="InvalidOperationException">A value is of another kind than its name promises.</exception>
    /// <exception cref="KeyNotFoundException">A value is missing.</exception>
    public static DrawnPiece Of(JsonElement piece) => new(
        piece.GetProperty("id").GetString()!,
        piece.GetProperty("name").GetString()!,
        Text(PointsOf(piece.GetProperty("finished_mm"))),
        Text(PointsOf(piece.GetProperty("cut_mm"))),
        [.. piece.GetProperty("lines").EnumerateArray().Select(line => Line(
            line.GetProperty("kind").GetString()!,
            line.GetProperty("closed").GetBoolean(),
            PointsOf(line.GetProperty("points_mm"))))]);

    private static double[][] PointsOf(JsonElement points) =>
        [.. points.EnumerateArray().Select(point => new[] { point[0].GetDouble(), point[1].GetDouble() })];

    private static string Line(string kind, bool isClosed, double[][] points) => $"{kind} {isClosed} {Text(points)}";

    private static string Text(double[][] points) =>
        string.Join(' ', points.Select(point => string.Join(',', point.Select(number => number.ToString("R", CultureInfo.InvariantCulture)))));
}
