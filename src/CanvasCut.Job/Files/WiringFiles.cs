using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Electrics;
using CanvasCut.Language;
using CanvasCut.Sheets;

namespace CanvasCut.Job;

/// <summary>The files of a wiring.</summary>
internal static class WiringFiles
{
    /// <summary>The sheets, and their picture alone.</summary>
    public static ImmutableArray<FilePlan> Of(WiringPlan wiring, HeatSpec heat, SheetContext context)
    {
        var (year, voltage) = (YieldYear.Of(wiring, heat).Year, YieldPlots.ByTemperature(wiring, context));
        return [.. Wiring(wiring, context), .. Pictures(year, voltage, context)];
    }

    private static IEnumerable<FilePlan> Pictures(YieldYear? year, Sheet? voltage, SheetContext context)
    {
        if (year is not null)
        {
            yield return FilePlan.Svg("yield.svg", Say.Of("energy by month against what is used"), () => YieldPlots.ByMonth(year, context));
        }

        if (voltage is not null)
        {
            yield return FilePlan.Svg("voltage.svg", Say.Of("a string's voltages by temperature against the controller"), () => voltage);
        }
    }

    private static ImmutableArray<FilePlan> Wiring(WiringPlan wiring, SheetContext context) =>
    [
        FilePlan.Pdf("wiring.pdf", Say.Of("strings, wires, fuses, labels and the form for the first day"), Say.Of($"Wiring, {context.JobName}"), () => WiringSheets.Of(wiring, context)),
        FilePlan.Svg("wiring.svg", Say.Of("the wiring as one line"), () => OneLineDiagram.Of(wiring, context)),
    ];
}
