using CanvasCut.Design;
using CanvasCut.Language;
using static CanvasCut.JobFiles.RuleLog;

namespace CanvasCut.JobFiles;

/// <summary>The boom: it reaches aft from its pivot and swings over the top.</summary>
internal static class BoomRules
{
    private const double MostSwing = 90;

    public static void Check(JobValues values, RuleLog rules, TopOutline? outline)
    {
        var (pivot, end) = (values.Length("top.boom.pivot"), values.Length("top.boom.end"));
        var isReversed = end <= pivot;
        rules.When(isReversed, ProblemCode.BoomPlace, "top.boom.end", Say.Of($"is not aft of the pivot, {In(pivot)}; measure both along the centreline from the top's forward edge, negative forward of it."));
        rules.When(
            values.Quantity<UnitsNet.Angle>("top.boom.swing")?.Degrees > MostSwing,
            ProblemCode.BoomPlace,
            "top.boom.swing",
            Say.Of("is more than a right angle; give how far it swings from amidships to one side."));
        rules.When(
            !isReversed && outline is { Shape.Bounds: var whole } && end?.Millimeters < -whole.Top,
            ProblemCode.BoomPlace,
            "top.boom.end",
            Say.Of("lies forward of the top, so that the boom never comes over it; take [top.boom] out, or measure from the top's forward edge."));
    }
}
