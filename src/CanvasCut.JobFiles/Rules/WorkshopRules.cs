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

    public static void Check(JobValues values, RuleLog rules)
    {
        var usable = values.Length("cloth.roll_width") - (values.Length("cloth.selvage") * 2);
        rules.When(usable < LeastRoll, ProblemCode.Roll, "cloth.selvage", $"leaves {In(usable)} of the roll, counted at both edges; at least {In(LeastRoll)} must be usable.");
        var shorter = values.Paper("paper.size")?.Width;
        var printable = shorter - (values.Length("paper.margin") * 2) - values.Length("paper.overlap");
        rules.When(printable < LeastPrint, ProblemCode.Paper, "paper.margin", $"leaves {In(printable)} to print between margins and overlap; at least {In(LeastPrint)} are needed.");
        var plotted = values.Length("plot.roll_width") - (values.Length("paper.margin") * 2);
        rules.When(plotted < LeastPlot, ProblemCode.Paper, "plot.roll_width", $"leaves {In(plotted)} to draw between the margins; at least {In(LeastPlot)} are needed.");
    }
}
