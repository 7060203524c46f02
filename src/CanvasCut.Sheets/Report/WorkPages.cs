using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;
using CanvasCut.Takeoff;

namespace CanvasCut.Sheets;

/// <summary>The order of work, a block for each step with a box to tick, in letters that can be read from the machine.</summary>
internal static class WorkPages
{
    private const double NameMm = 3;
    private const double TextMm = 2.5;
    private const double PitchMm = 4.3;
    private const double BoxMm = 6;
    private const double TextLeftMm = 17;
    private const double PictureMm = 44;
    private const double PictureHeightMm = 34;
    private const double BelowMm = 3;

    /// <summary>Adds the order of work, beginning on a new page.</summary>
    public static void Add(Flow flow, PatternSet patterns, WorkSchedule order)
    {
        flow.NewPage();
        flow.Heading(Say.Of("Order of work"));
        flow.Text(Say.Of($"{WorkText.Total(order)} One person, a domestic machine; times are estimates from memory, yours will differ. A step begins when all that it uses is made and cured; go on only when its check is true. The cautions at the end of this report go for every step."));
        WorkStage? stage = null;
        foreach (var step in order.Steps)
        {
            if (stage != step.Step.Task.Stage)
            {
                stage = step.Step.Task.Stage;
                flow.Heading(WorkText.Of(step.Step.Task.Stage));
            }

            var (figures, height) = Block(step, patterns, flow.WidthMm);
            flow.Block(figures, height);
        }
    }

    private static (ImmutableArray<Figure> Figures, double HeightMm) Block(ScheduledStep step, PatternSet patterns, double widthMm)
    {
        var (task, advice) = (step.Step.Task, step.Step.Advice);
        var textWidth = widthMm - TextLeftMm - PictureMm - 4;
        var lines = new List<(string Text, double HeightMm, bool IsBold)>();
        void Add(string text, double heightMm, bool isBold) => lines.AddRange(TextWrap.Lines(text, textWidth, heightMm, isBold).Select(line => (line, heightMm, isBold)));
        Add(task.Name, NameMm, true);
        Add(Say.Of($"Day {step.Day.ToString(System.Globalization.CultureInfo.InvariantCulture)} · {WorkText.Time(step.Step.Time)} · {advice.Tool}"), TextMm, false);
        Add(task.Do, TextMm, false);
        Add(advice.Condition.Length > 0 ? Say.Of($"When: {advice.Condition}") : string.Empty, TextMm, false);
        Add(Say.Of($"Check: {advice.Check}"), TextMm, true);
        Add(advice.Caution.Length > 0 ? Say.Of($"Caution: {advice.Caution}") : string.Empty, TextMm, false);
        var text = lines.Where(line => line.Text.Length > 0).ToList();
        var height = Math.Max(PictureHeightMm, (text.Count * PitchMm) + 2) + BelowMm;
        return (
        [
            Stroke.Closed(LineRole.Cut, Outline.Of(new Box(0, -BoxMm - 1, BoxMm, -1))),
            new Lettering(step.Number.ToString(System.Globalization.CultureInfo.InvariantCulture), new(TextLeftMm - 2, -1 - NameMm), NameMm, TextAnchor.Right, IsBold: true),
            .. text.Select((line, i) => new Lettering(line.Text, new(TextLeftMm, -1 - NameMm - (i * PitchMm)), line.HeightMm, IsBold: line.IsBold)),
            .. WorkPictures.Of(step.Step.Picture, patterns, new Box(widthMm - PictureMm, -PictureHeightMm + 1, widthMm, -1)),
            Stroke.Open(LineRole.Note, new(0, -height + 1), new(widthMm, -height + 1)),
        ], height);
    }
}
