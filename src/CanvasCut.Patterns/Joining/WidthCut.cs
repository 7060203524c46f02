using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>Cuts one width out of a piece, with the seam's allowance beyond each seam.</summary>
internal sealed class WidthCut(PatternPiece piece, CarrierJob job)
{
    private readonly FillAxis _axis = new(piece.Warp);

    public PatternPiece Between(Seam? before, Seam? after, (int Number, int Of) part)
    {
        var (beforeMm, afterMm) = RollSplit.Allowances(job.Workshop.Cloth.Join);
        HalfPlane[] finishedEdges = [.. Edges(before?.At, after?.At)];
        HalfPlane[] cutEdges = [.. Edges(before?.At - afterMm, after?.At + beforeMm)];
        var shape = new PieceShape(Cut(piece.Shape.Finished, finishedEdges), Cut(piece.Shape.Cut, cutEdges));
        Seam[] seams = [.. new[] { before, after }.OfType<Seam>()];
        return piece with
        {
            Key = piece.Key with { Width = part.Number },
            Title = TitleOf(part),
            HasAwkwardSeam = seams.Any(seam => !seam.IsClear),
            Shape = shape,
            Lines = [.. piece.Lines.SelectMany(line => Kept(line, cutEdges)), .. seams.Select(seam => SeamLine(seam, shape.Cut))],
            Notes = [.. piece.Notes, SeamNote(before, after), .. Warnings(seams)],
        };
    }

    private static Outline Cut(Outline outline, HalfPlane[] edges) => CornerTrim.By(outline, [.. edges]);

    /// <summary>A line that lies inside stays as it is; one that is cut becomes its parts.</summary>
    private static IEnumerable<PieceLine> Kept(PieceLine line, HalfPlane[] edges)
    {
        if (line.Points.All(point => edges.All(edge => edge.InsideMm(point) >= 0)))
        {
            return [line];
        }

        var open = line.IsClosed ? line.Points.Add(line.Points[0]) : line.Points;
        return edges
            .Aggregate(ImmutableArray.Create(open), (parts, edge) => [.. parts.SelectMany(part => edge.Cut(part))])
            .Select(part => line with { Points = part, IsClosed = false });
    }

    private IEnumerable<HalfPlane> Edges(double? from, double? to)
    {
        if (from is { } start)
        {
            yield return _axis.After(start);
        }

        if (to is { } end)
        {
            yield return _axis.Before(end);
        }
    }

    private PieceTitle TitleOf((int Number, int Of) part)
    {
        var (first, last) = _axis.EndNames;
        var where = part.Number == 1 ? $", {first}" : part.Number == part.Of ? $", {last}" : string.Empty;
        return piece.Title.OfWidth(Say.Of($"{piece.Title.Name}, width {part.Number} of {part.Of}{where}"));
    }

    private PieceLine SeamLine(Seam seam, Outline cut)
    {
        var (from, to) = cut.Chord(_axis.Before(seam.At)) ?? throw new InvalidOperationException("A seam lies on its width.");
        return PieceLine.Row(from, to, new(RowKind.Felled, AfterFolds: 0)) with { Shows = LineShows.FelledSeam };
    }

    private string SeamNote(Seam? before, Seam? after)
    {
        var (beforeMm, afterMm) = RollSplit.Allowances(job.Workshop.Cloth.Join);
        string Text(double mm) => LengthText.Of(Length.FromMillimeters(mm), job.Units);
        string[] words =
        [
            .. before is null ? Array.Empty<string>() : [Say.Of($"{Text(afterMm)} at the seam to the width before")],
            .. after is null ? Array.Empty<string>() : [Say.Of($"{Text(beforeMm)} at the seam to the width after")],
        ];
        return AllowanceText.Included(Say.Of($"felled seam, {string.Join(", ", words)}"));
    }

    private static IEnumerable<string> Warnings(Seam[] seams) => seams.All(seam => seam.IsClear)
        ? []
        : [RollSplit.NotClearText];
}
