using CanvasCut.Electrics;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Whether wires carry what guards them, and lose little enough.</summary>
internal static class WireChecks
{
    /// <summary>On the bank's side no controller ends its charge at the right time beyond this.</summary>
    private static readonly Ratio MostAtBank = Ratio.FromPercent(3);

    private static string AmpacitySource => Say.Of("33 CFR 183.425 table 5, hot air and bundles; the wire must carry what its fuse lets through");

    public static IEnumerable<CheckResult> Of(WiringPlan plan) => plan.Controllers.SelectMany(controller => new[]
    {
        Ampacity(controller.PanelRun, ToPanels(controller)),
        Ampacity(controller.BankRun, ToBank(controller)),
        PanelDrop(controller),
        BankDrop(controller),
    });

    private static string ToPanels(WiredController controller) => Say.Of($"wires from the panels to controller \"{controller.Spec.Name}\"");

    private static string ToBank(WiredController controller) => Say.Of($"wires from controller \"{controller.Spec.Name}\" to the bank");

    private static CheckResult Ampacity(PlannedRun run, string subject)
    {
        var what = (Code: CheckCodes.ElectricAmpacity, Subject: subject);
        if (run.Task.Guard.Value is not { } guard)
        {
            return ElectricWords.NotChecked(what, run.Task.Guard.Because, AmpacitySource, run.Ampacity);
        }

        if (run.Ampacity.Value is not { } carries)
        {
            return ElectricWords.NotChecked(what, run.Ampacity.Because, AmpacitySource);
        }

        var measured = Measured.AtLeast(carries, guard);
        return run.IsTooThin
            ? new(what.Code, subject, Verdict.Fail, measured, AmpacitySource, Say.Of($"Thinner than any wire may be on a boat (33 CFR 183.425, ISO 10133): take {SizeOf(run.Choice?.Chosen)}."))
            : measured.Holds ? new(what.Code, subject, Verdict.Pass, measured, AmpacitySource, ChosenText(run))
            : new(what.Code, subject, Verdict.Fail, measured, AmpacitySource, Say.Of($"The wire burns before its fuse opens. Take {SizeOf(run.Choice?.Chosen)}, never a larger fuse."));
    }

    private static CheckResult PanelDrop(WiredController controller)
    {
        var (run, source) = (controller.PanelRun, Say.Of("electric.wires.panel_drop; resistance by IEC 60228 or ABYC E-11, restated, the copper warm"));
        var what = (Code: CheckCodes.ElectricDrop, Subject: ToPanels(controller));
        return Missing(run) is { } because
            ? ElectricWords.NotChecked(what, because, source, run.Drop)
            : CheckResult.Judged(what, Measured.AtMost(run.Drop.Value!.Value, run.Task.Allowed.Value!.Value), Verdict.Caution, source, Say.Of($"So much of what the panels give is lost: take {SizeOf(run.Choice?.Chosen)}, or shorten the way."));
    }

    private static CheckResult BankDrop(WiredController controller)
    {
        var (run, source) = (controller.BankRun, Say.Of("electric.wires.bank_drop; at most 3 % without sense wires, the class of ABYC E-11 and ISO 13297, restated"));
        var what = (Code: CheckCodes.ElectricDrop, Subject: ToBank(controller));
        if (Missing(run) is { } because)
        {
            return ElectricWords.NotChecked(what, because, source, run.Drop);
        }

        var isFar = run.Drop.Value!.Value > controller.Absorption.Value!.Value * MostAtBank.DecimalFractions && !controller.Spec.Output.HasSense;
        return CheckResult.Judged(what, Measured.AtMost(run.Drop.Value!.Value, run.Task.Allowed.Value!.Value), isFar ? Verdict.Fail : Verdict.Caution, source, Say.Of(
            $"The controller takes this for the bank's own voltage and stops too early, so that the bank is never full: take {SizeOf(run.Choice?.Chosen)}, move the controller to the bank, or lay sense wires."));
    }

    private static Missing? Missing(PlannedRun run) => run.Drop.Value is null ? run.Drop.Because : run.Task.Allowed.Value is null ? run.Task.Allowed.Because : null;

    /// <summary>The size that was chosen, and the next for a longer way or more panels later.</summary>
    private static string ChosenText(PlannedRun run) => run.Wire is not { } wire ? string.Empty
        : wire.NextThicker is { } next ? Say.Of($"Reckoned with {SizeOf(wire)}; the next thicker is {SizeOf(next)}.")
        : Say.Of($"Reckoned with {SizeOf(wire)}, the thickest of its family.");

    private static string SizeOf(WireSize? wire) => wire is null ? Say.Of("the next thicker size") : WireNames.Of(wire);
}
