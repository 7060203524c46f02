using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.JobFiles;

/// <summary>What must hold between fields.</summary>
/// <remarks>A comparison with a value that is missing or wrong is never true, so nothing is reported twice.</remarks>
internal static class JobRules
{
    private const int Format = 1;

    public static void Check(JobValues values, ProblemLog log)
    {
        var rules = new RuleLog(values, log);
        rules.Unless(values.Quantity<int>("format") is null or Format, ProblemCode.Format, "format", Say.Of("This program reads format 1; write format = 1."));
        CheckTop(values, rules);
        PanelRules.Check(values, rules);
        CarrierRules.Check(values, rules);
        FasteningRules.Check(values, rules);
        MountRules.Check(values, rules);
        WorkshopRules.Check(values, rules);
        ConditionRules.Check(values, rules);
        WorkRules.Check(values, rules);
        LabelRules.Check(values, rules);
        ElectricRules.Check(values, rules);
        SunRules.Check(values, rules);
    }

    /// <summary>What must hold between the fields of the top, whatever lies on it.</summary>
    public static void CheckTop(JobValues values, RuleLog rules)
    {
        var outline = OutlineRules.Check(values, rules);
        TopRules.Check(values, rules, outline);
        BowRules.Check(values, rules, outline);
        TubeRules.Check(values, rules, outline);
        FixtureRules.Check(values, rules, outline);
        BoomRules.Check(values, rules, outline);
    }
}
