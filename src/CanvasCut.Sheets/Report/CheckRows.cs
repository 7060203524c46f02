using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Language;

namespace CanvasCut.Sheets;

/// <summary>A row that tells of one check, or of several alike.</summary>
/// <param name="Check">The check; of several the one with the least to spare.</param>
/// <param name="Alike">How many checks the row tells of.</param>
public sealed record CheckRow(CheckResult Check, int Alike)
{
    /// <summary>What was checked, and how many more of the kind.</summary>
    public string Subject => Alike == 1 ? Check.Subject : Say.Of($"{Check.Subject}; {Alike - 1} more with more to spare");
}

/// <summary>Brings a long list of checks down to what a reader needs.</summary>
public static class CheckRows
{
    /// <summary>
    /// Faults first, then cautions and what was not checked, each in full; then one row for each kind of check that
    /// passed, showing the tightest.
    /// </summary>
    public static ImmutableArray<CheckRow> Of(IReadOnlyCollection<CheckResult> checks) =>
    [
        .. checks.Where(check => check.Verdict != Verdict.Pass).OrderBy(check => Rank(check.Verdict)).Select(check => new CheckRow(check, 1)),
        .. checks.Where(check => check.Verdict == Verdict.Pass)
            .GroupBy(check => check.Code)
            .Select(alike => new CheckRow(alike.MinBy(Spare)!, alike.Count())),
    ];

    private static int Rank(Verdict verdict) => verdict switch
    {
        Verdict.Fail => 0,
        Verdict.Caution => 1,
        _ => 2,
    };

    private static double Spare(CheckResult check) => check.Measured.ToSpare() ?? double.PositiveInfinity;
}
