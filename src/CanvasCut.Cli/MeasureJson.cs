using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using CanvasCut.Measuring;
using UnitsNet;

namespace CanvasCut.Cli;

/// <summary>The adjustment for programs; docs/measuring.md tells the form.</summary>
internal static class MeasureJson
{
    private const int Digits = 4;

    public static string Of(MeasureAdjustment adjustment)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            JsonSerializer.Serialize(json, Root(adjustment));
        }

        return Encoding.UTF8.GetString(buffer.ToArray()) + "\n";
    }

    private static Dictionary<string, object?> Root(MeasureAdjustment adjustment) => new()
    {
        ["format"] = "canvascut-measures-1",
        ["name"] = adjustment.Top.Name,
        ["agrees"] = adjustment.Agrees,
        ["settled"] = adjustment.IsSettled,
        ["verdict"] = MeasureVerdict.Of(adjustment),
        ["tape_mm"] = Mm(adjustment.Top.Tape),
        ["freedom"] = adjustment.Freedom,
        ["misfit"] = Round(adjustment.Misfit),
        ["misfit_limit"] = Round(adjustment.MisfitLimit),
        ["normalised_limit"] = Round(adjustment.ResidualLimit),
        ["suspects"] = adjustment.Suspects.Select(reading => MeasureWords.Of(adjustment.Top, reading)),
        ["readings"] = adjustment.Readings.Select(reading => new
        {
            name = MeasureWords.Of(adjustment.Top, reading),
            read_mm = Mm(reading.Read),
            adjusted_mm = Mm(reading.Adjusted),
            residual_mm = Mm(reading.Residual),
            normalised = Round(reading.Normalised),
            seen_from_mm = reading.Seen is { } seen ? Mm(seen) : null,
        }),
        ["bows"] = adjustment.Ends.Select((ends, i) => new
        {
            name = adjustment.Top.Bows[i].Name,
            station_mm = adjustment.Stations[i] is { } station ? Mm(station) : null,
            port = new { offset_mm = Mm(ends.PortOffset), station_mm = Mm(ends.PortStation) },
            starboard = new { offset_mm = Mm(ends.StarboardOffset), station_mm = Mm(ends.StarboardStation) },
        }),
    };

    private static double? Mm(Length length) => Round(length.Millimeters);

    /// <summary>Without a zero below zero, and without the digits that could differ from machine to machine; null for what is endless.</summary>
    private static double? Round(double value) => double.IsFinite(value) ? Math.Round(value, Digits) + 0.0 : null;
}
