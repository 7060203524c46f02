using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Patterns;

/// <summary>The seams of what holds the carrier's edges in the place of zippers.</summary>
internal static class FlapSeams
{
    /// <summary>Closes each flap, sews its tape on, and sews it under the carrier's edge.</summary>
    public static void OnCarrier(SeamBuilder builder, PatternSet patterns, MountedShape centred, ImmutableArray<PieceKey> carrier)
    {
        foreach (var flap in centred.Fastened.Flaps)
        {
            var piece = patterns.Whole(PieceKind.MountFlap, flap.Side)!;
            ImmutableArray<PieceKey> keys = [.. patterns.NotionPieces.Select(part => part.Key).Where(key => key.Whole == piece.Key)];
            builder.Lay(piece, patterns.NotionPieces);
            Tape(builder, flap, Say.Of("hook tape on its flap"), keys);
            builder.Sew(
                SeamKind.Mount,
                Say.Of($"{flap.Name}, flap on the carrier"),
                [.. carrier, .. keys],
                patterns.WholeCarrier.Lines
                    .Where(line => line.Use is { Kind: RowKind.Mount } use && use.Edge == flap.Side)
                    .Select(RowLine.Of),
                flap.Side);
        }
    }

    /// <summary>Sews the strip under the fasteners, the loop tape, or the other flap of a lacing or a sleeve to the top.</summary>
    public static void OnTop(SeamBuilder builder, PatternSet patterns)
    {
        foreach (var flap in patterns.Mounted.Fastened.Flaps)
        {
            if (patterns.Whole(PieceKind.MountStrip, flap.Side) is { } piece)
            {
                builder.SewOn(piece, patterns.TopPieces, Say.Of("on the top"));
            }

            Tape(builder, flap, Say.Of("loop tape on the top"), []);
        }
    }

    private static void Tape(SeamBuilder builder, FlapPlace flap, string what, ImmutableArray<PieceKey> keys)
    {
        if (flap.Kind == MountKind.HookAndLoop)
        {
            builder.Lay([new(LayerKind.HookAndLoop, Outline.Of(flap.OnTop))]);
            builder.Sew(SeamKind.Mount, $"{flap.Name}, {what}", keys, FlapPieces.RowsOf(flap).Select(row => new RowLine(0, [row.From, row.To])), flap.Side);
        }
    }
}
