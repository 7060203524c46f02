using CanvasCut.Design;
using CanvasCut.Language;
using UnitsNet;
using static CanvasCut.JobFiles.RuleLog;

namespace CanvasCut.JobFiles;

/// <summary>The tubes that are no bows: each from one place of the top to another.</summary>
internal static class TubeRules
{
    public static void Check(JobValues values, RuleLog rules, TopOutline? outline)
    {
        foreach (var tube in values.Tables("top.tube"))
        {
            CheckEnds(values, rules, tube, outline);
        }
    }

    private static void CheckEnds(JobValues values, RuleLog rules, string tube, TopOutline? outline)
    {
        var (hasStation, hasOffset) = (values.IsWritten($"{tube}.station"), values.IsWritten($"{tube}.offset"));
        rules.Unless(
            hasStation || hasOffset,
            ProblemCode.TubePlace,
            tube,
            Say.Of("has no ends; give station = [at the port edge, at the starboard edge], offset = [at the forward edge, at the aft edge], or both for a strut from one place to another."));
        if (outline is null || (!hasStation && !hasOffset) || (hasStation && values.Pair($"{tube}.station") is null) || (hasOffset && values.Pair($"{tube}.offset") is null))
        {
            return;
        }

        var path = hasStation ? $"{tube}.station" : $"{tube}.offset";
        var (whole, ends) = (outline.Shape.Bounds, TubeEnds.Of(values, tube, outline));
        var isOff = ends is not { } both || !outline.Holds(both.From) || !outline.Holds(both.To);
        rules.When(
            isOff,
            ProblemCode.TubePlace,
            path,
            Say.Of($"puts an end of this tube off the top, which reaches from {In(Mm(-whole.Top))} to {In(Mm(-whole.Bottom))} aft and from {In(Mm(whole.Left))} to {In(Mm(whole.Right))} across (port negative), and no further than its edge there; give both ends on it."));
        rules.When(
            !isOff && ends is var (from, to) && Math.Abs((from.Station - to.Station).Millimeters) < 1 && Math.Abs((from.Offset - to.Offset).Millimeters) < 1,
            ProblemCode.TubePlace,
            path,
            Say.Of("puts both ends of this tube at one place; give where it begins and where it ends."));
    }

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
