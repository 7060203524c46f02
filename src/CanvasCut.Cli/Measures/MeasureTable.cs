using System.Globalization;
using CanvasCut.Language;
using CanvasCut.Measuring;
using Spectre.Console;

namespace CanvasCut.Cli;

/// <summary>Shows how measures agree.</summary>
internal static class MeasureTable
{
    /// <summary>A row a reading, a row a bow, the verdict.</summary>
    public static void Write(MeasureAdjustment adjustment, Faces faces)
    {
        var table = new Table { Border = TableBorder.Simple };
        table.AddColumns(new TableColumn(Say.Of("Measure, mm")).NoWrap(), Right(Say.Of("Read")), Right(Say.Of("Adjusted")), Right(Say.Of("Residual")), Right(Say.Of("Normalised")), Right(Say.Of("Seen from")));
        foreach (var reading in adjustment.Readings)
        {
            var isSuspect = adjustment.Suspects.Contains(reading);
            table.AddRow(
                new Text((isSuspect ? "? " : "  ") + MeasureWords.Of(adjustment.Top, reading), isSuspect ? new Style(Color.Red, decoration: Decoration.Bold) : Style.Plain),
                new Text(Number(reading.Read.Millimeters)),
                new Text(Number(reading.Adjusted.Millimeters)),
                new Text(Number(reading.Residual.Millimeters)),
                new Text(reading.IsChecked ? Number(reading.Normalised) : "-"),
                new Text(reading.Seen is { } seen ? Number(seen.Millimeters) : Say.Of("never")));
        }

        faces.Console().Write(table);
        WriteBows(adjustment, faces);
        faces.Output.WriteLine(Numbers(adjustment));
        foreach (var line in MeasureVerdict.Of(adjustment))
        {
            faces.Output.WriteLine(line);
        }
    }

    private static void WriteBows(MeasureAdjustment adjustment, Faces faces)
    {
        var table = new Table { Border = TableBorder.Simple };
        table.AddColumns(new TableColumn(Say.Of("Bow, seen from above, mm")), Right(Say.Of("Station on the centreline")), Right(Say.Of("Port offset")), Right(Say.Of("Port station")), Right(Say.Of("Starboard offset")), Right(Say.Of("Starboard station")));
        foreach (var (bow, ends, station) in adjustment.Top.Bows.Zip(adjustment.Ends, adjustment.Stations))
        {
            table.AddRow(
                new Text(bow.Name),
                new Text(station is { } known ? Number(known.Millimeters) : "-"),
                new Text(Number(ends.PortOffset.Millimeters)),
                new Text(Number(ends.PortStation.Millimeters)),
                new Text(Number(ends.StarboardOffset.Millimeters)),
                new Text(Number(ends.StarboardStation.Millimeters)));
        }

        faces.Console().Write(table);
    }

    private static string Numbers(MeasureAdjustment adjustment) => Say.Of($"{adjustment.Readings.Length} readings, {adjustment.Freedom} more than the shape needs.")
        + (adjustment.Freedom > 0
            ? Say.Of($" Misfit {adjustment.Misfit:0.0} of at most {adjustment.MisfitLimit:0.0}; largest normalised residual {adjustment.LargestNormalised:0.0} of at most {adjustment.ResidualLimit:0.0}.")
            : string.Empty);

    private static TableColumn Right(string head) => new TableColumn(head).RightAligned();

    private static string Number(double value) => (Math.Round(value, 1, MidpointRounding.AwayFromZero) + 0.0).ToString("0.0", CultureInfo.InvariantCulture);
}
