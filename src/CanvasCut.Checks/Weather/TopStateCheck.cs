using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.Checks;

/// <summary>Whether the top is worth sewing to: one verdict of all answers.</summary>
internal static class TopStateCheck
{
    public static CheckResult Of(TopState state)
    {
        var yes = state.Answered(answer: true).ToList();
        var stops = yes.Where(question => question.Remedy == TopRemedy.Stop).ToList();
        var open = state.Answered(null).Select(question => $"top_condition.{question.Field}").ToList();
        return stops.Count > 0 ? Result(Verdict.Fail, Say.Of($"Do not sew to this top: {Reasons(stops)}."))
            : open.Count > 0 ? Result(Verdict.NotChecked, Say.Of($"{(yes.Count > 0 ? Say.Of($"First of all: {Reasons(yes)}. ") : string.Empty)}Not answered: {string.Join(", ", open)}."))
            : yes.Count > 0 ? Result(Verdict.Caution, Say.Of($"Worth sewing, but not yet: {Reasons(yes)}."))
            : Result(Verdict.Pass, Say.Of("Worth sewing."));
    }

    private static string Reasons(IEnumerable<TopQuestion> questions) => string.Join("; ", questions.Select(question => question.Reason));

    private static CheckResult Result(Verdict verdict, string advice) =>
        new(CheckCodes.TopCondition, Say.Of("is this top worth sewing?"), verdict, Measured.Nothing, Say.Of("the answers in [top_condition]; rules of thumb"), advice);
}
