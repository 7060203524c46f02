using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>Hours of sun and loads.</summary>
internal static class SunRules
{
    private const int MonthsOfYear = 12;

    public static void Check(JobValues values, RuleLog rules)
    {
        rules.When(Math.Abs(values.Quantity<Angle>($"{SunFields.Table}.latitude")?.Degrees ?? 0) > 90, ProblemCode.Impossible, $"{SunFields.Table}.latitude", Say.Of("lies beyond the poles."));
        CheckMonths(values, rules);
        foreach (var path in values.Tables("electric.load"))
        {
            var (hasEnergy, hasCharge) = (values.IsWritten($"{path}.energy"), values.IsWritten($"{path}.charge"));
            rules.When(!hasEnergy && !hasCharge, ProblemCode.Load, path, Say.Of("does not tell what it uses a day; give energy, as in \"430 Wh\", or charge, as in \"36 Ah\"."));
            rules.When(hasEnergy && hasCharge, ProblemCode.Load, path, Say.Of("has energy and charge; one of them tells all."));
            rules.When(hasCharge && !values.IsWritten("electric.bank"), ProblemCode.Load, $"{path}.charge", Say.Of("is energy only with a voltage: give electric.bank, or energy."));
        }
    }

    private static void CheckMonths(JobValues values, RuleLog rules)
    {
        List<string> months = [.. values.Tables($"{SunFields.Table}.month")];
        rules.When(
            months.Count > 0 && !values.IsWritten($"{SunFields.Table}.hours_are"),
            ProblemCode.SunHours,
            $"{SunFields.Table}.hours_are",
            Say.Of("is missing: \"peak\" are kWh/m2 a day, \"bright\" the hours of sunshine of climate tables; one taken for the other is wrong by almost two."));
        HashSet<int> seen = [];
        foreach (var path in months)
        {
            if (values.Quantity<int>($"{path}.number") is { } number)
            {
                rules.When(number is < 1 or > MonthsOfYear, ProblemCode.SunHours, $"{path}.number", Say.Of("must be from 1, January, to 12, December."));
                rules.When(!seen.Add(number), ProblemCode.SunHours, $"{path}.number", Say.Of($"stands for month {number} twice; give each once."));
            }

            rules.When(values.Quantity<Duration>($"{path}.hours")?.Hours > 24, ProblemCode.SunHours, $"{path}.hours", Say.Of("are more than a day has."));
        }
    }
}
