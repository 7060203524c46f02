using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using UnitsNet;
using static CanvasCut.JobFiles.RuleLog;

namespace CanvasCut.JobFiles;

/// <summary>The bows: each an arc that can be, in order, on the top.</summary>
internal static class BowRules
{
    private const double TapeErrorMm = 3;
    private const double TapeErrorPart = 0.002;
    private static readonly string[] Measures = ["girth", "chord", "crown"];

    public static void Check(JobValues values, RuleLog rules, TopOutline? outline)
    {
        BayRules.Check(values, rules);
        StationOrder.Check(values, ("top.bow", "top.length"), path => values.Length(path), (path, message) => rules.When(true, ProblemCode.BowPlace, path, message));
        foreach (var bow in values.Tables("top.bow"))
        {
            rules.When(values.Length($"{bow}.station") > values.Length("top.length"), ProblemCode.BowPlace, $"{bow}.station", Say.Of($"lies aft of the top, which is {In(values.Length("top.length"))} long."));
            CheckMeasures(values, rules, bow, outline);
        }
    }

    private static void CheckMeasures(JobValues values, RuleLog rules, string bow, TopOutline? outline)
    {
        var arePaired = HalfBowRules.ArePaired(values, rules, bow);
        var written = Measures.Where(measure => values.IsWritten(Place(values, bow, measure))).ToList();
        rules.When(
            written.Count == 1,
            ProblemCode.BowMeasures,
            Place(values, bow, written.FirstOrDefault() ?? Measures[0]),
            Say.Of("is not enough for an arc; give two of girth, chord and crown, or none."));
        var arc = BowArc.Of(values, bow);
        var isKnown = arePaired && written.TrueForAll(measure => Of(arc, measure) is not null);
        if (written.Count > 1 && isKnown && CanBe(arc, rules, measure => Place(values, bow, measure)))
        {
            HalfBowRules.CheckArcs(arc, rules, bow);
            CheckGirth(arc, rules, Place(values, bow, "girth"));
            BowWidthRules.Check(values, rules, (arc, WidthAt(values, bow, outline)), measure => Place(values, bow, measure));
        }
    }

    private static Length? WidthAt(JobValues values, string bow, TopOutline? outline) =>
        outline is { IsRectangle: false } && values.Length($"{bow}.station") is { } station ? outline.HalvesAt(station) is var halves ? halves.Port + halves.Starboard : null : values.Length("top.width");

    /// <summary>Where a measure of a bow is written: for the whole, or for its port half.</summary>
    private static string Place(JobValues values, string bow, string measure) =>
        values.IsWritten($"{bow}.{measure}_port") ? $"{bow}.{measure}_port" : $"{bow}.{measure}";

    private static Length? Of(BowArc arc, string measure) => measure switch
    {
        "girth" => arc.Girth,
        "chord" => arc.Chord,
        _ => arc.Crown,
    };

    private static bool CanBe(BowArc arc, RuleLog rules, Func<string, string> place)
    {
        var isShort = arc.Girth < arc.Chord;
        var isHigh = arc.Crown > arc.Chord / 2 || (arc.Chord is null && arc.Crown > arc.Girth / Math.PI);
        var isTight = arc.Crown is null && arc.Girth > arc.Chord * (Math.PI / 2);
        rules.When(isShort, ProblemCode.BowsDisagree, place("girth"), Say.Of($"is shorter than the chord, {In(arc.Chord)}; along the cloth it can only be longer than straight across."));
        rules.When(isHigh, ProblemCode.BowsDisagree, place("crown"), Say.Of("is higher than a half circle; measure the crown from the straight chord up to the middle."));
        rules.When(isTight, ProblemCode.BowsDisagree, place("girth"), Say.Of($"is more than a half circle on the chord, {In(arc.Chord)}."));
        return !isShort && !isHigh && !isTight;
    }

    private static void CheckGirth(BowArc measured, RuleLog rules, string path)
    {
        if (measured is not { Girth.Millimeters: var girth, Chord.Millimeters: var chord, Crown.Millimeters: var crown })
        {
            return;
        }

        var fitting = CircularArc.FromChordAndRise(chord, crown).GirthMm;
        rules.When(
            Math.Abs(fitting - girth) > Math.Max(TapeErrorMm, TapeErrorPart * girth),
            ProblemCode.BowsDisagree,
            path,
            Say.Of($"does not fit the chord and the crown, which make it {In(Length.FromMillimeters(fitting))}; measure again."));
    }
}
