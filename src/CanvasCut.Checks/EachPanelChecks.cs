using CanvasCut.Patterns;

namespace CanvasCut.Checks;

/// <summary>Looks at each panel of a carrier by itself.</summary>
internal static class EachPanelChecks
{
    /// <summary>The results of a check for each panel, told of it by its name where there are several.</summary>
    /// <param name="patterns">The carrier with all its panels.</param>
    /// <param name="check">Looks at a carrier as if it had one panel.</param>
    public static IEnumerable<CheckResult> OfEach(this PatternSet patterns, Func<PatternSet, IEnumerable<CheckResult>> check) =>
        patterns.EachPanel.SelectMany(each => check(each).Select(result => result with { Subject = PanelWords.Of(each.Job, result.Subject) }));
}
