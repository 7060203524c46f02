using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Sheets;

/// <summary>Writes results of checks in words, the same on paper and on screen.</summary>
public static class CheckText
{
    /// <summary>As in "FAIL"; told apart without colour.</summary>
    public static string Of(Verdict verdict) => verdict switch
    {
        Verdict.Pass => Say.Of("pass"),
        Verdict.Caution => Say.Of("CAUTION"),
        Verdict.Fail => Say.Of("FAIL"),
        _ => Say.Of("not checked"),
    };

    /// <summary>
    /// The value found; empty when nothing was measured. A distance below zero is told as an overlap; a wind that was found is itself a limit.
    /// </summary>
    public static string ValueOf(CheckResult result, PrintUnits units) => result.Measured switch
    {
        { Value: { Millimeters: < 0 } value, IsAtLeast: true } => Say.Of($"overlap {Text(-value, units)}"),
        { Reading.Value: Speed wind } => LimitWords.Most(wind),
        { Reading: { } reading } => QuantityWords.Of(reading.Value),
        { Value: { } value } => Text(value, units),
        _ => string.Empty,
    };

    /// <summary>The limit, with "at least" or "at most"; empty when there is none.</summary>
    public static string LimitOf(CheckResult result, PrintUnits units)
    {
        var isAtLeast = result.Measured.IsAtLeast;
        var text = result.Measured switch
        {
            { Reading.Limit: { } limit } => isAtLeast ? LimitWords.Least(limit) : LimitWords.Most(limit),
            { Limit: { } limit } => isAtLeast ? LimitWords.Least(limit, units, Finest(limit)) : LimitWords.Most(limit, units, Finest(limit)),
            _ => string.Empty,
        };
        return text.Length > 0 ? $"{(isAtLeast ? Say.Of("at least") : Say.Of("at most"))} {text}" : string.Empty;
    }

    /// <summary>Below an inch to 1/32 in, so that a value and the limit that it misses do not read the same.</summary>
    private static InchFraction Finest(Length length) => length < Length.FromInches(1) ? InchFraction.ThirtySecond : InchFraction.Sixteenth;

    private static string Text(Length length, PrintUnits units) => Finest(length) == InchFraction.Sixteenth ? LengthText.Of(length, units) : LengthText.OfMating(length, units);

    /// <summary>How many of each, as in "21 pass, 1 caution, 2 fail, 1 not checked".</summary>
    public static string Count(IReadOnlyCollection<CheckResult> results)
    {
        int Of(Verdict verdict) => results.Count(result => result.Verdict == verdict);
        return Say.Of($"{Of(Verdict.Pass)} pass, {Of(Verdict.Caution)} caution, {Of(Verdict.Fail)} fail, {Of(Verdict.NotChecked)} not checked");
    }
}
