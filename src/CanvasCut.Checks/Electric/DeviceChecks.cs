using CanvasCut.Design;
using CanvasCut.Electrics;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Whether fuses and breakers carry what they must, break what they may have to, and sit where they guard.</summary>
internal static class DeviceChecks
{
    /// <summary>33 CFR 183.455: from the source, and in a sheath or conduit.</summary>
    private static readonly Length Nearest = Length.FromMillimeters(178);
    private static readonly Length Sheathed = Length.FromMillimeters(1016);

    /// <summary>Where a lithium bank's own figure is that high, 20 kA devices are asked for; seen second-hand.</summary>
    private static readonly ElectricCurrent ManyAmperes = ElectricCurrent.FromKiloamperes(10);

    private static string PanelSource => Say.Of("NEC 690.8(B) and 690.9, restated: 1.5625 x Isc of all strings");

    private static string BankSource => Say.Of("1.25 x the rated output: common practice, no source; 33 CFR 183.455 for the place");

    public static IEnumerable<CheckResult> Of(WiringPlan plan) => plan.Controllers.SelectMany(controller => new[]
    {
        Breaker(controller),
        BreakerVoltage(controller),
        BankFuse(controller),
        BankFuseVoltage(controller),
        Interrupt(controller),
        FusePlace(controller),
    });

    /// <summary>Whether a device breaks the voltage it may meet.</summary>
    internal static CheckResult Voltage((string Code, string Subject) what, DeviceSpec device, Known<ElectricPotential> volts, string source) =>
        volts.Value is not { } meets ? ElectricWords.NotChecked(what, volts.Because, source)
        : device.Voltage is not { } breaks ? ElectricWords.NotChecked(what, Missing.DeviceVoltage, source, volts)
        : CheckResult.Judged(what, Measured.AtLeast(breaks, meets), Verdict.Fail, source, Say.Of("An arc of direct current does not go out by itself: take one that is marked for direct current of that voltage. Vehicle blade fuses are for 32 or 58 V."));

    private static CheckResult Breaker(WiredController controller)
    {
        var what = (Code: CheckCodes.ElectricBreaker, Subject: Say.Of($"breaker between panels and controller \"{controller.Spec.Name}\""));
        return Rating(controller, what, (controller.Spec.Devices.Breaker, controller.PanelNeed, controller.BreakerRating), PanelSource);
    }

    private static CheckResult BankFuse(WiredController controller)
    {
        var what = (Code: CheckCodes.ElectricBankFuse, Subject: Say.Of($"fuse between controller \"{controller.Spec.Name}\" and the bank"));
        return Rating(controller, what, (controller.Spec.Devices.BankFuse, controller.BankNeed, controller.BankFuseRating), BankSource);
    }

    private static CheckResult Rating(
        WiredController controller, (string Code, string Subject) what, (DeviceSpec? Device, Known<ElectricCurrent> Need, Known<ElectricCurrent> Wanted) place, string source)
    {
        if (place.Need.Value is not { } least)
        {
            return ElectricWords.NotChecked(what, place.Need.Because, source);
        }

        if (place.Device?.Rating is { } rating)
        {
            return CheckResult.Judged(what, Measured.AtLeast(rating, least), Verdict.Fail, source, Say.Of("It opens in every bright noon: take the next larger, as long as the wire carries it."));
        }

        var table = what.Code == CheckCodes.ElectricBreaker ? "breaker" : "bank_fuse";
        return place.Wanted.Value is { } size
            ? new(what.Code, what.Subject, Verdict.NotChecked, Measured.Found(least), source, Say.Of($"Not checked because none is given: take one of {QuantityWords.Of(size)}, for direct current of at least {Volts(controller, what.Code)}, and tell of it in {table}."))
            : ElectricWords.NotChecked(what, place.Wanted.Because, source, place.Need);
    }

    private static CheckResult BreakerVoltage(WiredController controller)
    {
        var what = (Code: CheckCodes.ElectricBreakerVoltage, Subject: Say.Of($"breaker between panels and controller \"{controller.Spec.Name}\": voltage"));
        var source = Say.Of("it must break direct current of the cold open voltage");
        return controller.Spec.Devices.Breaker is not { } breaker ? ElectricWords.NotChecked(what, Missing.DeviceVoltage, source, controller.Cold)
            : Voltage(what, breaker, controller.Cold, source) is { Verdict: Verdict.Pass } pass && breaker.IsPolarised is not false
                ? pass with { Verdict = Verdict.Caution, Advice = Say.Of("A breaker that breaks one way only burns when current flows back from the bank: take one that is not polarised, or wire it as it is marked, and say so with one_way = false.") }
                : Voltage(what, breaker, controller.Cold, source);
    }

    private static CheckResult BankFuseVoltage(WiredController controller)
    {
        var what = (Code: CheckCodes.ElectricBankFuseVoltage, Subject: Say.Of($"fuse between controller \"{controller.Spec.Name}\" and the bank: voltage"));
        var source = Say.Of("it must break direct current of the absorption voltage");
        return controller.Spec.Devices.BankFuse is not { } fuse ? ElectricWords.NotChecked(what, Missing.DeviceVoltage, source, controller.Absorption) : Voltage(what, fuse, controller.Absorption, source);
    }

    private static CheckResult Interrupt(WiredController controller)
    {
        var what = (Code: CheckCodes.ElectricInterrupt, Subject: Say.Of($"fuse between controller \"{controller.Spec.Name}\" and the bank: what it can interrupt"));
        var source = Say.Of("ABYC E-11 table V.A, restated: by the cold-cranking amperes of a lead bank; a lithium bank's own figure");
        return controller.Electric.Bank is not { } bank ? ElectricWords.NotChecked(what, Missing.Bank, source)
            : NeededAt(bank) is not { } needed ? ElectricWords.NotChecked(what, Missing.BankFault, source)
            : controller.Spec.Devices.BankFuse?.Interrupts is not { } interrupts ? ElectricWords.NotChecked(what, Missing.DeviceInterrupts, source, Known.Of(needed))
            : CheckResult.Judged(what, Measured.AtLeast(interrupts, needed), Verdict.Fail, source, Say.Of("A shorted bank welds or bursts it: take one that can interrupt so much, such as class T, by its maker's sheet."));
    }

    /// <summary>The maker's figure where it is known; else the table's by the cold-cranking amperes, which is for lead only.</summary>
    private static ElectricCurrent? NeededAt(BankSpec bank) => bank.Fault.ShortCircuit is { } known
        ? known > ManyAmperes && known < ManyAmperes * 2 ? ManyAmperes * 2 : known
        : bank.IsLead && bank.Fault.Cranking is { } cranking ? Protection.Interrupts(cranking).Main : null;

    private static CheckResult FusePlace(WiredController controller)
    {
        var what = (Code: CheckCodes.ElectricFusePlace, Subject: Say.Of($"fuse between controller \"{controller.Spec.Name}\" and the bank: way from the bank"));
        var source = Say.Of("33 CFR 183.455: 178 mm, in a sheath 1016 mm");
        return controller.Spec.Devices.BankFuse?.FromBank is { } way
            ? CheckResult.Judged(what, Measured.AtMost(way, controller.Electric.Wires.IsSheathed ? Sheathed : Nearest), Verdict.Fail, source, Say.Of("Nothing guards the wire between bank and fuse: set it at the bank."))
            : ElectricWords.NotChecked(what, Missing.DevicePlace, source);
    }

    private static string Volts(WiredController controller, string code) =>
        (code == CheckCodes.ElectricBreaker ? controller.Cold : controller.Absorption).Value is { } known ? LimitWords.Least(known) : Say.Of("the highest voltage it meets");
}
