using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.Checks;

/// <summary>Holds the heat of the cells on a hot day against what they may get.</summary>
internal static class HeatChecks
{
    private static string Source => Say.Of("heat.limit; Sandia Array Performance Model, SAND2004-3535, coefficients as in the pvlib documentation");

    public static IEnumerable<CheckResult> Of(CarrierJob job)
    {
        var heat = job.Conditions.Heat;
        yield return CheckResult.Judged(
            (CheckCodes.HeatFree, Say.Of("cells in full sun, air free to pass behind")),
            Measured.AtMost(CellHeat.Of(PanelBack.Free, heat.Air, heat.Wind), heat.Limit),
            Verdict.Fail,
            Source,
            Say.Of("Too hot even with a free back: this panel is not for such a day, so take it off or shade it."));
        yield return CheckResult.Judged(
            (CheckCodes.HeatBlocked, Say.Of("cells in full sun, back blocked")),
            Measured.AtMost(CellHeat.Of(PanelBack.Blocked, heat.Air, heat.Wind), heat.Limit),
            Verdict.Caution,
            Source,
            Say.Of("On cloth it gets something between this and the free back. Leave the space under the top open, choose light cloth, pack nothing against the back; an air gap of 10 to 20 mm, open at both ends, took about 10 °C off in one report."));
    }
}
