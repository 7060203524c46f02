using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Sheets;

/// <summary>What holds the edges: the zippers' lengths, and the fasteners and their spaces.</summary>
internal static class MountSection
{
    public static void Write(Flow flow, CarrierContent content, SheetContext context)
    {
        var fastened = content.Patterns.Mounted.Fastened;
        if (!fastened.Zippers.IsEmpty)
        {
            Zippers(flow, fastened.Zippers, context);
        }

        if (fastened.Flaps.Any(flap => flap.Lugs is null))
        {
            Flaps(flow, [.. fastened.Flaps.Where(flap => flap.Lugs is null)], context);
        }

        SleeveSection.Write(flow, fastened, context);
    }

    private static void Zippers(Flow flow, ImmutableArray<ZipperPlace> zippers, SheetContext context)
    {
        flow.Heading(Say.Of("Zippers"));
        var column = (flow.WidthMm - 24) / 5;
        var table = new Table([new(Say.Of("Edge"), 24), new(Say.Of("Kind"), column), new(Say.Of("Length to buy or cut"), column), new(Say.Of("Run as sewn"), column), new(Say.Of("Starts, from that corner"), column), new(Say.Of("Ends before the other"), column)]);
        flow.Rows(table, zippers.Select(zipper => ImmutableArray.Create(
            Words.Of(zipper.Side),
            zipper.Choice.Kind == ZipperKind.Separating ? Say.Of("separating") : Say.Of("continuous"),
            LengthText.Of(zipper.Choice.Buy, context.Units),
            LengthText.OfMating(zipper.Choice.Run, context.Units),
            $"{zipper.StartName}, {LengthText.OfMating(zipper.Choice.StartSetback, context.Units)}",
            LengthText.OfMating(zipper.Choice.Setback, context.Units) + (zipper.Choice.IsShort ? Say.Of(", more than asked") : string.Empty))));
        flow.Text(string.Empty);
        flow.Text(Say.Of("Pin on the carrier's half, box and slider on the top's: so the slider stays on the boat. The pull faces up. Two zippers that start at one side are a left one and a right one, or sliders with a pull on both faces."));
        flow.Text(Say.Of($"Trim a separating zipper at its stop end, never at the pin. Both halves bear ticks in the middle and every {LengthText.Of(ZipperChoice.TickSpacing, context.Units)} from it: close the zipper, put tick on tick, then sew. Stock lengths vary by some millimetres; measure before trimming."));
    }

    private static void Flaps(Flow flow, ImmutableArray<FlapPlace> flaps, SheetContext context)
    {
        flow.Heading(Say.Of("Fastenings of the edges"));
        var column = (flow.WidthMm - 24 - 34 - 18) / 3;
        var table = new Table([new(Say.Of("Edge"), 24), new(Say.Of("Held by"), 34), new(Say.Of("How many"), 18), new(Say.Of("Centre to centre"), column), new(Say.Of("Flap's end to first centre"), column), new(Say.Of("Flap from end to end"), column)]);
        flow.Rows(table, flaps.Select(flap => ImmutableArray.Create(
            Words.Of(flap.Side),
            Words.Of(flap.Kind),
            flap.Fasteners is { } row ? FormattableString.Invariant($"{row.Count}") : "-",
            flap.Fasteners is { } pitched ? LengthText.OfMating(pitched.Pitch, context.Units) : Say.Of("all along"),
            flap.Parts.Spec is { } spec ? LengthText.OfMating(spec.Spacing.EndDistance, context.Units) : "-",
            LengthText.OfMating(flap.Run, context.Units))));
        flow.Text(string.Empty);
        flow.Text(Say.Of("Set the carrier's first, at the marks of the flap's template, and mark the top's through them with the carrier in place: two halves set from measures alone rarely meet. All spaces of an edge are equal."));
    }
}
