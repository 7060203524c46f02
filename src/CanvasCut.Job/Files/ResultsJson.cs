using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Takeoff;
using UnitsNet;

namespace CanvasCut.Job;

/// <summary>Writes all results for programs; docs/results.md tells the form.</summary>
public static class ResultsJson
{
    /// <summary>The value of "format": what tells our results from anyone else's file of that name.</summary>
    public const string Format = "canvascut-results-2";

    /// <summary>The value of "format" of earlier versions; what they wrote can still be read.</summary>
    public const string EarlierFormat = "canvascut-results-1";

    /// <summary>The file's text.</summary>
    /// <param name="outcome">The results of one carrier.</param>
    /// <param name="files">The names of all files written with it, itself included.</param>
    public static string Of(JobRun outcome, IEnumerable<string> files) => Of(TopRun.Of(outcome), files);

    /// <summary>The file's text.</summary>
    /// <param name="top">The results of all carriers.</param>
    /// <param name="files">The names of all files written with it, itself included.</param>
    public static string Of(TopRun top, IEnumerable<string> files)
    {
        ArgumentNullException.ThrowIfNull(top);
        return top.Spoken(() => JsonText.Of(Root(top, files, top.Purchase), ResultsContext.Default.ResultsDocument));
    }

    /// <summary>The same of one carrier.</summary>
    /// <param name="outcome">The results.</param>
    public static string OfChecks(JobRun outcome) => OfChecks(TopRun.Of(outcome));

    /// <summary>The same without what waits for the cut plan, as <c>check --json</c> prints it.</summary>
    /// <param name="top">The results.</param>
    public static string OfChecks(TopRun top)
    {
        ArgumentNullException.ThrowIfNull(top);
        return top.Spoken(() => JsonText.Of(Root(top, [], null), ResultsContext.Default.ResultsDocument));
    }

    /// <summary>The same of one of several carriers: cut plan and order are common to all.</summary>
    /// <param name="outcome">The results.</param>
    /// <param name="files">The names of all files written with it, itself included.</param>
    internal static string OfCarrier(JobRun outcome, IEnumerable<string> files) =>
        outcome.Spoken(() => JsonText.Of(Root(TopRun.Of(outcome), files, null), ResultsContext.Default.ResultsDocument));

    private static ResultsDocument Root(TopRun top, IEnumerable<string> files, Purchase? bought) => new(
        Format,
        JobRun.Version,
        Languages.Code,
        top.Top.First.Name,
        [.. files],
        top.HasFailed,
        top.Top.Copies,
        [.. top.Between.Concat(top.Electric).Select(Check)],
        [.. top.Mountings.Select(mounting => MountingJson.Of(top, mounting))],
        bought is null ? null : CutPlanJson.Of(top.Plan),
        bought is null ? null : OrderJson.Lines(bought.Order),
        OrderJson.Cost(bought?.Cost),
        OrderJson.Seams(bought?.Seams ?? Purchase.SeamsOf(top.Made)),
        OrderJson.Materials(top.Made),
        WorkJson.Part(top.Top.First.Work.Order, top.Work),
        Paper(top.Top.First.Workshop.Paper));

    internal static CheckPart Check(CheckResult check) => new(
        check.Code,
        check.Subject,
        [.. check.About.Parts.Select(part => part.Id)],
        check.Verdict,
        Mm(check.Measured.Value),
        Mm(check.Measured.Limit),
        Number(check.Measured.Reading?.Value ?? check.Measured.Value),
        Number(check.Measured.Reading?.Limit ?? check.Measured.Limit),
        (check.Measured.Reading?.Value ?? check.Measured.Value) is { } found ? QuantityWords.Plain(found).Unit : null,
        check.Measured.IsAtLeast ? LimitIs.AtLeast : LimitIs.AtMost,
        check.Source,
        check.Advice);

    private static PaperPart Paper(PaperSpec paper) => new(paper.Name, Mm(paper.Readings?.X), Mm(paper.Readings?.Y));

    /// <summary>Points as they are written.</summary>
    internal static ImmutableArray<PointPart> Points(ImmutableArray<CanvasCut.Geometry.Point> points) =>
        [.. points.Select(point => new PointPart(JsonText.Mm(point.X), JsonText.Mm(point.Y)))];

    private static double? Number(IQuantity? quantity) => quantity is null ? null : Math.Round(QuantityWords.Plain(quantity).Number, JsonText.Digits) + 0.0;

    private static double? Mm(Length? length) => length is { } value ? JsonText.Mm(value.Millimeters) : null;
}
