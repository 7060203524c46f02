using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Job;

/// <summary>What becomes of a piece when a new panel goes on an old top.</summary>
public enum RefitFate
{
    /// <summary>It is drawn as it was, to the last digit.</summary>
    Stays,

    /// <summary>It stays because it is sewn to the top, though it would be drawn otherwise now.</summary>
    StaysAsSewn,

    /// <summary>It is cut and sewn anew.</summary>
    Anew,

    /// <summary>The new job would have it on the top, and the old one had none.</summary>
    NotOnTop,

    /// <summary>Only the old carrier had it.</summary>
    NotNeeded,
}

/// <summary>A piece and what becomes of it.</summary>
/// <param name="Id">What its files are named after.</param>
/// <param name="Name">What the sewist calls it.</param>
/// <param name="Fate">What becomes of it.</param>
/// <param name="Why">Why.</param>
public sealed record RefitPiece(string Id, string Name, RefitFate Fate, string Why)
{
    /// <summary>All pieces, those of the carrier first.</summary>
    internal static ImmutableArray<RefitPiece> All(ImmutableArray<DrawnPiece> old, PatternSet patterns)
    {
        var onCarrier = patterns.CarrierPieces.Concat(patterns.NotionPieces).ToList();
        var made = onCarrier.Concat(patterns.Kept).Select(piece => piece.Key.Id).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. onCarrier.Select(piece => OnCarrier(old, piece, patterns)),
            .. patterns.Kept.Select(piece => OnTop(old, piece, patterns.Job.Units)),
            .. old.Where(piece => !made.Contains(piece.Id)).Select(piece => new RefitPiece(piece.Id, piece.Name, RefitFate.NotNeeded, Say.Of("the new carrier has none"))),
        ];
    }

    private static RefitPiece OnCarrier(ImmutableArray<DrawnPiece> old, PatternPiece piece, PatternSet patterns)
    {
        var drawn = DrawnPiece.Of(piece);
        return old.Any(drawn.IsDrawnLike)
            ? new(piece.Key.Id, piece.Title.Name, RefitFate.Stays, Say.Of($"drawn as before: the old template serves{(piece.Title.Quantity > 1 ? Say.Of($"; {piece.Title.Quantity} for the carrier's zipper halves") : string.Empty)}"))
            : new(piece.Key.Id, piece.Title.Name, RefitFate.Anew, Difference(old, drawn, piece, patterns.Job.Units));
    }

    private static RefitPiece OnTop(ImmutableArray<DrawnPiece> old, PatternPiece piece, PrintUnits units)
    {
        var drawn = DrawnPiece.Of(piece);
        return old.Any(drawn.IsDrawnLike) ? new(piece.Key.Id, piece.Title.Name, RefitFate.Stays, Say.Of("sewn to the top, and drawn as before"))
            : old.Any(other => other.Id == drawn.Id) ? new(piece.Key.Id, piece.Title.Name, RefitFate.StaysAsSewn, Say.Of($"sewn to the top; now {Difference(old, drawn, piece, units)}"))
            : new(piece.Key.Id, piece.Title.Name, RefitFate.NotOnTop, Say.Of("the top has none; make it with the new job's own templates if it is wanted"));
    }

    private static string Difference(ImmutableArray<DrawnPiece> old, DrawnPiece drawn, PatternPiece piece, PrintUnits units)
    {
        if (old.FirstOrDefault(other => other.Id == drawn.Id) is not { } before)
        {
            return Say.Of("the old carrier had none");
        }

        var (athwart, foreAft) = piece.FinishedSize;
        return before.Finished != drawn.Finished ? Say.Of($"its finished size is another, {LengthText.Of(athwart, units)} athwart by {LengthText.Of(foreAft, units)}")
            : before.Cut != drawn.Cut ? Say.Of("the finished size is the same, the cut line is another: hem, binding or join")
            : Say.Of("the outline is the same; what is marked or sewn on it lies elsewhere");
    }
}
