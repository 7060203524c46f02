using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Electrics;
using CanvasCut.Language;

namespace CanvasCut.Sheets;

/// <summary>The wiring on paper: picture, tables, cautions beside what they concern, labels to cut out, form for the first day.</summary>
public static class WiringSheets
{
    /// <summary>The pages.</summary>
    /// <param name="plan">The wiring.</param>
    /// <param name="context">What every sheet says.</param>
    public static ImmutableArray<Sheet> Of(WiringPlan plan, SheetContext context)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(context);
        var flow = new Flow(context);
        flow.Title(Say.Of($"Wiring, {context.JobName}"));
        foreach (var caution in ElectricCautions.Of(CautionAbout.Everything))
        {
            flow.Text(caution, isBold: true);
        }

        flow.Text(string.Empty);
        flow.Picture(OneLineDiagram.Of(plan, context));
        flow.Text(Say.Of("Symbols after the habits of IEC 60617. What stands as to buy, or as not known, is not in the job file."));
        Section(flow, Say.Of("Strings"), WiringText.Strings(plan), [34, 24], CautionAbout.Strings);
        Section(flow, Say.Of("Wires"), WiringText.Wires(plan, context.Units), [38, 26, 26, 26], CautionAbout.Wires);
        flow.List(WireRules);
        Section(flow, Say.Of("Fuses and breakers"), WiringText.Devices(plan), [48, 26, 26, 26], CautionAbout.Devices);
        WiringLabels.Add(flow, plan);
        WiringFirstDay.Add(flow, plan);
        return flow.Pages("wiring", Say.Of($"Wiring, {context.JobName}"), context.Footer);
    }

    private static ImmutableArray<string> WireRules =>
    [
        Say.Of("Red is plus, black or yellow minus, green bonding (ABYC E-11, restated). Two wires everywhere; no hull, tube or frame carries current."),
        Say.Of("The panels' minus goes to the controller's panel terminal only, never to a bus: read whether your controller joins plus or minus inside."),
        Say.Of("The cable leaves on the low, sheltered edge with a drip loop, one gland for each, fixed within 100 mm of the box (common practice), slack enough to lift the carrier, a sleeve over tubes, held every 450 mm, within 300 mm of the battery (ISO 10133, restated)."),
        Say.Of("Bend a panel's cable no tighter than 50 mm, about 4 times its thickness and more (EN 50618 data sheets)."),
    ];

    private static void Section(Flow flow, string heading, WordTable words, double[] firstMm, CautionAbout about)
    {
        flow.Heading(heading);
        var rest = (flow.WidthMm - firstMm.Sum()) / (words.Heads.Length - firstMm.Length);
        flow.Rows(new Table([.. words.Heads.Select((head, i) => new Column(head, i < firstMm.Length ? firstMm[i] : rest))], 1.9), words.Rows);
        flow.Text(string.Empty);
        flow.List(ElectricCautions.Of(about));
    }
}
