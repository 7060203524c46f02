using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Checks;

/// <summary>Every stretch of cloth under the panel with nothing below it, and the radius to which it sags.</summary>
internal static class SpanChecks
{
    /// <summary>One result a span that the panel lies on.</summary>
    public static IEnumerable<CheckResult> Of(CarrierJob job, MountedShape mounted)
    {
        if (job.Top.Bows.Length < 2)
        {
            return
            [
                new(CheckCodes.Span, Say.Of("unsupported spans"), Verdict.NotChecked, Measured.Nothing, BendLimit.Source, Say.Of("A span lies between two bows: add every [[top.bow]].")),
            ];
        }

        var (from, to) = (-mounted.PanelBox.Top, -mounted.PanelBox.Bottom);
        return ClothSpan.Of(job)
            .Where(span => span.From.Millimeters < to && (span.From + span.Span).Millimeters > from)
            .Select(span => OnSpan(job, span));
    }

    private static CheckResult OnSpan(CarrierJob job, ClothSpan span)
    {
        var assumed = span.IsMeasured ? Say.Of("measured") : Say.Of("assumed");
        var subject = Say.Of($"span of {LengthText.Of(span.Span, job.Units)} aft of bow {span.Bow + 1}, sag {LengthText.Of(span.Sag, job.Units)} {assumed}");
        var result = BendLimit.Of(job).Judge(
            (CheckCodes.Span, subject),
            span.Radius,
            Say.Of("The panel sags with the cloth: tighten the top, add a bow under the panel, or lay it on a backing sheet."),
            span.IsMeasured ? string.Empty : Say.Of("Measure the sag and give it as sag_aft."));

        // What was only assumed can fail no panel.
        var judged = result.Verdict == Verdict.Fail && !span.IsMeasured ? result with { Verdict = Verdict.Caution } : result;
        return judged.On(PartKey.Bow(span.Bow + 1), PartKey.Bow(span.Bow + 2), new PartKeys(job).Panel);
    }
}
