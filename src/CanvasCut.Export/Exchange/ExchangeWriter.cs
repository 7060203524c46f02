using CanvasCut.Drawing;
using CanvasCut.Export.Common;
using CanvasCut.Geometry;

namespace CanvasCut.Export.Exchange;

/// <summary>Writes the pieces of a sewn product as a pattern exchange file after ASTM D6673 and ANSI/AAMA-292.</summary>
/// <remarks>
/// D6673 was withdrawn in 2019 and its full text was not at hand: the structure is that of public summaries of it and of
/// files in use. Sections HEADER (empty), BLOCKS and ENTITIES only; one block a piece, each inserted once at the origin;
/// plain ASCII. Numbers are millimetres with two decimals, so a place is right to 0.005 mm each way. No date is written,
/// so that the same pieces give the same characters every time.
/// </remarks>
public static class ExchangeWriter
{
    /// <summary>Two decimals, as D6673 asks of a metric file.</summary>
    private const string MetricForm = "0.00";

    /// <summary>Writes all pieces of a style.</summary>
    /// <exception cref="ArgumentException">Two pieces would bear one name.</exception>
    public static void Write(PatternStyle style, TextWriter output)
    {
        var names = BlockNames.Of(style);
        var pairs = new DxfPairs(output, form: MetricForm);
        pairs.Text(0, "SECTION").Text(2, "HEADER").Text(0, "ENDSEC").Text(0, "SECTION").Text(2, "BLOCKS");
        foreach (var (name, block) in names.Zip(style.Blocks))
        {
            new BlockWriter(pairs, block).Write(name, style.Size);
        }

        pairs.Text(0, "ENDSEC").Text(0, "SECTION").Text(2, "ENTITIES");
        foreach (var name in names)
        {
            pairs.Text(0, "INSERT").Whole(8, ExchangeLayers.Boundary).Text(2, $"{name}_{style.Size}").FlatPlace(10, new(0, 0));
        }

        new ExchangeText(pairs, ExchangeLayers.Boundary).Column(new(0, 0), LinesOf(style));
        pairs.Text(0, "ENDSEC").Text(0, "EOF");
    }

    private static IEnumerable<string> LinesOf(PatternStyle style) =>
    [
        "ASTM/D13Proposal 1 Version: D 6673-04",
        $"Style Name: {style.Style}",
        $"Sample Size: {style.Size}",
        "Grade Rule Table:",
        "Units: METRIC",
        FormattableString.Invariant($"Curve Tolerance: {RoundedBox.SagittaMm}"),
        $"Author: {style.Author}",
    ];
}
