using CanvasCut.Geometry;
using UnitsNet;
using static CanvasCut.JobFiles.RuleLog;

namespace CanvasCut.JobFiles;

/// <summary>The bows: each an arc that can be, in order, on the top.</summary>
internal static class BowRules
{
    private const double TapeErrorMm = 3;
    private const double TapeErrorPart = 0.002;
    private static readonly string[] Measures = ["girth", "chord", "crown"];

    public static void Check(JobValues values, RuleLog rules)
    {
        Length? before = null;
        foreach (var bow in values.Tables("top.bow"))
        {
            var station = values.Length($"{bow}.station");
            rules.When(station <= before, ProblemCode.BowPlace, $"{bow}.station", "is not aft of the bow before; list the bows from forward to aft.");
            rules.When(station > values.Length("top.length"), ProblemCode.BowPlace, $"{bow}.station", $"lies aft of the top, which is {In(values.Length("top.length"))} long.");
            CheckMeasures(values, rules, bow);
            before = station ?? before;
        }
    }

    private static void CheckMeasures(JobValues values, RuleLog rules, string bow)
    {
        var written = Measures.Where(measure => values.IsWritten($"{bow}.{measure}")).ToList();
        rules.When(
            written.Count == 1,
            ProblemCode.BowMeasures,
            $"{bow}.{written.FirstOrDefault()}",
            "is not enough for an arc; give two of girth, chord and crown, or none.");
        var arc = BowArc.Of(values, bow);
        var isKnown = written.TrueForAll(measure => values.Length($"{bow}.{measure}") is not null);
        if (written.Count > 1 && isKnown && CanBe(arc, rules, bow) && arc is { Girth: { } girth, Chord: not null, Crown: not null })
        {
            CheckGirth(arc.Arc()!, girth, rules, bow);
        }
    }

    private static bool CanBe(BowArc arc, RuleLog rules, string bow)
    {
        var isShort = arc.Girth < arc.Chord;
        var isHigh = arc.Crown > arc.Chord / 2 || (arc.Chord is null && arc.Crown > arc.Girth / Math.PI);
        var isTight = arc.Crown is null && arc.Girth > arc.Chord * (Math.PI / 2);
        rules.When(isShort, ProblemCode.BowsDisagree, $"{bow}.girth", $"is shorter than the chord, {In(arc.Chord)}; along the cloth it can only be longer than straight across.");
        rules.When(isHigh, ProblemCode.BowsDisagree, $"{bow}.crown", "is higher than a half circle; measure the crown from the straight chord up to the middle.");
        rules.When(isTight, ProblemCode.BowsDisagree, $"{bow}.girth", $"is more than a half circle on the chord, {In(arc.Chord)}.");
        return !isShort && !isHigh && !isTight;
    }

    private static void CheckGirth(CircularArc arc, Length girth, RuleLog rules, string bow)
    {
        var difference = Math.Abs(arc.GirthMm - girth.Millimeters);
        rules.When(
            difference > Math.Max(TapeErrorMm, TapeErrorPart * girth.Millimeters),
            ProblemCode.BowsDisagree,
            $"{bow}.girth",
            $"does not fit the chord and the crown, which make it {In(Length.FromMillimeters(arc.GirthMm))}; measure again.");
    }
}
