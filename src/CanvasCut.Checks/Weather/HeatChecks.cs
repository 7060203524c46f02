using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.Checks;

/// <summary>Holds the heat of the cells on a hot day against what they may get.</summary>
internal static class HeatChecks
{
    private static string Source => Say.Of("heat.limit; Sandia Array Performance Model, SAND2004-3535, coefficients as in the pvlib documentation");

    public static IEnumerable<CheckResult> Of(CarrierJob job) =>
    [
        OfBack(job, (CheckCodes.HeatFree, Say.Of("cells in full sun, air free to pass behind")), PanelBack.Free, Verdict.Fail, Say.Of("Too hot even with a free back: this panel is not for such a day, so take it off or shade it.")),
        OfBack(job, (CheckCodes.HeatBlocked, Say.Of("cells in full sun, back blocked")), PanelBack.Blocked, Verdict.Caution, Say.Of("On cloth it gets something between this and the free back. Leave the space under the top open, choose light cloth, pack nothing against the back; an air gap of 10 to 20 mm, open at both ends, took about 10 °C off in one report.")),
    ];

    private static CheckResult OfBack(CarrierJob job, (string Code, string Subject) what, PanelBack back, Verdict otherwise, string advice)
    {
        var heat = job.Conditions.Heat;
        var found = CellHeat.Of(back, heat.Air, heat.Wind);
        return heat.Limit is { } limit
            ? CheckResult.Judged(what, Measured.AtMost(found, limit), otherwise, Source, advice)
            : new(what.Code, what.Subject, Verdict.NotChecked, Measured.Nothing, Source, Say.Of($"They get {QuantityWords.Of(found)}. Not held against anything, because heat.limit is not given: what the panel's maker allows, often 85 °C (one manual)."));
    }
}
