using System.Collections.Immutable;
using System.Text.Json;
using CanvasCut.Geometry;

namespace CanvasCut.Job;

/// <summary>A piece as results.json tells of it.</summary>
/// <param name="Id">What its files are named after.</param>
/// <param name="Name">What the sewist calls it.</param>
/// <param name="CutMm">Its cut outline.</param>
internal sealed record WrittenPiece(string Id, string Name, ImmutableArray<Point> CutMm);

/// <summary>What results.json says of the pieces and the files written with it.</summary>
/// <param name="Pieces">The pieces, in the order in which every file draws them.</param>
/// <param name="Files">The names of all files.</param>
/// <param name="IsForOnePrinter">Whether the pages of templates.pdf are stretched for a printer that is not true.</param>
internal sealed record WrittenModel(ImmutableArray<WrittenPiece> Pieces, ImmutableArray<string> Files, bool IsForOnePrinter)
{
    private const string FileName = "results.json";

    /// <summary>Reads the model of a folder; null when it is no folder of our results.</summary>
    public static WrittenModel? In(string folder)
    {
        try
        {
            using var json = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(folder, FileName)));
            var root = json.RootElement;
            return root.GetProperty("format").GetString() == ResultsJson.Format
                ? new([.. root.GetProperty("pieces").EnumerateArray().Select(PieceOf)], [.. root.GetProperty("files").EnumerateArray().Select(TextOf)], root.GetProperty("paper").GetProperty("read_x_mm").ValueKind == JsonValueKind.Number)
                : null;
        }
        catch (Exception exception) when (exception is JsonException or InvalidOperationException or KeyNotFoundException
            or IndexOutOfRangeException or FormatException or IOException or UnauthorizedAccessException or ArgumentException)
        {
            return null;
        }
    }

    /// <exception cref="ArgumentException">The outline encloses nothing.</exception>
    private static WrittenPiece PieceOf(JsonElement piece)
    {
        var cut = new Outline(piece.GetProperty("cut_mm").EnumerateArray().Select(point => new Point(point[0].GetDouble(), point[1].GetDouble())));
        return new(TextOf(piece.GetProperty("id")), TextOf(piece.GetProperty("name")), cut.Corners);
    }

    private static string TextOf(JsonElement text) => text.GetString() ?? string.Empty;
}
