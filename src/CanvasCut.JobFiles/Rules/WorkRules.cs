using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>The plan of the work.</summary>
internal static class WorkRules
{
    private static readonly Duration Least = Duration.FromMinutes(15);
    private static readonly Duration Day = Duration.FromHours(24);

    public static void Check(JobValues values, RuleLog rules)
    {
        const string Field = "work.hours_per_day";
        var hours = values.Quantity<Duration>(Field);
        rules.When(hours > Day, ProblemCode.Impossible, Field, Say.Of("is more than a day has, 24 h; write how long you work in one day, such as \"4 h\"."));
        rules.When(hours < Least, ProblemCode.Impossible, Field, Say.Of("is too short to do anything in; at least 15 min a day are needed."));
    }
}
