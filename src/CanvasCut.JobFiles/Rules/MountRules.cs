using CanvasCut.Language;
using UnitsNet;
using static CanvasCut.JobFiles.RuleLog;

namespace CanvasCut.JobFiles;

/// <summary>Whether fasteners can be set at their pitch along the edges, for the kinds that the job has.</summary>
internal static class MountRules
{
    /// <summary>Two lugs of the carrier and one of the top between them.</summary>
    private const int FewestLugs = 3;

    /// <summary>What is worth sewing.</summary>
    private static readonly Length LeastLug = Length.FromMillimeters(15);

    public static void Check(JobValues values, RuleLog rules)
    {
        foreach (var table in MountFields.Pitched.Where(kind => MountFields.IsUsed(kind, values)).Select(kind => $"mount.{kind}"))
        {
            var diameter = values.Length($"{table}.diameter");
            rules.When(values.Length($"{table}.pitch") <= diameter, ProblemCode.Pitch, $"{table}.pitch", Say.Of($"must be more than one fastener's diameter, {In(diameter)}, or they lie on each other."));
            rules.When(values.Length($"{table}.width") < diameter, ProblemCode.FlapRoom, $"{table}.width", Say.Of($"is less than one fastener's diameter, {In(diameter)}."));
        }

        var (athwart, foreAft) = MountedSize.SmallestCarrier(values);
        CheckEdges(values, rules, athwart, Say.Of($"leaves no flap: it counts at both ends, and the carrier can be as narrow as {In(athwart)} athwart."), kind => MountFields.IsUsedAtEnds(kind, values));
        CheckEdges(values, rules, foreAft, Say.Of($"leaves no flap at a side: it counts at both ends, and the carrier can be as short as {In(foreAft)} fore and aft."), kind => MountFields.IsUsedAtSides(kind, values));
    }

    private static void CheckEdges(JobValues values, RuleLog rules, Length? edge, string none, Func<string, bool> isUsed)
    {
        var used = MountFields.Pitched.Where(isUsed).ToList();
        var (hasTape, hasRod) = (isUsed("hook-and-loop"), isUsed("sleeve"));
        var run = edge - (values.Length("mount.setback") * 2);
        if ((used.Count > 0 || hasTape || hasRod) && run <= Length.Zero)
        {
            rules.When(true, ProblemCode.FlapRoom, "mount.setback", none);
            return;
        }

        rules.When(
            hasRod && run < FewestLugs * (values.Length("mount.sleeve.gap") + LeastLug),
            ProblemCode.FlapRoom,
            "mount.setback",
            Say.Of($"leaves too little for a sleeve: it needs three lugs of {In(LeastLug)} with their gaps, and the flap can be as short as {In(run)}."));
        foreach (var kind in used)
        {
            CheckPitch(values, rules, $"mount.{kind}", run);
        }
    }

    private static void CheckPitch(JobValues values, RuleLog rules, string table, Length? run)
    {
        var (pitch, end, diameter) = (values.Length($"{table}.pitch"), values.Length($"{table}.end_distance"), values.Length($"{table}.diameter"));
        var between = run - (end * 2);
        if (between <= Length.Zero)
        {
            rules.When(true, ProblemCode.FlapRoom, $"{table}.end_distance", Say.Of($"leaves no room for a second fastener: it counts at both ends of a flap that can be as short as {In(run)}."));
        }
        else
        {
            rules.When(pitch > between, ProblemCode.Pitch, $"{table}.pitch", Say.Of($"is longer than the edge leaves between its end distances, which can be as little as {In(between)}."));
            rules.When(between <= diameter, ProblemCode.FlapRoom, $"{table}.end_distance", Say.Of($"leaves {In(between)} between the first fastener and the last, no more than one fastener's diameter."));
        }
    }
}
