using System.Collections.Immutable;
using System.Globalization;
using CanvasCut.Design;
using CanvasCut.Patterns;
using CanvasCut.Takeoff;

namespace CanvasCut.Job;

/// <summary>The order for programs: the same as a part of results.json and by itself.</summary>
public static class OrderJson
{
    /// <summary>The value of "format".</summary>
    public const string Format = "canvascut-order-1";

    /// <summary>The order alone, as <c>order --json</c> prints it.</summary>
    public static string Of(JobRun outcome)
    {
        var content = outcome.Content;
        return JsonText.Of(
            new(
                Format,
                outcome.Context.Version,
                outcome.Context.JobName,
                outcome.HasFailed,
                Lines(content.Order),
                Cost(content.Cost),
                Seams(content.Seams, outcome.Job.Workshop),
                Materials(outcome.Job)),
            ResultsContext.Default.OrderDocument);
    }

    internal static ImmutableArray<OrderPart> Lines(ImmutableArray<OrderLine> order) => [.. order.Select(line => new OrderPart(
        line.Thing.Grade,
        line.Item,
        line.Thing.Length is { } length ? JsonText.Mm(length.Millimeters) : null,
        line.Bought.Number,
        line.Unit,
        line.Bought.Other?.Number,
        line.Bought.Other?.Unit,
        line.Rounding,
        line.Also,
        line.Use.Text,
        [.. line.Use.Pieces.Select(key => key.Id)]))];

    internal static CostPart? Cost(OrderCost? cost) => cost is null ? null : new(
        cost.List.Money.Currency,
        cost.List.Money.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        [.. cost.Lines.Select(line => new CostLinePart(line.Line.Thing.Grade, line.Price?.Amount, line.Price?.Per, line.Amount))],
        cost.Materials,
        cost.Waste,
        cost.List.Labour is not null,
        cost.Labour,
        cost.Total,
        cost.Unpriced);

    internal static ImmutableArray<SeamPart> Seams(ImmutableArray<SewnSeam> seams, Workshop workshop) => [.. seams.Select(seam => new SeamPart(
        seam.Name,
        seam.Copies,
        [.. seam.Pieces.Select(key => key.Id)],
        JsonText.Mm(seam.Sewn.Millimeters),
        JsonText.Mm(seam.Thread(workshop.Supplies, workshop.Sewing.StitchLength).Millimeters),
        Layers(seam.Usual, workshop.Supplies),
        Layers(seam.Thickest(workshop.Supplies), workshop.Supplies)))];

    internal static ImmutableArray<MaterialPart> Materials(CarrierJob job) =>
    [
        .. job.Workshop.Supplies.GradesFor(job.Fastenings.Mount)
            .Select(grade => new MaterialPart(grade.Id, grade.Name, grade.Confidence, grade.Source)),
    ];

    private static LayersPart Layers(LayerCount layers, JobSupplies supplies) => new(
        layers.Plies,
        layers.Cloth,
        layers.ZipperTape,
        layers.Binding,
        layers.Webbing,
        layers.HookAndLoop > 0 ? layers.HookAndLoop : null,
        JsonText.Mm(layers.Thickness(supplies).Millimeters));
}
