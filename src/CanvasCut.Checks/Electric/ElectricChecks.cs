using System.Collections.Immutable;
using CanvasCut.Electrics;

namespace CanvasCut.Checks;

/// <summary>Every check on a wiring.</summary>
public static class ElectricChecks
{
    /// <summary>The results, in the order of <see cref="CheckCodes.All"/>; none without a wiring.</summary>
    public static ImmutableArray<CheckResult> Of(WiringPlan? plan) => plan is null
        ? []
        :
        [
            .. LabelChecks.Of(plan)
                .Concat(StringChecks.Of(plan))
                .Concat(MismatchChecks.Of(plan))
                .Concat(WireChecks.Of(plan))
                .Concat(DeviceChecks.Of(plan))
                .Concat(WiringAroundChecks.Of(plan))
                .OrderBy(result => CheckCodes.All.IndexOf(result.Code)),
        ];
}
