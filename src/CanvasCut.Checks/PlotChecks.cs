using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Tells whether the pieces can be drawn on the plotter's roll.</summary>
internal static class PlotChecks
{
    /// <summary>For each piece the shorter side of its cut size against the roll; none without a roll.</summary>
    public static IEnumerable<CheckResult> Of(PatternSet patterns)
    {
        var workshop = patterns.Job.Workshop;
        return workshop.Plot.RollWidth is { } roll
            ? patterns.Pieces.Select(piece => OnRoll(piece, roll - (workshop.Paper.Margin * 2)))
            : [];
    }

    private static CheckResult OnRoll(PatternPiece piece, Length usable) => CheckResult.Judged(
        (CheckCodes.PlotRoll, Say.Of($"{piece.Title.Name} on the plotter's roll")),
        Measured.AtMost(UnitMath.Min(piece.CutSize.Athwart, piece.CutSize.ForeAft), usable),
        Verdict.Caution,
        Say.Of("plot.roll_width less twice paper.margin"),
        Say.Of("The piece is wider than the roll in every turn, so roll.pdf and roll.svg are not written. Ask the shop for a wider roll, or print templates.pdf and join its pages.")).On(PartKey.Of(piece.Key));
}
