using CanvasCut.Design;
using CanvasCut.Electrics;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Poles, connectors, and the compass.</summary>
internal static class WiringAroundChecks
{
    private static string PoleSource => Say.Of("UK small craft code 8.2, restated: nothing earthed, both poles broken; one earthed, the other broken. That controllers join plus or minus inside: makers, second-hand");

    private static string ConnectorSource => Say.Of("IEC TR 63225 and AS/NZS 5033, restated: both halves of one maker's family");

    public static IEnumerable<CheckResult> Of(WiringPlan plan) =>
        [.. plan.Controllers.Select(controller => Polarity(plan, controller)), Connectors(plan.Spec), .. plan.Controllers.Select(Compass)];

    private static CheckResult Polarity(WiringPlan plan, WiredController controller)
    {
        var what = (Code: CheckCodes.ElectricPolarity, Subject: Say.Of($"poles at controller \"{controller.Spec.Name}\""));
        CheckResult Found(Verdict verdict, string advice) => new(what.Code, what.Subject, verdict, Measured.Nothing, PoleSource, advice);
        if (controller.Spec.Joined is not { } joined)
        {
            return Found(Verdict.NotChecked, Say.Of("Not checked because the pole that the controller joins inside is missing: read its paper and give joins."));
        }

        if (plan.Spec.Bank?.Earthed is not { } earthed)
        {
            return Found(Verdict.NotChecked, Say.Of("Not checked because the bank's earthed pole is missing: give electric.bank.earthed."));
        }

        return (joined, earthed) is (Pole.Plus, Pole.Minus) or (Pole.Minus, Pole.Plus)
            ? Found(Verdict.Caution, Say.Of("The panels' other pole is then neither earthed nor safe to join to anything: it goes to the controller's panel terminal only, never to a bus, tube or frame."))
            : plan.Controllers.Any(other => other.Spec.Joined is { } pole && pole != joined && pole != Pole.None && joined != Pole.None)
                ? Found(Verdict.Fail, Say.Of("Controllers on one bank join different poles: their panels' wires must never meet, and their boxes must not touch one metal plate. Take controllers that join the same pole."))
            : controller.Spec.Devices.Breaker?.BreaksBoth is not { } both
                ? Found(Verdict.NotChecked, Say.Of("Not checked because it is not known which poles the breaker breaks: give poles in breaker."))
            : !both && earthed == Pole.None
                ? Found(Verdict.Fail, Say.Of("Nothing is earthed, so the breaker must break both poles."))
                : Found(Verdict.Pass, string.Empty);
    }

    private static CheckResult Connectors(ElectricSpec spec)
    {
        var what = (Code: CheckCodes.ElectricConnectors, Subject: Say.Of("connectors that are mated"));
        return spec.Around.Connectors switch
        {
            ConnectorState.OneFamily => new(what.Code, what.Subject, Verdict.Pass, Measured.Nothing, ConnectorSource, string.Empty),
            ConnectorState.Mixed => new(what.Code, what.Subject, Verdict.Fail, Measured.Nothing, ConnectorSource, Say.Of("Halves of different makers seem to fit, become hot and burn: cut one off and put on its mate.")),
            _ => new(what.Code, what.Subject, Verdict.NotChecked, Measured.Nothing, ConnectorSource, Say.Of("Not checked because it is not known whether both halves are of one maker: give electric.connectors.")),
        };
    }

    private static CheckResult Compass(WiredController controller)
    {
        var what = (Code: CheckCodes.ElectricCompass, Subject: Say.Of($"wires of controller \"{controller.Spec.Name}\" and a compass"));
        var source = Say.Of("field of a straight wire, physics; a degree of a compass where the earth has 20 microtesla across: from memory");
        if (controller.Electric.Around.Compass is not { } distance)
        {
            return new(what.Code, what.Subject, Verdict.NotChecked, Measured.Nothing, source, Say.Of("Not checked because the distance is missing: give electric.compass, from the nearest wire to a compass."));
        }

        if (LargestCurrent(controller) is not { } current)
        {
            return ElectricWords.NotChecked(what, controller.PeakCurrent.Because, source);
        }

        var turned = CompassField.Deviation(current, distance, controller.Electric.Around.IsTwisted);
        return CheckResult.Judged(what, Measured.AtMost(turned, Angle.FromDegrees(1)), Verdict.Caution, source, Say.Of("Twist plus and minus about each other near the compass, and keep them half a metre away; then swing the compass with the sun on the panels and without."));
    }

    private static ElectricCurrent? LargestCurrent(WiredController controller) =>
        (controller.PeakCurrent.Value, controller.Spec.Output.Rated) switch
        {
            ({ } panels, { } bank) => panels > bank ? panels : bank,
            ({ } panels, null) => panels,
            _ => null,
        };
}
