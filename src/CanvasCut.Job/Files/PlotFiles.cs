using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Language;
using CanvasCut.Sheets;

namespace CanvasCut.Job;

/// <summary>The sheets for a copy shop: a page a piece, and, when the job names a roll, all pieces on it.</summary>
public static class PlotFiles
{
    /// <summary>The file with a page a piece.</summary>
    public const string Pages = "plot.pdf";

    /// <summary>The roll as PDF.</summary>
    public const string Roll = "roll.pdf";

    /// <summary>The roll as SVG.</summary>
    public const string RollPicture = "roll.svg";

    /// <summary>What was asked for and could not be made, a sentence each; none when all is there.</summary>
    internal static IEnumerable<string> LeftOut(JobRun outcome, IEnumerable<ResultFile> files)
    {
        var names = files.Select(file => file.Name).ToHashSet(StringComparer.Ordinal);
        if (!names.Contains(Pages))
        {
            yield return Say.Of($"Left out {Pages}: a piece is longer than {PlotPages.LongestMm:0} mm, the most a PDF page can be; templates.pdf has it over joined pages.");
        }

        if (outcome.Job.Workshop.Plot.RollWidth is not null && !names.Contains(Roll))
        {
            yield return Say.Of($"Left out {Roll} and {RollPicture}: a piece is wider than plot.roll_width allows, or longer than {PlotPages.LongestMm:0} mm.");
        }

        if (names.Contains(Roll) && !names.Contains(RollPicture))
        {
            yield return Say.Of($"Left out {RollPicture}: the pieces take several sheets of {PlotPages.LongestMm:0} mm; {Roll} has a page for each.");
        }
    }

    /// <summary>The sheets to write, by file name; a PDF file takes several.</summary>
    internal static ImmutableArray<(string Name, ImmutableArray<Sheet> Sheets, string Tells)> Of(ImmutableArray<PieceDrawing> drawings, JobRun outcome)
    {
        var workshop = outcome.Job.Workshop;
        var pages = PlotPages.Of(drawings, outcome.Context);
        var roll = workshop.Plot.RollWidth is null ? [] : RollSheets.Of(drawings, workshop, outcome.Context);
        return
        [
            .. new[]
            {
                (Pages, pages, Say.Of("a page as large as each piece, for a copy shop")),
                (Roll, roll, Say.Of("all pieces on the copy shop's roll, to print at 100 %")),
                (RollPicture, roll.Length == 1 ? roll : [], Say.Of("the same for a plotter")),
            }.Where(file => !file.Item2.IsEmpty),
        ];
    }
}
