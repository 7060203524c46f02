using CanvasCut.Language;
using static CanvasCut.JobFiles.RuleLog;

namespace CanvasCut.JobFiles;

/// <summary>Whether fasteners can be set at their pitch along the edges, for the kinds that the job has.</summary>
internal static class MountRules
{
    public static void Check(JobValues values, RuleLog rules)
    {
        var used = MountFields.Pitched.Where(kind => MountFields.IsUsed(kind, values)).ToList();
        var hasTape = MountFields.IsUsed("hook-and-loop", values);
        var athwart = MountedSize.SmallestCarrier(values).Athwart;
        var run = athwart - (values.Length("mount.setback") * 2);
        if ((used.Count > 0 || hasTape) && run <= UnitsNet.Length.Zero)
        {
            rules.When(true, ProblemCode.FlapRoom, "mount.setback", Say.Of($"leaves no flap: it counts at both ends, and the carrier can be as narrow as {In(athwart)} athwart."));
            return;
        }

        foreach (var kind in used)
        {
            CheckPitch(values, rules, $"mount.{kind}", run);
        }
    }

    private static void CheckPitch(JobValues values, RuleLog rules, string table, UnitsNet.Length? run)
    {
        var (pitch, end, diameter) = (values.Length($"{table}.pitch"), values.Length($"{table}.end_distance"), values.Length($"{table}.diameter"));
        var between = run - (end * 2);
        rules.When(pitch <= diameter, ProblemCode.Pitch, $"{table}.pitch", Say.Of($"must be more than one fastener's diameter, {In(diameter)}, or they lie on each other."));
        rules.When(values.Length($"{table}.width") < diameter, ProblemCode.FlapRoom, $"{table}.width", Say.Of($"is less than one fastener's diameter, {In(diameter)}."));
        if (between <= UnitsNet.Length.Zero)
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
