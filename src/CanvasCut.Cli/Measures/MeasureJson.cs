using CanvasCut.Job;
using CanvasCut.Measuring;
using UnitsNet;

namespace CanvasCut.Cli;

/// <summary>The adjustment for programs; docs/measuring.md tells the form.</summary>
internal static class MeasureJson
{
    private const int Digits = 4;

    public static string Of(MeasureAdjustment adjustment) => JsonText.Of(Root(adjustment), MeasureContext.Default.MeasureDocument);

    private static MeasureDocument Root(MeasureAdjustment adjustment) => new(
        "canvascut-measures-1",
        adjustment.Top.Name,
        adjustment.Agrees,
        adjustment.IsSettled,
        MeasureVerdict.Of(adjustment),
        Mm(adjustment.Top.Tape),
        adjustment.Freedom,
        Round(adjustment.Misfit),
        Round(adjustment.MisfitLimit),
        Round(adjustment.ResidualLimit),
        [.. adjustment.Suspects.Select(reading => MeasureWords.Of(adjustment.Top, reading))],
        [.. adjustment.Readings.Select(reading => new ReadingPart(
            MeasureWords.Of(adjustment.Top, reading),
            Mm(reading.Read),
            Mm(reading.Adjusted),
            Mm(reading.Residual),
            Round(reading.Normalised),
            reading.Seen is { } seen ? Mm(seen) : null))],
        [.. adjustment.Ends.Select((ends, i) => new BowEndsPart(
            adjustment.Top.Bows[i].Name,
            adjustment.Stations[i] is { } station ? Mm(station) : null,
            new(Mm(ends.PortOffset), Mm(ends.PortStation)),
            new(Mm(ends.StarboardOffset), Mm(ends.StarboardStation))))]);

    private static double? Mm(Length length) => Round(length.Millimeters);

    /// <summary>Without a zero below zero, and without the digits that could differ from machine to machine; null for what is endless.</summary>
    private static double? Round(double value) => double.IsFinite(value) ? Math.Round(value, Digits) + 0.0 : null;
}
