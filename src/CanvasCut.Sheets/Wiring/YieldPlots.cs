using System.Collections.Immutable;
using System.Globalization;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Electrics;
using CanvasCut.Geometry;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Sheets;

/// <summary>Energy by month against what is used, and a string's voltages by temperature against the controller's window.</summary>
public static class YieldPlots
{
    private const double WidthMm = 170;
    private const double HeightMm = 80;
    private const double MarginMm = 16;
    private const double TextMm = 2.2;

    /// <summary>Energy a day by month: likely as a bar, low to high as a stroke over it, what is used as a line across.</summary>
    public static Sheet ByMonth(YieldYear year, SheetContext context)
    {
        ArgumentNullException.ThrowIfNull(year);
        ArgumentNullException.ThrowIfNull(context);
        var most = Math.Max(year.Months.Max(month => month.High.WattHours), year.Load?.WattHours ?? 0);
        var frame = new PlotFrame(WidthMm, HeightMm, (0, year.Months.Length), (0, most * 1.08));
        var figures = ImmutableArray.CreateBuilder<Figure>();
        figures.AddRange(frame.Axes(Say.Of("Wh a day"), unitX: string.Empty, marksX: []));
        foreach (var (i, month) in year.Months.Index())
        {
            figures.AddRange(Month(frame, i, month));
        }

        if (year.Load is { } load)
        {
            figures.Add(Stroke.Open(LineRole.Stitch, frame.At(0, load.WattHours), frame.At(year.Months.Length, load.WattHours)));
            figures.Add(new Lettering(Say.Of($"dashed: used, {load.WattHours:0} Wh"), new(WidthMm, HeightMm + 2), TextMm, TextAnchor.Right));
        }

        return OnSheet("yield", Say.Of($"Energy by month, {context.JobName}"), Say.Of("Bar: likely. Stroke: from low, or from nothing, to the clear-sky bound. Estimates."), figures.ToImmutable());
    }

    /// <summary>Open voltage and voltage of most power of one string by the temperature of its cells, against the controller.</summary>
    public static Sheet? ByTemperature(WiringPlan plan, SheetContext context)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(context);
        var controller = plan.Controllers.FirstOrDefault(each => each is { Cold.Value: not null, HotPeak.Value: not null });
        if (controller is null || plan.Spec.ColdestAir is not { } coldest || controller.Strings.Any(one => one.Panels.Any(panel => panel.Label?.OpenVoltagePerKelvin is null)))
        {
            return null;
        }

        var one = controller.Strings.MaxBy(each => each.Cold.Value!.Value.Volts)!;
        var (from, to) = (Math.Floor(coldest.DegreesCelsius / 10) * 10, Math.Ceiling(plan.Heat.HotCells.DegreesCelsius / 10) * 10);
        var limit = controller.Spec.Input.LargestVoltage?.Volts;
        var most = Math.Max(controller.Cold.Value!.Value.Volts, limit is { } volts && volts < controller.Cold.Value.Value.Volts * 2 ? volts : 0) * 1.1;
        var frame = new PlotFrame(WidthMm, HeightMm, (from, to), (0, most));
        var figures = ImmutableArray.CreateBuilder<Figure>();
        figures.AddRange(frame.Axes(Say.Of("V"), Say.Of("cells, C"), [.. Enumerable.Range(0, (int)((to - from) / 10) + 1).Select(i => from + (10 * i))]));
        figures.AddRange(Line(frame, (from, Sum(one, label => StringVoltage.Cold(label, 1, Celsius(Math.Min(from, 25))))), (to, Sum(one, label => AtHeat(label, to))), Say.Of("open")));
        figures.AddRange(Line(frame, (from, Sum(one, label => StringVoltage.Peak(label, 1, Celsius(from)))), (to, Sum(one, label => StringVoltage.Peak(label, 1, Celsius(to)))), Say.Of("most power")));
        foreach (var (value, text) in Limits(controller, limit).Where(each => each.Volts <= most))
        {
            figures.Add(Stroke.Open(LineRole.Stitch, frame.At(from, value), frame.At(to, value)));
            figures.Add(new Lettering(text, frame.At(to, value) + new Step(-1, 1.2), TextMm, TextAnchor.Right));
        }

        return OnSheet("voltage", Say.Of($"Voltage by temperature, {context.JobName}"), Say.Of($"String {one.Number} on controller \"{controller.Spec.Name}\"; dashed what the controller stands and needs."), figures.ToImmutable());
    }

    private static IEnumerable<(double Volts, string Text)> Limits(WiredController controller, double? limit)
    {
        if (limit is { } destroyed)
        {
            yield return (destroyed, Say.Of($"above {destroyed:0.#} V it is destroyed"));
        }

        if (controller.Absorption.Value is { } full && controller.Spec.Kind != ControllerKind.StepUp)
        {
            var need = full.Volts + controller.Drop.Volts + (controller.Spec.Kind == ControllerKind.PulseWidth ? 0.5 : 2);
            yield return (need, Say.Of($"below {need:0.0} V it does not charge"));
        }
    }

    private static IEnumerable<Figure> Month(PlotFrame frame, int index, YieldMonth month)
    {
        if (month.Likely is { } likely)
        {
            var bar = Box.Holding([frame.At(index + 0.2, 0), frame.At(index + 0.8, likely.WattHours)]);
            yield return new Tint(Outline.Of(bar), 0.25);
            yield return Stroke.Closed(LineRole.Mark, Outline.Of(bar));
        }

        var (low, high) = (month.Low?.WattHours ?? 0, month.High.WattHours);
        yield return Stroke.Open(LineRole.Mark, frame.At(index + 0.5, low), frame.At(index + 0.5, high));
        yield return Stroke.Open(LineRole.Mark, frame.At(index + 0.4, high), frame.At(index + 0.6, high));
        yield return Stroke.Open(LineRole.Mark, frame.At(index + 0.4, low), frame.At(index + 0.6, low));
        yield return new Lettering(TextWidth.Shortened(YieldText.NameOf(month.Month), frame.WidthMm / 12, TextMm, isBold: false), frame.At(index + 0.5, 0) + new Step(0, -4), TextMm, TextAnchor.Middle);
    }

    private static IEnumerable<Figure> Line(PlotFrame frame, (double X, double Y) start, (double X, double Y) end, string text)
    {
        yield return Stroke.Open(LineRole.Cut, frame.At(start.X, start.Y), frame.At(end.X, end.Y));
        yield return new Lettering(text, frame.At(start.X, start.Y) + new Step(3, 2.5), TextMm);
    }

    private static double Sum(WiredString one, Func<PanelLabel, Known<ElectricPotential>> of) => one.Panels.Sum(panel => of(panel.Label!).Value?.Volts ?? 0);

    /// <summary>The open voltage above the heat of the test too, which no limit is held against.</summary>
    private static Known<ElectricPotential> AtHeat(PanelLabel label, double celsius) =>
        Known.Of(label.OpenVoltage * (1 + (label.OpenVoltagePerKelvin!.Value.DecimalFractions * (celsius - 25))));

    private static Temperature Celsius(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static Sheet OnSheet(string name, string title, string note, ImmutableArray<Figure> figures) => new(
        name,
        title,
        WidthMm + (2 * MarginMm),
        HeightMm + (2 * MarginMm) + 4,
        [.. Figures.Moved(figures, new(MarginMm + 4, MarginMm)), new Lettering(title, new(MarginMm, HeightMm + MarginMm + 10), 3, IsBold: true), new Lettering(note, new(MarginMm, 3), TextMm)]);
}

/// <summary>A frame with two scales.</summary>
/// <param name="WidthMm">Its width.</param>
/// <param name="HeightMm">Its height.</param>
/// <param name="X">What its left and right edge stand for.</param>
/// <param name="Y">What its bottom and top stand for.</param>
internal sealed record PlotFrame(double WidthMm, double HeightMm, (double From, double To) X, (double From, double To) Y)
{
    private const double TextMm = 2.2;

    /// <summary>Where a pair of values lies.</summary>
    public Point At(double x, double y) => new((x - X.From) / (X.To - X.From) * WidthMm, (y - Y.From) / (Y.To - Y.From) * HeightMm);

    /// <summary>The frame, four or more round marks up its left side, and those wanted along its foot.</summary>
    public IEnumerable<Figure> Axes(string unitY, string unitX, ImmutableArray<double> marksX)
    {
        yield return Stroke.Closed(LineRole.Note, Outline.Of(new Box(0, 0, WidthMm, HeightMm)));
        for (var y = 0.0; y <= Y.To; y += RoundStep())
        {
            yield return Stroke.Open(LineRole.Note, At(X.From, y), At(X.From, y) + new Step(1.5, 0));
            yield return new Lettering(y.ToString("0.##", CultureInfo.InvariantCulture), At(X.From, y) + new Step(-1, -0.8), TextMm, TextAnchor.Right);
        }

        yield return new Lettering(unitY, new(-12, HeightMm + 2), TextMm);
        foreach (var x in marksX)
        {
            yield return Stroke.Open(LineRole.Note, At(x, Y.From), At(x, Y.From) + new Step(0, 1.5));
            yield return new Lettering(x.ToString("0", CultureInfo.InvariantCulture), At(x, Y.From) + new Step(0, -4), TextMm, TextAnchor.Middle);
        }

        if (unitX.Length > 0)
        {
            yield return new Lettering(unitX, new(WidthMm, -8), TextMm, TextAnchor.Right);
        }
    }

    /// <summary>1, 2 or 5 times a power of ten, so that there are four marks and more.</summary>
    private double RoundStep()
    {
        var rough = (Y.To - Y.From) / 4;
        var power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        return rough / power >= 5 ? 5 * power : rough / power >= 2 ? 2 * power : power;
    }
}
