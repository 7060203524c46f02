using System.Collections.Immutable;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Readback;
using UnitsNet;

namespace CanvasCut.Job;

/// <summary>Reads the drawings of a results folder again and holds every cut line against results.json.</summary>
/// <remarks>
/// Compared are the DXF files, pieces.hpgl, pieces/*.svg, plot.pdf, roll.pdf, roll.svg, and templates.pdf unless its pages
/// are stretched for a printer. A piece may lie anywhere on its sheet and be turned by quarters, but not mirrored.
/// </remarks>
public static class ResultsComparison
{
    /// <summary>Two pieces that differ by less are of one shape.</summary>
    private static readonly Length SameShape = Length.FromMillimeters(0.01);

    private const string Templates = "templates.pdf";

    /// <summary>Sheets that hold other things than pieces, or pieces to scale.</summary>
    private static readonly ImmutableHashSet<string> NotCompared =
        ImmutableHashSet.Create(StringComparer.Ordinal, "report.pdf", "removal-card.pdf", "care.pdf", "placement.svg", "cut-plan.svg", "top-shape.svg");

    /// <summary>One line for each piece in each drawing, in the order of the files; null when there are no results of ours.</summary>
    public static IReadOnlyList<ComparedLine>? Of(string folder)
    {
        var models = WrittenModel.In(folder);
        return models.IsEmpty || models.Any(each => each.Model.Pieces.IsEmpty)
            ? null
            : [.. models.SelectMany(each => Of(folder, each.Below, each.Model))];
    }

    private static IEnumerable<ComparedLine> Of(string folder, string below, WrittenModel model) => model.Files
        .Where(file => IsCompared(file, model))
        .SelectMany(file => InFile(Path.Combine(folder, below), file, model))
        .Select(line => below.Length > 0 ? line with { File = $"{below}/{line.File}" } : line);

    private static bool IsCompared(string file, WrittenModel model) =>
        CutLines.CanRead(file) && !NotCompared.Contains(file) && !(file == Templates && model.IsForOnePrinter);

    private static IEnumerable<ComparedLine> InFile(string folder, string file, WrittenModel model)
    {
        // A file in a folder below, pieces/ or dxf/, holds the one piece it is named for.
        var pieces = file.Contains('/', StringComparison.Ordinal)
            ? [.. model.Pieces.Where(piece => piece.Id == Path.GetFileNameWithoutExtension(file))]
            : model.Pieces;
        try
        {
            var lines = CutLines.In(file, File.ReadAllBytes(Path.Combine(folder, file)));
            if (file == Templates)
            {
                return OnPages(lines, pieces);
            }

            return lines.Length == pieces.Length
                ? pieces.Zip(lines, (piece, line) => new ComparedLine(file, piece.Name, DistanceOf(piece.CutMm, line), string.Empty))
                : [Troubled(file, Say.Of($"has {lines.Length} cut lines for {pieces.Length} pieces."))];
        }
        catch (Exception exception) when (exception is FileNotFoundException or DirectoryNotFoundException)
        {
            return [Troubled(file, Say.Of("is missing."))];
        }
        catch (Exception exception) when (exception is InvalidDataException or IOException or UnauthorizedAccessException or ArgumentException)
        {
            return [Troubled(file, Say.Of($"cannot be read: {exception.Message}"))];
        }
    }

    /// <summary>Every page that shows some of a piece holds its whole cut line, of which the page's window shows a part; the worst counts.</summary>
    /// <remarks>Pieces of one shape, as the four pockets may be, cannot be told apart: a line counts for each of them.</remarks>
    private static IEnumerable<ComparedLine> OnPages(ImmutableArray<ImmutableArray<Point>> lines, ImmutableArray<WrittenPiece> pieces)
    {
        var nearest = lines
            .Select(line => pieces.Select(piece => (piece.Id, Distance: DistanceOf(piece.CutMm, line))).ToList())
            .SelectMany(pairs => pairs.Where(pair => pair.Distance <= pairs.Min(other => other.Distance) + SameShape))
            .ToLookup(pair => pair.Id, pair => pair.Distance, StringComparer.Ordinal);
        return pieces.Select(piece => nearest[piece.Id].Any()
            ? new ComparedLine(Templates, piece.Name, nearest[piece.Id].Max(), string.Empty)
            : Troubled(Templates, Say.Of($"has no cut line of {piece.Name}.")));
    }

    private static ComparedLine Troubled(string file, string trouble) => new(file, string.Empty, null, trouble);

    /// <summary>The distance in the quarter turn that suits best, the middles of the boxes laid on each other.</summary>
    /// <remarks>A box's corner has the whole rounding of the file's numbers in it, and every other point would bear it beside its own; the middle
    /// has half of both sides'.</remarks>
    private static Length DistanceOf(ImmutableArray<Point> model, ImmutableArray<Point> line)
    {
        var there = FromMiddle(line);
        return Length.FromMillimeters(Enumerable.Range(0, 4).Min(quarters =>
            ClosedLine.DistanceMm(FromMiddle([.. model.Select(point => Turn.Quarters(point, quarters))]), there)));
    }

    private static ImmutableArray<Point> FromMiddle(ImmutableArray<Point> line)
    {
        var step = new Point(0, 0) - Box.Holding(line).Center;
        return [.. line.Select(point => point + step)];
    }
}
