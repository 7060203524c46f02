using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Patterns;

/// <summary>The seams of hook-and-loop squares that hold weather strips: on the strip, and on what lies under it.</summary>
internal static class StripHoldSeams
{
    /// <summary>The squares on a strip, sewn through its hem before it is sewn on.</summary>
    public static IEnumerable<SewnSeam> OnStrip(PatternSet patterns, StripPlace strip)
    {
        if (strip.Holding is { Kind: StripHold.HookAndLoop } holding)
        {
            var piece = patterns.Whole(PieceKind.WeatherStrip, strip.Side)!;
            var own = holding.MovedBy(new Point(0, 0) - strip.Finished.Center);
            List<SewnLayer> layers =
            [
                .. SewnLayer.Of(LayerKind.Cloth, FoldedSheet.Of([piece.Shape.Cut]).Folded(piece.Folds)),
                .. own.Squares.Select(square => new SewnLayer(LayerKind.HookAndLoop, Outline.Of(square))),
            ];
            yield return new(SeamKind.Mount, Say.Of($"{strip.Name}, hook-and-loop squares on it"), KeysOf(patterns, strip), 1, [.. Rows(own).Select(row => row.Through(layers))])
            {
                KindName = Say.Of("Weather strip, hook-and-loop squares on it"),
            };
        }
    }

    /// <summary>The squares on what lies under the strip's free edge.</summary>
    public static void UnderStrip(SeamBuilder builder, StripPlace strip, ImmutableArray<PieceKey> keys)
    {
        if (strip.Holding is { Kind: StripHold.HookAndLoop } holding)
        {
            builder.Lay(holding.Squares.Select(square => new SewnLayer(LayerKind.HookAndLoop, Outline.Of(square))));
            builder.Sew(SeamKind.Mount, Say.Of($"{strip.Name}, hook-and-loop squares under it"), keys, Rows(holding));
        }
    }

    private static IEnumerable<RowLine> Rows(StripHolding holding) => holding.Centres.SelectMany((centre, index) =>
        StripHoldMarks.RowsAround(centre, holding).Select(row => new RowLine(index, [row.From, row.To])));

    private static ImmutableArray<PieceKey> KeysOf(PatternSet patterns, StripPlace strip) =>
        [.. patterns.Pieces.Select(piece => piece.Key).Where(key => key.Kind == PieceKind.WeatherStrip && key.Side == strip.Side)];
}
