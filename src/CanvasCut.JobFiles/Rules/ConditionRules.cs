using CanvasCut.Design;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>The limits of a bonding day: one above the other.</summary>
internal static class ConditionRules
{
    public static void Check(JobValues values, RuleLog rules)
    {
        var (hard, least, most) = (Of(values, "hard_stop"), Of(values, "least_surface"), Of(values, "most_surface"));
        rules.When(hard > least, ProblemCode.BondingLimits, "bonding.hard_stop", Say.Of($"is above bonding.least_surface, {In(least)}; the stop is the colder of the two."));
        rules.When(least >= most, ProblemCode.BondingLimits, "bonding.least_surface", Say.Of($"is not below bonding.most_surface, {In(most)}; no surface would do."));
    }

    private static Temperature? Of(JobValues values, string name) => values.Quantity<Temperature>($"bonding.{name}");

    private static string In(Temperature? temperature) => temperature is { } known ? QuantityWords.Of(known) : string.Empty;
}
