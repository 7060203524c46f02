using CanvasCut.Patterns;
using CanvasCut.Sheets;

namespace CanvasCut.Job;

/// <summary>The order for programs: the same as a part of results.json and by itself.</summary>
public static class OrderJson
{
    /// <summary>The value of "format".</summary>
    public const string Format = "canvascut-order-1";

    /// <summary>The order alone, as <c>order --json</c> prints it.</summary>
    public static string Of(JobRun outcome) => JsonText.Of(new Dictionary<string, object?>
    {
        ["format"] = Format,
        ["version"] = outcome.Context.Version,
        ["job"] = outcome.Context.JobName,
        ["failed"] = outcome.HasFailed,
        ["order"] = Lines(outcome.Content),
        ["cost"] = Cost(outcome.Content),
        ["seams"] = Seams(outcome.Content),
        ["materials"] = Materials(outcome.Content),
    });

    internal static object Lines(ReportContent content) => content.Order.Select(line => new
    {
        grade = line.Thing.Grade,
        item = line.Item,
        length_mm = line.Thing.Length is { } length ? JsonText.Mm(length.Millimeters) : (double?)null,
        quantity = line.Bought.Number,
        unit = line.Unit,
        other_quantity = line.Bought.Other?.Number,
        other_unit = line.Bought.Other?.Unit,
        rounded = line.Rounding,
        also = line.Also,
        @for = line.Use.Text,
        pieces = line.Use.Pieces.Select(key => key.Id),
    });

    internal static object? Cost(ReportContent content) => content.Cost is not { } cost ? null : new
    {
        currency = cost.List.Money.Currency,
        date = cost.List.Money.Date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture),
        lines = cost.Lines.Select(line => new { grade = line.Line.Thing.Grade, price = line.Price?.Amount, per = line.Price?.Per, amount = line.Amount }),
        materials = cost.Materials,
        waste = cost.Waste,
        labour_counted = cost.List.Labour is not null,
        labour = cost.Labour,
        total = cost.Total,
        unpriced_lines = cost.Unpriced,
    };

    internal static object Seams(ReportContent content)
    {
        var supplies = content.Patterns.Job.Workshop.Supplies;
        return content.Seams.Select(seam => new
        {
            name = seam.Name,
            copies = seam.Copies,
            pieces = seam.Pieces.Select(key => key.Id),
            sewn_mm = JsonText.Mm(seam.Sewn.Millimeters),
            thread_mm = JsonText.Mm(seam.Thread(supplies, content.Patterns.Job.Workshop.Sewing.StitchLength).Millimeters),
            usual = Layers(seam.Usual),
            thickest = Layers(seam.Thickest(supplies)),
        });

        Dictionary<string, object> Layers(LayerCount layers)
        {
            var counted = new Dictionary<string, object>
            {
                ["plies"] = layers.Plies,
                ["cloth"] = layers.Cloth,
                ["zipper_tape"] = layers.ZipperTape,
                ["binding"] = layers.Binding,
                ["webbing"] = layers.Webbing,
            };
            if (layers.HookAndLoop > 0)
            {
                counted["hook_and_loop"] = layers.HookAndLoop;
            }

            counted["thickness_mm"] = JsonText.Mm(layers.Thickness(supplies).Millimeters);
            return counted;
        }
    }

    internal static object Materials(ReportContent content) => content.Patterns.Job.Workshop.Supplies.GradesFor(content.Patterns.Job.Fastenings.Mount)
        .Select(grade => new { grade = grade.Id, name = grade.Name, confidence = grade.Confidence, source = grade.Source });
}
