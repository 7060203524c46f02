using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Electrics;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Sheets;

/// <summary>Labels to cut out and cover: both ends of every wire, every switch and fuse.</summary>
internal static class WiringLabels
{
    private const double HeightMm = 14;
    private const double GapMm = 2;
    private const double TextMm = 2.6;
    private const int Across = 3;

    /// <summary>Adds the labels.</summary>
    public static void Add(Flow flow, WiringPlan plan)
    {
        flow.Heading(Say.Of("Labels to cut out"));
        flow.Text(Say.Of("Under clear tape or laminated; both ends of a wire carry the same."));
        flow.Text(string.Empty);
        var width = (flow.WidthMm - ((Across - 1) * GapMm)) / Across;
        foreach (var row in Texts(plan).Chunk(Across))
        {
            flow.Block([.. row.SelectMany((lines, i) => Label(lines, i * (width + GapMm), width))], HeightMm + GapMm);
        }
    }

    /// <summary>What stands on the labels, a line or two each.</summary>
    internal static IEnumerable<ImmutableArray<string>> Texts(WiringPlan plan)
    {
        foreach (var controller in plan.Controllers)
        {
            foreach (var text in controller.Strings.Select(ElectricWords.Of))
            {
                yield return [Say.Of("PANELS +"), text];
                yield return [Say.Of("PANELS -"), text];
            }

            yield return [Say.Of("PANELS: LIVE IN LIGHT"), Say.Of("Cover them before work.")];
            yield return [Say.Of("BREAKER OF THE PANELS"), Say.Of("Off before a connector is pulled.")];
            yield return [controller.BankFuseRating.Value is { } rating ? Say.Of($"FUSE {QuantityWords.Of(rating)}") : Say.Of("FUSE"), Say.Of($"controller \"{controller.Spec.Name}\" to the bank")];
            yield return [Say.Of($"CONTROLLER \"{controller.Spec.Name}\""), Say.Of("Battery first on, panels last.")];
        }
    }

    private static IEnumerable<Figure> Label(ImmutableArray<string> lines, double left, double widthMm)
    {
        yield return Stroke.Closed(LineRole.Note, Outline.Of(new Box(left, -HeightMm, left + widthMm, 0)));
        foreach (var (i, line) in lines.Index())
        {
            yield return new Lettering(TextWidth.Shortened(line, widthMm - 3, TextMm, isBold: i == 0), new(left + (widthMm / 2), -5.5 - (i * 5)), TextMm, TextAnchor.Middle, IsBold: i == 0);
        }
    }
}
