using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Patterns;
using CanvasCut.Placing;

namespace CanvasCut.Job;

/// <summary>Whether a new panel fits the half that is sewn to a top, and what is made anew for it.</summary>
/// <param name="Verdict">In one line.</param>
/// <param name="Pieces">What becomes of each piece; empty when the panel does not fit.</param>
/// <param name="Ranges">Which panels the sewn half accepts, a row for each way round.</param>
/// <param name="Changes">The smallest change, a sentence for each measure; empty when it fits.</param>
/// <param name="Notes">What else should be read.</param>
/// <param name="Made">All that comes of the new carrier; null when the panel does not fit.</param>
public sealed record RefitOutcome(
    string Verdict,
    ImmutableArray<RefitPiece> Pieces,
    ImmutableArray<RefitRange> Ranges,
    ImmutableArray<string> Changes,
    ImmutableArray<string> Notes,
    JobRun? Made)
{
    /// <summary>Works out a refit.</summary>
    /// <param name="old">What is sewn.</param>
    /// <param name="job">The new job.</param>
    public static RefitOutcome Of(OldResults old, CarrierJob job)
    {
        var answer = RefitAnswer.Of(old.Sewn, job);
        var ranges = answer.Ways.Select(way => RefitRange.Of(way, job.Units)).ToImmutableArray();
        var notes = RefitNotes.Of(old.Sewn, job);
        if (answer.Border is not { } border)
        {
            var changes = RefitWords.Changes(answer, old.Sewn, job.Units);
            return new(RefitWords.DoesNotFit(answer.Ways[0], job), [], ranges, changes, notes, null);
        }

        var panel = answer.Ways[0].Panel;
        var (refit, mounted) = (old.Sewn.JobOf(job, panel.LongSide, border), old.Sewn.With(panel, border));
        var patterns = PatternSet.Refitted(refit, mounted);
        var made = JobRun.Settled(FitChoice.Settled(refit, mounted), patterns);
        var pieces = RefitPiece.All(old.Pieces, patterns);
        return new(RefitWords.Fits(pieces, made), pieces, ranges, [], [RefitWords.Borders(border, job.Units), .. notes], made);
    }
}
