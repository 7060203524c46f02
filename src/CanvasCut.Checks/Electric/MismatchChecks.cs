using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Electrics;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>What unlike panels cost together, what a fault pushes back, and what a dark cell does.</summary>
internal static class MismatchChecks
{
    /// <summary>IEC 62446-1's band between strings that should be alike.</summary>
    private static readonly Ratio Alike = Ratio.FromPercent(5);

    private static string UnlikeSource => Say.Of("bounds from the labels alone; the 5 %: the band between alike strings of IEC 62446-1, restated");

    private static string ReverseSource => Say.Of("NEC 690.9(A), restated: 1.25 x Isc of every other string");

    private static string DiodeSource => Say.Of("a dark cell without a diode takes the whole string's power backwards and burns; derived from a cell model");

    public static IEnumerable<CheckResult> Of(WiringPlan plan) => plan.Controllers.SelectMany(controller =>
        controller.Strings.Where(one => one.Panels.Length > 1).SelectMany(one => new[] { InSeries(controller, one), Diodes(controller, one) })
            .Concat(controller.Strings.Length > 1 ? [InParallel(controller)] : [])
            .Concat(controller.Strings.Length > 1 ? controller.Strings.SelectMany(one => Reverse(controller, one)) : []));

    private static CheckResult InSeries(WiredController controller, WiredString one)
    {
        var what = (Code: CheckCodes.ElectricUnlike, Subject: Say.Of($"{ElectricWords.On(one, controller)}: currents of its panels"));
        if (one.Panels.Any(panel => panel.Label is null))
        {
            return ElectricWords.NotChecked(what, Missing.Label, UnlikeSource);
        }

        ImmutableArray<PanelLabel> labels = [.. one.Panels.Select(panel => panel.Label!)];
        var differ = Apart([.. labels.Select(label => label.PeakCurrent.Amperes)]);
        var least = UnlikePanels.InSeries(labels);
        return CheckResult.Judged(what, Measured.AtMost(differ, Alike), Verdict.Caution, UnlikeSource, least.Value is { } power
            ? Say.Of($"In series the weakest current counts: at least {QuantityWords.Of(power)} of {QuantityWords.Of(UnlikePanels.Apart(labels))}. Lay them in parallel, or give each a controller.")
            : Say.Of("In series the weakest current counts: lay them in parallel, or give each a controller. How much is left needs panel.label.shade_groups."));
    }

    private static CheckResult InParallel(WiredController controller)
    {
        var what = (Code: CheckCodes.ElectricUnlike, Subject: Say.Of($"voltages of the strings on controller \"{controller.Spec.Name}\""));
        if (controller.Strings.FirstOrDefault(one => one.PeakVoltage.Value is null) is { } unknown)
        {
            return ElectricWords.NotChecked(what, unknown.PeakVoltage.Because, UnlikeSource);
        }

        var differ = Apart([.. controller.Strings.Select(one => one.PeakVoltage.Value!.Value.Volts)]);
        var (least, most) = (ParallelBound(controller), controller.Strings.Sum(one => (double)one.Power.Value!.Value.Watts));
        return CheckResult.Judged(what, Measured.AtMost(differ, Alike), Verdict.Caution, UnlikeSource, Say.Of(
            $"In parallel the lower voltage counts: at least {QuantityWords.Of(least)} of {QuantityWords.Of(Power.FromWatts(most))}, each string behind a diode. Give unlike strings a controller each."));
    }

    /// <summary>The bound for panels in parallel, a string taken as one.</summary>
    private static Power ParallelBound(WiredController controller)
    {
        var each = controller.Strings.Select(one => (Volts: one.PeakVoltage.Value!.Value.Volts, Amperes: one.Panels.Min(panel => panel.Label!.PeakCurrent.Amperes))).ToList();
        return Power.FromWatts(each.Max(at => at.Volts * each.Where(other => other.Volts >= at.Volts).Sum(other => other.Amperes)));
    }

    private static IEnumerable<CheckResult> Reverse(WiredController controller, WiredString one)
    {
        var what = (Code: CheckCodes.ElectricReverse, Subject: Say.Of($"{ElectricWords.On(one, controller)}: what the others push back into it"));
        var reverse = controller.ReverseInto(one);
        if (reverse.Value is not { } amperes)
        {
            yield return ElectricWords.NotChecked(what, reverse.Because, ReverseSource);
        }
        else if (one.SeriesFuse.Value is not { } fuse)
        {
            yield return ElectricWords.NotChecked(what, one.SeriesFuse.Because, ReverseSource, reverse);
        }
        else if (amperes <= fuse)
        {
            yield return new(what.Code, what.Subject, Verdict.Pass, Measured.AtMost(amperes, fuse), ReverseSource, Say.Of("No fuse in each string is needed."));
        }
        else
        {
            yield return StringFuse(controller, one, what, fuse);
        }
    }

    private static CheckResult StringFuse(WiredController controller, WiredString one, (string Code, string Subject) what, ElectricCurrent most)
    {
        var least = ArrayCurrent.ForWires(one.ShortCircuit.Value!.Value);
        var next = Protection.Next(least, controller.Electric.Around.Fuses);
        var wanted = next is { } size && size <= most
            ? Say.Of($"A fuse of {QuantityWords.Of(size)} in each string, for direct current of at least {Volts(one.Cold)}.")
            : Say.Of("No fuse on sale lies between what a string carries and the label's largest series fuse: fewer strings in parallel.");
        return controller.Spec.Devices.StringFuse is not { Rating: { } rating } fuse
            ? new(what.Code, what.Subject, Verdict.Fail, Measured.AtMost(controller.ReverseInto(one).Value!.Value, most), ReverseSource, Say.Of($"Each string needs a fuse of its own. {wanted}"))
            : rating < least || rating > most
                ? new(what.Code, what.Subject, Verdict.Fail, rating < least ? Measured.AtLeast(rating, least) : Measured.AtMost(rating, most), ReverseSource, Say.Of($"The string's fuse does not fit. {wanted}"))
            : DeviceChecks.Voltage(what, fuse, one.Cold, ReverseSource);
    }

    private static CheckResult Diodes(WiredController controller, WiredString one)
    {
        var what = (Code: CheckCodes.ElectricDiodes, Subject: Say.Of($"{ElectricWords.On(one, controller)}: bypass diodes of its panels"));
        return one.Panels.Any(panel => panel.Label is { ShadeGroups: 0 })
            ? new(what.Code, what.Subject, Verdict.Fail, Measured.Nothing, DiodeSource, Say.Of("A panel without a bypass diode burns in series when a cell is dark: lay it in parallel, or on a controller of its own."))
            : one.Panels.Any(panel => panel.Label?.ShadeGroups is null)
                ? new(what.Code, what.Subject, Verdict.NotChecked, Measured.Nothing, DiodeSource, Say.Of("Not checked because the number of bypass diodes is missing: give panel.label.shade_groups, 0 when there is none."))
                : new(what.Code, what.Subject, Verdict.Pass, Measured.Nothing, DiodeSource, string.Empty);
    }

    /// <summary>By how much the smallest lies below the largest.</summary>
    private static Ratio Apart(ImmutableArray<double> each) => Ratio.FromDecimalFractions(1 - (each.Min() / each.Max()));

    private static string Volts(Known<ElectricPotential> cold) => cold.Value is { } known ? LimitWords.Least(known) : Say.Of("the cold voltage");
}
