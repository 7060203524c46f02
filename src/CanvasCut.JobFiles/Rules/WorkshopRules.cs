using CanvasCut.Design;
using CanvasCut.Language;
using UnitsNet;
using static CanvasCut.JobFiles.RuleLog;

namespace CanvasCut.JobFiles;

/// <summary>The roll and the paper.</summary>
internal static class WorkshopRules
{
    private static readonly Length LeastRoll = Length.FromMillimeters(300);
    private static readonly Length LeastPrint = Length.FromMillimeters(120);

    /// <summary>Room on a plotter's roll for the test squares with a few words beside them.</summary>
    private static readonly Length LeastPlot = Length.FromMillimeters(240);

    /// <summary>A page that is stretched by 3 % has room for less, and one more line at its foot.</summary>
    private static readonly Length LeastCorrectedPrint = Length.FromMillimeters(130);

    public static void Check(JobValues values, RuleLog rules)
    {
        var usable = values.Length("cloth.roll_width") - (values.Length("cloth.selvage") * 2);
        rules.When(usable < LeastRoll, ProblemCode.Roll, "cloth.selvage", Say.Of($"leaves {In(usable)} of the roll, counted at both edges; at least {In(LeastRoll)} must be usable."));
        CheckWidths(values, rules);
        CheckPaper(values, rules);
        foreach (var (path, other) in new[] { ("paper.read_x", "paper.read_y"), ("paper.read_y", "paper.read_x") })
        {
            CheckReading(values, rules, path, other);
        }
    }

    private static void CheckWidths(JobValues values, RuleLog rules)
    {
        if (values.Lengths("cloth.widths") is not { } widths)
        {
            return;
        }

        var isSorted = widths.Zip(widths.Skip(1)).All(pair => pair.First < pair.Second);
        rules.Unless(isSorted, ProblemCode.Roll, "cloth.widths", Say.Of("must grow from one roll to the next; sort it, each width once."));
        var narrow = widths.FirstOrDefault(width => width - (values.Length("cloth.selvage") * 2) < LeastRoll);
        rules.When(narrow > Length.Zero, ProblemCode.Roll, "cloth.widths", Say.Of($"names a roll {In(narrow)} wide; at least {In(LeastRoll)} must be usable between the selvages."));
    }

    /// <summary>The margins are to blame, unless only the overlap eats up what they leave.</summary>
    private static void CheckPaper(JobValues values, RuleLog rules)
    {
        var least = values.IsWritten("paper.read_x") || values.IsWritten("paper.read_y") ? LeastCorrectedPrint : LeastPrint;
        var shorter = values.Paper("paper.size")?.Width;
        var betweenMargins = shorter - (values.Length("paper.margin") * 2);
        var printable = betweenMargins - values.Length("paper.overlap");
        var isSmaller = betweenMargins <= Length.Zero;
        rules.When(isSmaller, ProblemCode.Paper, "paper.margin", Say.Of($"counted at both edges, is wider than the paper's {In(shorter)}; nothing is left to print on."));
        rules.When(!isSmaller && betweenMargins < least, ProblemCode.Paper, "paper.margin", Say.Of($"leaves {In(betweenMargins)} to print on; at least {In(least)} are needed, the overlap not counted."));
        rules.When(betweenMargins >= least && printable < least, ProblemCode.Paper, "paper.overlap", Say.Of($"leaves {In(printable)} of new piece on each page; at least {In(least)} are needed."));
        var plotted = values.Length("plot.roll_width") - (values.Length("paper.margin") * 2);
        rules.When(plotted < LeastPlot, ProblemCode.Paper, "plot.roll_width", Say.Of($"leaves {In(plotted)} to draw between the margins; at least {In(LeastPlot)} are needed."));
    }

    private static void CheckReading(JobValues values, RuleLog rules, string path, string other)
    {
        if (values.Length(path) is { } reading)
        {
            var complaint = PrintReadings.Complaint(reading);
            rules.When(complaint is not null, ProblemCode.Reading, path, complaint ?? string.Empty);
            rules.Unless(values.IsWritten(other), ProblemCode.Reading, path, Say.Of($"needs {other} beside it; a printer can be off one way and true the other."));
        }
    }
}
