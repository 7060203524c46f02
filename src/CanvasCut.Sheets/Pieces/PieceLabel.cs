using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Sheets;

/// <summary>Figures that go together, their lower left corner at the origin.</summary>
/// <param name="Figures">What is drawn.</param>
/// <param name="WidthMm">The width they take.</param>
/// <param name="HeightMm">The height they take.</param>
internal sealed record Block(ImmutableArray<Figure> Figures, double WidthMm, double HeightMm);

/// <summary>The words on a piece: what it is, how it is cut and what its lines include.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Number">Its number among the job's pieces, from 1.</param>
/// <param name="Of">How many different pieces the job has.</param>
/// <param name="Context">The job.</param>
/// <param name="Cloth">What it is cut from.</param>
internal sealed record PieceLabel(PatternPiece Piece, int Number, int Of, SheetContext Context, string Cloth)
{
    /// <summary>The height of the label's capitals.</summary>
    public const double HeightMm = 2.5;

    private const double PitchMm = 4.4;
    private const double ColumnGapMm = 6;
    private const double WidestMm = 95;
    private const double WidestBesideMm = 58;

    /// <summary>Written so that it reads backwards, or not at all, on a piece that lies face down.</summary>
    private static string FaceWords => Say.Of("THIS SIDE UP");

    private ImmutableArray<Line> LinesWithin(double widthMm) =>
    [
        .. new[]
        {
            Piece.Title.Name,
            FaceWords,
            Say.Of($"Job: {Context.JobName}"),
            Say.Of($"Piece {Number} of {Of} · cut {Piece.Title.Quantity}{HandWords}"),
            Say.Of($"{Capital(Piece.Title.Face)} · warp {Words.Of(Piece.Warp)}"),
            Say.Of($"Finished {SizeText(Piece.FinishedSize)}"),
            Say.Of($"Cut {SizeText(Piece.CutSize)}"),
            Say.Of($"Cloth: {Cloth}"),
        }.Concat(Piece.Notes)
            .Append($"CanvasCut {Context.Version}")
            .Concat(Context.Warning.Length > 0 ? [Context.Warning] : [])
            .SelectMany((line, i) => TextWrap.Lines(line, widthMm, HeightMm, i < 2).Select(part => new Line(part, i < 2))),
    ];

    private string HandWords => Piece.Title.Hand switch
    {
        Hand.Port => Say.Of(" · PORT"),
        Hand.Starboard => Say.Of(" · STARBOARD"),
        _ => string.Empty,
    };

    /// <summary>The label in one narrow column, to stand beside a piece.</summary>
    public Block Narrow => Columns(LinesWithin(WidestBesideMm), 1);

    /// <summary>The label in ever more columns, to find the one that fits a piece.</summary>
    public IEnumerable<Block> InColumns()
    {
        var lines = LinesWithin(WidestMm);
        return Enumerable.Range(1, lines.Length).Select(columns => Columns(lines, columns));
    }

    private static Block Columns(ImmutableArray<Line> lines, int columns)
    {
        var rows = ((lines.Length - 1) / columns) + 1;
        var widths = Enumerable.Range(0, columns)
            .Select(column => lines.Skip(column * rows).Take(rows).Select(line => TextWidth.Of(line.Text, HeightMm, line.IsBold)).DefaultIfEmpty(0).Max())
            .ToList();
        var height = ((rows - 1) * PitchMm) + HeightMm;
        var figures = lines.Select((line, i) => (Figure)new Lettering(
            line.Text,
            new(widths.Take(i / rows).Sum(width => width + ColumnGapMm), height - HeightMm - (i % rows * PitchMm)),
            HeightMm,
            IsBold: line.IsBold));
        return new([.. figures], widths.Sum() + ((columns - 1) * ColumnGapMm), height);
    }

    private string SizeText((Length Athwart, Length ForeAft) size) =>
        Say.Of($"{LengthText.Of(size.Athwart, Context.Units)} athwart × {LengthText.Of(size.ForeAft, Context.Units)} fore and aft");

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private sealed record Line(string Text, bool IsBold);
}
