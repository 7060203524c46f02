using CanvasCut.Design;
using CanvasCut.Electrics;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Voltages and currents of strings against their controller.</summary>
internal static class StringChecks
{
    /// <summary>Wet skin, as quoted by the trade; 50 V is where law and ISO 13297 change their rules.</summary>
    private static readonly ElectricPotential WetHands = ElectricPotential.FromVolts(35);
    private static readonly ElectricPotential RulesChange = ElectricPotential.FromVolts(50);

    private static string ColdSource => Say.Of("NEC 690.7(A), restated; the nine tenths: common practice, no source");

    private static string CurrentSource => Say.Of("the controller's sheet; 1.25 x for the edges of clouds, NEC 690.8(A), restated");

    public static IEnumerable<CheckResult> Of(WiringPlan plan) => plan.Controllers.SelectMany(controller =>
        controller.Strings.SelectMany(one => OfString(controller, one)).Append(Current(controller)));

    private static IEnumerable<CheckResult> OfString(WiredController controller, WiredString one)
    {
        yield return Cold(controller, one);
        yield return SystemVoltage(controller, one);
        yield return Touch(controller, one);
        yield return Hot(controller, one);
    }

    private static CheckResult Cold(WiredController controller, WiredString one)
    {
        var what = (Code: CheckCodes.ElectricCold, Subject: Say.Of($"{ElectricWords.On(one, controller)}: open voltage in the coldest air"));
        return Judged(what, ControllerWindow.Cold(one.Cold, ChargeController.Of(controller.Spec)), one.Cold, ColdSource, finding => finding == Finding.Fails
            ? Say.Of("It destroys the controller on the first cold clear morning. Fewer panels in series, or a controller for a higher voltage.")
            : Say.Of("Within a tenth of what destroys the controller: be sure of the coldest air, lay-up included."));
    }

    private static CheckResult SystemVoltage(WiredController controller, WiredString one)
    {
        var what = (Code: CheckCodes.ElectricSystemVoltage, Subject: Say.Of($"{ElectricWords.On(one, controller)}: open voltage against what its panels are made for"));
        return one.SystemVoltage.Value is not { } most
            ? ElectricWords.NotChecked(what, one.SystemVoltage.Because, ColdSource, one.Cold)
            : one.Cold.Value is not { } cold ? ElectricWords.NotChecked(what, one.Cold.Because, ColdSource)
            : CheckResult.Judged(what, Measured.AtMost(cold, most), Verdict.Fail, ColdSource, Say.Of("Above the largest system voltage of the label: fewer panels in series."));
    }

    private static CheckResult Touch(WiredController controller, WiredString one)
    {
        var what = (Code: CheckCodes.ElectricTouch, Subject: Say.Of($"{ElectricWords.On(one, controller)}: open voltage and wet hands"));
        var source = Say.Of("35 V for wet skin as the trade quotes it; from 50 V law and ISO 13297 ask for more");
        return one.Cold.Value is not { } cold
            ? ElectricWords.NotChecked(what, one.Cold.Because, source)
            : CheckResult.Judged(what, Measured.AtMost(cold, WetHands), Verdict.Caution, source, cold > RulesChange
                ? Say.Of("DANGEROUS TO TOUCH, wet or dry: cover the panels before you open anything, keep every joint in a box, and leave the work to an electrician.")
                : Say.Of("Dangerous to wet hands: cover the panels before you open anything, and keep every joint in a box."));
    }

    private static CheckResult Hot(WiredController controller, WiredString one)
    {
        var isStepUp = controller.Spec.Kind == ControllerKind.StepUp;
        var what = (Code: CheckCodes.ElectricHot, Subject: isStepUp
            ? Say.Of($"{ElectricWords.On(one, controller)}: open voltage in the cold and the bank's lowest")
            : Say.Of($"{ElectricWords.On(one, controller)}: voltage at most power when hot"));
        var source = isStepUp
            ? Say.Of("a controller that steps up cannot hold a higher voltage back; common practice, no source")
            : Say.Of("absorption, what the wires lose, and 0.5 V of a switch or 2 V of a tracker: common practice, no source");
        if (controller.Electric.Bank is not { } bank)
        {
            return ElectricWords.NotChecked(what, Missing.Bank, source, one.HotPeak);
        }

        var judged = ControllerWindow.Need(ChargeController.Of(controller.Spec), bank.Voltages, (one.Cold, one.HotPeak), controller.Drop);
        return Judged(what, judged, isStepUp ? one.Cold : one.HotPeak, source, _ => isStepUp
            ? Say.Of("The bank would be charged past all control: fewer panels in series, or a controller that steps down.")
            : Say.Of("It stops charging in the hottest sun, without a sign: one panel more in series, or a controller that steps up."), isAtLeast: !isStepUp);
    }

    private static CheckResult Current(WiredController controller)
    {
        var what = (Code: CheckCodes.ElectricCurrent, Subject: Say.Of($"current of all strings into controller \"{controller.Spec.Name}\""));
        return controller.ShortCircuit.Value is not { } sum
            ? ElectricWords.NotChecked(what, controller.ShortCircuit.Because, CurrentSource)
            : Judged(what, ControllerWindow.Current(sum, ChargeController.Of(controller.Spec)), controller.ShortCircuit, CurrentSource, finding => finding == Finding.Fails
                ? Say.Of("More than the controller takes: fewer strings, or a larger controller.")
                : Say.Of("The edges of clouds go beyond it for seconds: ask the maker whether the controller limits by itself."));
    }

    private static CheckResult Judged<T>((string Code, string Subject) what, Judgement judged, Known<T> found, string source, Func<Finding, string> advice, bool isAtLeast = false)
        where T : struct, IQuantity
    {
        if (judged.Finding == Finding.NotChecked)
        {
            return ElectricWords.NotChecked(what, judged.Because, source, found);
        }

        var (value, limit) = ((T)judged.Value!, (T)judged.Limit!);
        var measured = isAtLeast ? Measured.AtLeast(value, limit) : Measured.AtMost(value, limit);
        return new(what.Code, what.Subject, ElectricWords.VerdictOf(judged.Finding), measured, source, judged.Finding == Finding.Holds ? string.Empty : advice(judged.Finding));
    }
}
