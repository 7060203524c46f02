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
    public static string Of(TopRun top)
    {
        ArgumentNullException.ThrowIfNull(top);
        var bought = top.Purchase;
        return JsonText.Of(
            new(Format, top.Context.Version, top.Context.JobName, top.HasFailed, Lines(bought.Order), Cost(bought.Cost), Seams(bought.Seams), Materials(bought.Made)),
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

    internal static ImmutableArray<SeamPart> Seams(ImmutableArray<MadeSeam> seams) => [.. seams.Select(each => new SeamPart(
        each.Seam.Kind,
        each.Seam.Edge,
        each.Seam.Name,
        each.Seam.Copies,
        [.. each.Seam.Pieces.Select(key => key.Id)],
        JsonText.Mm(each.Seam.Sewn.Millimeters),
        JsonText.Mm(each.Thread.Millimeters),
        Layers(each.Seam.Usual, each.Supplies),
        Layers(each.Seam.Thickest(each.Supplies), each.Supplies)))];

    internal static ImmutableArray<MaterialPart> Materials(MadeTogether made) =>
        [.. made.Grades.Select(grade => new MaterialPart(grade.Id, grade.Name, grade.Confidence.Replace(' ', '-'), grade.Source))];

    private static LayersPart Layers(LayerCount layers, JobSupplies supplies) => new(
        layers.Plies,
        layers.Cloth,
        layers.ZipperTape,
        layers.Binding,
        layers.Webbing,
        layers.HookAndLoop,
        JsonText.Mm(layers.Thickness(supplies).Millimeters));
}
