using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Takeoff;

namespace CanvasCut.Sheets;

/// <summary>The order of work, a block for each step with a box to tick, in letters that can be read from the machine.</summary>
internal static class WorkPages
{
    private const double StageMm = 3.2;
    private const double StageHeightMm = 7.5;
    private const double NameMm = 2.9;
    private const double TextMm = 2.4;
    private const double PitchMm = 3.6;
    private const double NamePitchMm = 4.4;
    private const double BoxMm = 5.5;
    private const double TextLeftMm = 14;
    private const double PictureMm = 30;
    private const double PictureHeightMm = 20;
    private const double BelowMm = 2;

    /// <summary>Letters to tick hang a little lower than the line above them asks for, for the boxes.</summary>
    private const double TicksDownMm = 1.9;

    /// <summary>Adds the order of work, beginning on a new page.</summary>
    public static void Add(Flow flow, MadeTogether made, WorkSchedule order)
    {
        flow.NewPage();
        flow.Heading(Say.Of("Order of work"));
        flow.Text(Say.Of($"{WorkText.Total(order)} One person, a domestic machine; times are estimates from memory, yours will differ. A step begins when all that it uses is made and cured; go on only when its check is true. The cautions at the end of this report go for every step."));
        if (WorkText.Sets(made) is { Length: > 0 } sets)
        {
            flow.Text(sets, isBold: true);
        }

        WorkStage? stage = null;
        foreach (var step in order.Steps)
        {
            var (figures, height) = Block(step, made, flow.WidthMm);
            if (stage != step.Step.Task.Stage)
            {
                stage = step.Step.Task.Stage;
                var heading = new Lettering(WorkText.Of(step.Step.Task.Stage), new(0, -StageHeightMm + 2), StageMm, IsBold: true);
                (figures, height) = ([heading, .. Figures.Moved(figures, new(0, -StageHeightMm))], height + StageHeightMm);
            }

            flow.Block(figures, height);
        }
    }

    private static (ImmutableArray<Figure> Figures, double HeightMm) Block(ScheduledStep step, MadeTogether made, double widthMm)
    {
        var textWidth = widthMm - TextLeftMm - PictureMm - 4;
        var when = Say.Of($"Day {step.Day.ToString(System.Globalization.CultureInfo.InvariantCulture)} · {WorkText.Time(step.Step.Time)}");
        var (before, after) = TextOf(step, textWidth, TextWidth.Of(when, TextMm, isBold: false) + 3);
        var beforeMm = before.Sum(line => line.PitchMm);
        var ticks = WorkTicks.Of(step.Step.Parts, new(TextLeftMm, -TicksDownMm - beforeMm), textWidth);
        var belowTicks = beforeMm + ticks.HeightMm;
        var height = Math.Max(PictureHeightMm, belowTicks + (after.Count * PitchMm) + 2) + BelowMm;
        return (
        [
            Stroke.Closed(LineRole.Cut, Outline.Of(new Box(0, -BoxMm - 1, BoxMm, -1))),
            new Lettering(step.Number.ToString(System.Globalization.CultureInfo.InvariantCulture), new(TextLeftMm - 2, -1 - NameMm), NameMm, TextAnchor.Right, IsBold: true),
            new Lettering(when, new(TextLeftMm + textWidth, -1 - NameMm), TextMm, TextAnchor.Right),
            .. Lettered(before, 0),
            .. ticks.Figures,
            .. Lettered(after, belowTicks),
            .. WorkPictures.Of(step.Step.Picture, made, new Box(widthMm - PictureMm, -PictureHeightMm + 1, widthMm, -1)),
            Stroke.Open(LineRole.Note, new(0, -height + 1), new(widthMm, -height + 1)),
        ], height);
    }

    private static IEnumerable<Figure> Lettered(IEnumerable<WorkLine> lines, double belowMm)
    {
        foreach (var line in lines)
        {
            yield return new Lettering(line.Text, new(TextLeftMm, -1 - NameMm - belowMm), line.HeightMm, IsBold: line.IsBold);
            belowMm += line.PitchMm;
        }
    }

    /// <summary>What stands over the things to tick, and what under them.</summary>
    private static (List<WorkLine> Before, List<WorkLine> After) TextOf(ScheduledStep step, double widthMm, double whenMm)
    {
        var (task, advice) = (step.Step.Task, step.Step.Advice);
        IEnumerable<WorkLine> Lines(string text, bool isBold) =>
            text.Length == 0 ? [] : TextWrap.Lines(text, widthMm, TextMm, isBold).Select(line => new WorkLine(line, TextMm, isBold, PitchMm));
        var names = TextWrap.Lines(task.Name, widthMm - whenMm, NameMm, isBold: true);
        var condition = advice.Condition.Length > 0 ? Say.Of($"When: {advice.Condition}") : string.Empty;
        return (
            [
                .. names.Select((line, i) => new WorkLine(line, NameMm, true, i < names.Length - 1 ? NamePitchMm : PitchMm)),
                .. Lines($"{task.Do} {Say.Of($"With: {advice.Tool}.")} {condition}".Trim(), false),
            ],
            [
                .. Lines(Say.Of($"Check: {advice.Check}"), true),
                .. Lines(advice.Caution.Length > 0 ? Say.Of($"Caution: {advice.Caution}") : string.Empty, false),
            ]);
    }

    private sealed record WorkLine(string Text, double HeightMm, bool IsBold, double PitchMm);
}
