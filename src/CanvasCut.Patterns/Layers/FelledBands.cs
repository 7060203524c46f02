using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>Where the felled seams of a joined piece make it thicker.</summary>
internal static class FelledBands
{
    /// <summary>A felled seam is half an inch wide: the allowance of its narrower side.</summary>
    private static readonly Length Width = Length.FromInches(0.5);

    /// <summary>The seam's place across the warp, for each seam of a piece that was split; none when it is whole.</summary>
    /// <param name="whole">The piece as one.</param>
    /// <param name="cut">All pieces that are cut.</param>
    public static ImmutableArray<double> SeamsOf(PatternPiece whole, IEnumerable<PatternPiece> cut)
    {
        var axis = new FillAxis(whole.Warp);
        return
        [
            .. cut.Where(piece => piece.Key.Width is not null && piece.Key.Whole == whole.Key)
                .Select(piece => axis.Span(piece.Shape.Finished.Bounds).To)
                .Order()
                .SkipLast(1),
        ];
    }

    /// <summary>The piece as a flat sheet with its seams felled, before any hem is folded.</summary>
    /// <remarks>
    /// A full felled seam has four plies: the cloth, the allowance laid back on it, and the wider allowance round that. A
    /// semi-felled one has three. The sheet itself is one of them.
    /// </remarks>
    public static FoldedSheet Sheet(PatternPiece whole, ImmutableArray<double> seams, FelledSeam join)
    {
        var more = Plies(join) - 1;
        return FoldedSheet.Of(seams.SelectMany(at => Enumerable.Repeat(Band(whole, at), more)).OfType<Outline>().Prepend(whole.Shape.Cut));
    }

    /// <summary>The plies of a felled seam.</summary>
    public static int Plies(FelledSeam join) => join == FelledSeam.Full ? 4 : 3;

    /// <summary>The two rows of each seam.</summary>
    public static IEnumerable<SewnSeam> Rows(PatternPiece whole, ImmutableArray<double> seams, FelledSeam join)
    {
        var axis = new FillAxis(whole.Warp);
        foreach (var (index, at) in seams.Index())
        {
            if (whole.Shape.Cut.Chord(axis.Before(at)) is var (from, to))
            {
                var row = new SewnRow(0, [new(Length.FromMillimeters(from.DistanceMm(to)), new(Plies(join)))]);
                yield return new(
                    SeamKind.Felled,
                    Say.Of($"{whole.Title.Name}, felled seam {index + 1}"),
                    [whole.Key with { Width = index + 1 }, whole.Key with { Width = index + 2 }],
                    1,
                    [row, row])
                {
                    KindName = Say.Of($"{whole.Title.KindName}, felled seam {index + 1}"),
                };
            }
        }
    }

    private static Outline? Band(PatternPiece whole, double at)
    {
        var axis = new FillAxis(whole.Warp);
        return axis.After(at - Width.Millimeters).Cut(whole.Shape.Cut) is { } rest ? axis.Before(at).Cut(rest) : null;
    }
}
