using System.Collections.Immutable;
using CanvasCut.Electrics;
using CanvasCut.Language;
using CanvasCut.Sheets;

namespace CanvasCut.Job;

/// <summary>The files of a wiring.</summary>
internal static class WiringFiles
{
    /// <summary>The sheets, and their picture alone.</summary>
    public static ImmutableArray<FilePlan> Of(WiringPlan wiring, SheetContext context) =>
    [
        FilePlan.Pdf("wiring.pdf", Say.Of("strings, wires, fuses, labels and the form for the first day"), Say.Of($"Wiring, {context.JobName}"), () => WiringSheets.Of(wiring, context)),
        FilePlan.Svg("wiring.svg", Say.Of("the wiring as one line"), () => OneLineDiagram.Of(wiring, context)),
    ];
}
