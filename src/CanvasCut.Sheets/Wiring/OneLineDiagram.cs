using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Electrics;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Sheets;

/// <summary>The wiring as one line: panels to the left, bank to the right, a row for each string.</summary>
public static class OneLineDiagram
{
    private const double RowMm = 30;
    private const double WireMm = 34;
    private const double TextMm = 2;
    private const double PitchMm = 3.4;
    private const double MarginMm = 8;

    /// <summary>The drawing.</summary>
    /// <param name="plan">The wiring.</param>
    /// <param name="context">What every sheet says.</param>
    public static Sheet Of(WiringPlan plan, SheetContext context)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(context);
        var figures = ImmutableArray.CreateBuilder<Figure>();
        var y = 0.0;
        List<double> rows = [];
        foreach (var controller in plan.Controllers.Where(controller => !controller.Strings.IsEmpty))
        {
            var (drawn, heightMm, rowY) = Controller(controller, (Columns.Of(plan), y), context.Units);
            figures.AddRange(drawn);
            rows.Add(rowY);
            y -= heightMm;
        }

        figures.AddRange(Bank(plan, Columns.Of(plan).Bus, rows));
        return OnSheet(figures.ToImmutable(), context);
    }

    /// <summary>Where things stand from left to right.</summary>
    private sealed record Columns(double Joint, double Breaker, double Controller, double Fuse, double Bus)
    {
        public static Columns Of(WiringPlan plan)
        {
            var longest = plan.Strings.Select(one => one.Panels.Length).DefaultIfEmpty(1).Max();
            var hasFuses = plan.Controllers.Any(controller => controller.Strings.Any(one => WiringText.NeedsFuse(controller, one)));
            var joint = ((longest + (hasFuses ? 1 : 0)) * WiringSymbols.LengthMm) + 4;
            var breaker = joint + WireMm;
            var controllerAt = breaker + WiringSymbols.LengthMm + 6;
            var fuse = controllerAt + WiringSymbols.LengthMm + WireMm;
            return new(joint, breaker, controllerAt, fuse, fuse + WiringSymbols.LengthMm + 6);
        }
    }

    private static (ImmutableArray<Figure> Figures, double HeightMm, double RowY) Controller(WiredController controller, (Columns At, double Top) place, PrintUnits units)
    {
        var figures = ImmutableArray.CreateBuilder<Figure>();
        var (at, top) = place;
        foreach (var (i, one) in controller.Strings.Index())
        {
            figures.AddRange(String(controller, one, (at.Joint, top - (i * RowMm))));
        }

        var bottom = top - ((controller.Strings.Length - 1) * RowMm);
        if (bottom < top)
        {
            figures.Add(Stroke.Open(LineRole.Mark, new(at.Joint, top), new(at.Joint, bottom)));
            figures.AddRange(controller.Strings.Select((_, i) => WiringSymbols.Joint(new(at.Joint, top - (i * RowMm)))));
        }

        figures.AddRange(WiringSymbols.Wires(new(at.Joint, top), new(at.Breaker, top)));
        figures.AddRange(Words(new((at.Joint + at.Breaker) / 2, top + 6.2), WiringText.Size(controller.PanelRun), WiringText.Way(controller.PanelRun, units)));
        figures.AddRange(WiringSymbols.Breaker(new(at.Breaker, top)));
        figures.AddRange(Words(new(at.Breaker + 8, top - 5), WiringText.Rating(controller.Spec.Devices.Breaker, controller.BreakerRating)));
        figures.Add(Stroke.Open(LineRole.Mark, new(at.Breaker + WiringSymbols.LengthMm, top), new(at.Controller, top)));
        figures.AddRange(WiringSymbols.Controller(new(at.Controller, top)));
        figures.AddRange(Words(new(at.Controller + 8, top - 10.5), [controller.Spec.Name, KindOf(controller.Spec.Kind)]));
        figures.AddRange(WiringSymbols.Wires(new(at.Controller + WiringSymbols.LengthMm, top), new(at.Fuse, top)));
        figures.AddRange(Words(new((at.Controller + WiringSymbols.LengthMm + at.Fuse) / 2, top + 6.2), WiringText.Size(controller.BankRun), WiringText.Way(controller.BankRun, units)));
        figures.AddRange(WiringSymbols.Fuse(new(at.Fuse, top)));
        figures.AddRange(Words(new(at.Fuse + 8, top - 5), WiringText.Rating(controller.Spec.Devices.BankFuse, controller.BankFuseRating)));
        figures.Add(Stroke.Open(LineRole.Mark, new(at.Fuse + WiringSymbols.LengthMm, top), new(at.Bus, top)));
        return (figures.ToImmutable(), controller.Strings.Length * RowMm, top);
    }

    /// <summary>A string's panels, with their names, and its fuse where it needs one; its right end at the joint.</summary>
    private static IEnumerable<Figure> String(WiredController controller, WiredString one, (double Right, double Y) end)
    {
        var hasFuse = WiringText.NeedsFuse(controller, one);
        var left = end.Right - 4 - ((one.Panels.Length + (hasFuse ? 1 : 0)) * WiringSymbols.LengthMm);
        foreach (var (i, panel) in one.Panels.Index())
        {
            var x = left + (i * WiringSymbols.LengthMm);
            var name = panel.Name.IsOnly ? Say.Of("panel") : panel.Name.Text;
            var label = panel.Label is { } known ? QuantityWords.Of(known.Power) : string.Empty;
            foreach (var figure in WiringSymbols.Panel(new(x, end.Y)).Concat(Words(new(x + 8, end.Y - 8), name, label)))
            {
                yield return figure;
            }
        }

        if (hasFuse)
        {
            foreach (var figure in WiringSymbols.Fuse(new(end.Right - 4 - WiringSymbols.LengthMm, end.Y)))
            {
                yield return figure;
            }
        }

        yield return Stroke.Open(LineRole.Mark, new(end.Right - 4, end.Y), new(end.Right, end.Y));
        var head = one.Cold.Value is { } cold ? Say.Of($"string {one.Number}, at most {LimitWords.Least(cold)}") : Say.Of($"string {one.Number}");
        yield return new Lettering(head, new(left, end.Y + 11), TextMm, IsBold: true);
    }

    private static IEnumerable<Figure> Bank(WiringPlan plan, double x, List<double> rows)
    {
        if (rows.Count == 0)
        {
            return [];
        }

        var middle = (rows[0] + rows[^1]) / 2;
        var name = plan.Spec.Bank is { } bank ? Say.Of($"bank, {QuantityWords.Of(bank.Nominal)}") : Say.Of("bank");
        return
        [
            .. rows.Count > 1 ? new Figure[] { Stroke.Open(LineRole.Mark, new(x, rows[0]), new(x, rows[^1])) } : [],
            .. rows.Where(_ => rows.Count > 1).Select(y => WiringSymbols.Joint(new(x, y))),
            .. WiringSymbols.Battery(new(x, middle)),
            .. Words(new(x + 8, middle - 9), name),
        ];
    }

    private static string KindOf(ControllerKind kind) => kind switch
    {
        ControllerKind.PulseWidth => Say.Of("switch"),
        ControllerKind.StepDown => Say.Of("steps down"),
        _ => Say.Of("steps up"),
    };

    /// <summary>Lines of text one under the other, the middle of the first at a point.</summary>
    private static IEnumerable<Figure> Words(Point at, params IEnumerable<string> lines) =>
        lines.Where(line => line.Length > 0).Select((line, i) => new Lettering(line, new(at.X, at.Y - (i * PitchMm)), TextMm, TextAnchor.Middle));

    private static Sheet OnSheet(ImmutableArray<Figure> figures, SheetContext context)
    {
        var title = Say.Of($"Wiring, {context.JobName}");
        if (figures.IsEmpty)
        {
            figures = [new Lettering(Say.Of("No string leads to a controller."), new(0, 0), TextMm)];
        }

        var bounds = Figures.BoundsOf(figures);
        var moved = Figures.Moved(figures, new(MarginMm - bounds.Left, MarginMm + 6 - bounds.Bottom));
        return new(
            "wiring",
            title,
            bounds.WidthMm + (2 * MarginMm),
            bounds.HeightMm + (2 * MarginMm) + 6,
            [.. moved, new Lettering(Say.Of("One line stands for plus and minus. Not a licensed design."), new(MarginMm, MarginMm - 3), TextMm)]);
    }
}
