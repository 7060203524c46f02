using CanvasCut.Language;
using UnitsNet;
using static CanvasCut.JobFiles.RuleLog;

namespace CanvasCut.JobFiles;

/// <summary>The rim and the keep-outs of the top.</summary>
internal static class TopRules
{
    public static void Check(JobValues values, RuleLog rules)
    {
        var (length, width) = (values.Length("top.length"), values.Length("top.width"));
        var margin = values.Length("top.edge_margin") * 2;
        rules.When(margin >= length || margin >= width, ProblemCode.Impossible, "top.edge_margin", Say.Of("leaves nothing of the top; it counts twice, at both edges."));
        rules.When(values.Length("top.corner_radius") * 2 >= width, ProblemCode.Impossible, "top.corner_radius", Say.Of("leaves no crown between the bends; it counts at both sides."));
        foreach (var keepOut in values.Tables("top.keep_out"))
        {
            CheckExtent(values, rules, $"{keepOut}.station", (Length.Zero, length));
            CheckExtent(values, rules, $"{keepOut}.offset", (width / -2, width / 2));
        }
    }

    private static void CheckExtent(JobValues values, RuleLog rules, string path, (Length? From, Length? To) top)
    {
        var extent = values.Pair(path);
        var isReversed = extent?.From > extent?.To;
        rules.When(isReversed, ProblemCode.KeepOutPlace, path, Say.Of("runs backward; write the smaller length first (port offsets are negative)."));
        rules.When(
            !isReversed && (extent?.To < top.From || extent?.From > top.To),
            ProblemCode.KeepOutPlace,
            path,
            Say.Of($"lies wholly beside the top, which reaches from {In(top.From)} to {In(top.To)}."));
    }
}
