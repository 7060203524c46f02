using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>Bows whose halves differ: each measure for both halves or for the whole, and arcs that can be.</summary>
internal static class HalfBowRules
{
    private static readonly string[] Hands = ["port", "starboard"];

    /// <summary>Whether each measure is given for the whole bow, or for both halves, or not at all.</summary>
    public static bool ArePaired(JobValues values, RuleLog rules, string bow) =>
        IsPaired(values, rules, $"{bow}.girth") & IsPaired(values, rules, $"{bow}.crown");

    /// <summary>Holds each half against a quarter circle; the bow as a whole must be able to be.</summary>
    public static void CheckArcs(BowArc arc, RuleLog rules, string bow)
    {
        CheckArc(arc, arc.Port, rules, measure => $"{bow}.{measure}_port");
        CheckArc(arc, arc.Starboard, rules, measure => $"{bow}.{measure}_starboard");
    }

    private static bool IsPaired(JobValues values, RuleLog rules, string whole)
    {
        var written = Hands.Where(hand => values.IsWritten($"{whole}_{hand}")).ToList();
        rules.When(
            written.Count == 1,
            ProblemCode.BowMeasures,
            $"{whole}_{written.FirstOrDefault()}",
            Say.Of("is given for one half only; give the other half's too, or the whole bow's alone."));
        rules.When(
            written.Count == 2 && values.IsWritten(whole),
            ProblemCode.BowMeasures,
            whole,
            Say.Of("is given for the whole bow and for its halves; keep one of the two."));
        return written.Count != 1 && (written.Count == 0 || !values.IsWritten(whole));
    }

    private static void CheckArc(BowArc arc, HalfMeasures half, RuleLog rules, Func<string, string> place)
    {
        var whole = arc.Arc()!;
        var crown = half.Crown ?? Length.FromMillimeters(whole.RiseMm);
        var isHigh = half.Girth is { } girth ? crown > girth * (2 / Math.PI) : half.Crown is not null && crown > LargestCrown(arc);
        rules.When(
            isHigh,
            ProblemCode.BowsDisagree,
            place(half.Crown is null ? "girth" : "crown"),
            Say.Of("makes this half more than a quarter circle; a half's girth runs from the centreline to its end, its crown from the level of that end up to the cloth on the centreline."));
    }

    private static Length? LargestCrown(BowArc arc) => arc.Chord is { } chord ? chord / 2 : arc.Girth / Math.PI;
}
