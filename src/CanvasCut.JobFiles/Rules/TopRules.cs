using CanvasCut.Design;
using CanvasCut.Language;
using UnitsNet;
using static CanvasCut.JobFiles.RuleLog;

namespace CanvasCut.JobFiles;

/// <summary>The rim and the keep-outs of the top.</summary>
internal static class TopRules
{
    public static void Check(JobValues values, RuleLog rules, TopOutline? outline)
    {
        var (length, width) = (values.Length("top.length"), TopShapeReader.LeastWidth(values));
        var (ends, sides) = (EndsOf(outline, length), SidesOf(outline, width));
        var margin = values.Length("top.edge_margin") * 2;
        rules.When(margin >= length || margin >= width, ProblemCode.Impossible, "top.edge_margin", Say.Of("leaves nothing of the top; it counts twice, at both edges."));
        rules.When(values.Length("top.corner_radius") * 2 >= width, ProblemCode.Impossible, "top.corner_radius", Say.Of("leaves no crown between the bends; it counts at both sides."));
        foreach (var keepOut in values.Tables("top.keep_out"))
        {
            CheckExtent(values, rules, $"{keepOut}.station", ends, Say.Of("Or is it measured from the aft edge?"));
            CheckExtent(values, rules, $"{keepOut}.offset", sides, Say.Of("Or is port measured as positive?"));
        }
    }

    private static (Length? From, Length? To) EndsOf(TopOutline? outline, Length? length) =>
        outline is { IsRectangle: false, Shape.Bounds: var whole } ? (Length.FromMillimeters(-whole.Top), Length.FromMillimeters(-whole.Bottom)) : (Length.Zero, length);

    private static (Length? From, Length? To) SidesOf(TopOutline? outline, Length? width) =>
        outline is { IsRectangle: false, Shape.Bounds: var whole } ? (Length.FromMillimeters(whole.Left), Length.FromMillimeters(whole.Right)) : (width / -2, width / 2);

    private static void CheckExtent(JobValues values, RuleLog rules, string path, (Length? From, Length? To) top, string doubt)
    {
        var extent = values.Pair(path);
        var isReversed = extent?.From > extent?.To;
        rules.When(isReversed, ProblemCode.KeepOutPlace, path, Say.Of("runs backward; write the smaller length first (port offsets are negative).") + Mirrored(extent, top, doubt));
        rules.When(
            !isReversed && (extent?.To < top.From || extent?.From > top.To),
            ProblemCode.KeepOutPlace,
            path,
            Say.Of($"lies wholly beside the top, which reaches from {In(top.From)} to {In(top.To)}."));
    }

    /// <summary>The limits as seen from the other edge: stations from the aft edge, offsets with port positive. The order is right then.</summary>
    private static string Mirrored((Length From, Length To)? extent, (Length? From, Length? To) top, string doubt) =>
        (top.From + top.To - extent?.From) is { } from ? Say.Of($" {doubt} Then it is {In(from)} to {In(top.From + top.To - extent?.To)}.") : string.Empty;
}
