using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using CanvasCut.Takeoff;

namespace CanvasCut.Sheets;

/// <summary>The rods, and the lugs of their sleeves.</summary>
internal static class SleeveSection
{
    public static void Write(Flow flow, MountedFastenings fastened, SheetContext context)
    {
        ImmutableArray<FlapPlace> sleeves = [.. fastened.Flaps.Where(flap => flap.Lugs is not null)];
        if (sleeves.IsEmpty)
        {
            return;
        }

        flow.Heading(Say.Of("Rods"));
        var column = (flow.WidthMm - 24 - 26 - 26) / 3;
        var table = new Table([new(Say.Of("Edge"), 24), new(Say.Of("Lugs, carrier"), 26), new(Say.Of("Lugs, top"), 26), new(Say.Of("Gap to gap"), column), new(Say.Of("Gap"), column), new(Say.Of("Rod, diameter and length"), column)]);
        flow.Rows(table, sleeves.Select(flap => Row(flap, flap.Lugs!, flap.Parts.Sleeve!, context.Units)));
        flow.Text(string.Empty);
        flow.Text(Say.Of("Thread each rod through both sleeves by turns while the carrier lies in its place, and tape the top's sleeve down as it lies then. A stop at each end keeps the rod from walking out; look that no end can reach cloth or people."));
    }

    private static ImmutableArray<string> Row(FlapPlace flap, LugRow lugs, SleeveSpec sleeve, PrintUnits units) =>
    [
        Words.Of(flap.Side),
        FormattableString.Invariant($"{lugs.OnCarrier}"),
        FormattableString.Invariant($"{lugs.OnTop}"),
        LengthText.OfMating(lugs.Pitch, units),
        LengthText.Of(lugs.Gap, units),
        $"{LengthText.Of(sleeve.Rod, units)} × {LengthText.Of(RodOrder.LengthOf(flap), units)}",
    ];
}
