using CanvasCut.Language;
using UnitsNet;
using static CanvasCut.JobFiles.RuleLog;

namespace CanvasCut.JobFiles;

/// <summary>A bow's cloth runs from edge to edge, so its measures and the top's width there belong together.</summary>
/// <remarks>
/// Questioned, not refused: a top may be wider at one bow than at another. The limits are working figures, chosen so that a
/// foot too much or too little on 6 ft is seen; common practice, no source.
/// </remarks>
internal static class BowWidthRules
{
    private const double MostOff = 0.15;

    /// <summary>
    /// A bow whose crown is a third of its chord has this chord over its girth; where the crown tells of it, a rounder one is not questioned.
    /// </summary>
    private const double LeastChord = 0.78;

    public static void Check(JobValues values, RuleLog rules, (BowArc Arc, Length? Width) bow, Func<string, string> place)
    {
        var arc = bow.Arc;
        if (bow.Width is not { } width || arc.Arc() is not { } whole)
        {
            return;
        }

        var girth = Length.FromMillimeters(whole.GirthMm);
        var path = place(arc.Girth is null ? "chord" : "girth");
        var isOff = girth < width * (1 - MostOff) || girth > width * (1 + MostOff);
        rules.When(
            isOff && !values.IsAccepted(path),
            ProblemCode.BowWidth,
            path,
            Say.Of($"makes this bow {In(girth)} from edge to edge along the cloth, and the top is {In(width)} wide; measure both again. If it is really so, list \"{path}\" in accept_unusual."));
        rules.When(
            !isOff && arc.Crown is null && arc.Chord < width * LeastChord && !values.IsAccepted(place("chord")),
            ProblemCode.BowWidth,
            place("chord"),
            Say.Of($"is far less than the top's width, {In(width)}; measure it again, and the crown too. If it is really so, list \"{place("chord")}\" in accept_unusual."));
    }
}
