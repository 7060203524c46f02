using System.Collections.Immutable;
using System.Globalization;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;
using CanvasCut.Takeoff;
using UnitsNet;

namespace CanvasCut.Sheets;

/// <summary>The card for stowing the carrier and for the six-month check, in letters to be read standing; one page.</summary>
internal static class CareCard
{
    private const double TextMm = 4.2;
    private const double PitchMm = 7;
    private const double GapMm = 2.6;
    private const double LeftMm = 12;

    /// <summary>Adds the card.</summary>
    public static void Add(Flow flow, PatternSet patterns, CarePlan plan)
    {
        flow.Title(patterns.Job.Mounting.IsOnly ? Say.Of("Stow it") : $"{Say.Of("Stow it")}: {patterns.Job.Mounting}");
        foreach (var (i, line) in Stowing(patterns).Index())
        {
            Put(flow, line, new Lettering((i + 1).ToString(CultureInfo.InvariantCulture), new(0, -TextMm), TextMm, IsBold: true));
        }

        flow.Block([], 5);
        flow.Title(Say.Of("Every six months"));
        foreach (var line in plan.SixMonthCheck)
        {
            Put(flow, line, Stroke.Closed(LineRole.Cut, Outline.Of(new Box(0, -TextMm - 0.8, TextMm + 1.6, 0.8))));
        }
    }

    private static IEnumerable<string> Stowing(PatternSet patterns)
    {
        var (job, box) = (patterns.Job, patterns.Mounted.CarrierBox);
        string Size(double mm) => LengthText.Of(Length.FromMillimeters(mm), job.Units);
        yield return Say.Of("Rinse off salt and let it dry: cloth put away wet shrinks and grows mould.");
        yield return Say.Of($"Lay it flat, never rolled or folded. It takes {Size(box.WidthMm)} × {Size(box.HeightMm)}.");
        var radii = job.Panels.Select(each => each.Panel.Limits.MinBendRadius).ToList();
        yield return radii.TrueForAll(each => each is not null) && radii.MaxBy(each => each!.Value.Millimeters) is { } radius
            ? Say.Of($"Never bend it tighter than {LimitWords.Least(radius, job.Units)}, the maker's radius, and not at all below freezing.")
            : Say.Of("Ask the maker how far it may be bent; till then not at all, and never below freezing.");
        yield return Say.Of("Face to something soft, nothing on top, the box and the cable free, no crease over a cell.");
        yield return Say.Of("Cover the face: a panel in light is live. Caps on the connectors.");
        if (!job.Fastenings.Mount.Uses(MountKind.Zipper))
        {
            yield return Say.Of("No weight on the flaps and what they carry.");
            yield break;
        }

        yield return !job.Fastenings.WeatherStrip.OnTop.Any()
            ? Say.Of("No weight on the zipper teeth; the halves on the top hang free.")
            : Say.Of("No weight on the zipper teeth; lay the strip over the halves that stay on the top.");
    }

    private static void Put(Flow flow, string text, Figure sign)
    {
        var lines = TextWrap.Lines(text, flow.WidthMm - LeftMm, TextMm, isBold: false);
        ImmutableArray<Figure> figures = [sign, .. lines.Select((line, i) => new Lettering(line, new(LeftMm, -TextMm - (i * PitchMm)), TextMm))];
        flow.Block(figures, (lines.Length * PitchMm) + GapMm);
    }
}
