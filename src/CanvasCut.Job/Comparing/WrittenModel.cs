using System.Collections.Immutable;
using CanvasCut.Design;
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
    /// <summary>
    /// Reads the model of every carrier of a folder, with the folder of its files below that one, empty for itself; none when it holds no
    /// results of ours.
    /// </summary>
    public static ImmutableArray<(string Below, WrittenModel Model)> In(string folder)
    {
        var log = new ProblemLog();
        if (ResultsPath.Read(Path.Combine(folder, ResultsPath.FileName), log)?.Read(log) is not { } results)
        {
            return [];
        }

        try
        {
            return [.. results.Mountings.Select(mounting => (mounting.Folder ?? string.Empty, new WrittenModel(
                [.. mounting.Pieces.Select(PieceOf)], FilesIn(mounting.Folder, results.Files), results.IsForOnePrinter)))];
        }
        catch (ArgumentException)
        {
            return [];
        }
    }

    /// <summary>The files of a folder below, without its name.</summary>
    private static ImmutableArray<string> FilesIn(string? folder, ImmutableArray<string> files) => folder is null
        ? files
        : [.. files.Where(file => file.StartsWith($"{folder}/", StringComparison.Ordinal)).Select(file => file[(folder.Length + 1)..])];

    /// <exception cref="ArgumentException">The outline encloses nothing.</exception>
    private static WrittenPiece PieceOf(DrawnPiece piece) => new(piece.Id, piece.Name, new Outline(piece.CutMm.Select(point => new Point(point.X, point.Y))).Corners);
}
