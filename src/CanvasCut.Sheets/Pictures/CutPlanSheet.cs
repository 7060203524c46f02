using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Language;
using CanvasCut.Takeoff;

namespace CanvasCut.Sheets;

/// <summary>The cut plan: the pieces on the roll, with the lists of where each lies and what is left.</summary>
public static class CutPlanSheet
{
    private const double WidthMm = 297;
    private const double MarginMm = 12;
    private const double TitleMm = 5;
    private const double TextMm = 2.5;
    private const double PitchMm = 4.6;

    /// <summary>Draws the cut plan with its lists.</summary>
    public static Sheet Of(CutPlan plan, SheetContext context)
    {
        var inner = WidthMm - (2 * MarginMm);
        var figures = ImmutableArray.CreateBuilder<Figure>();
        var y = -MarginMm;
        Put(Head(plan, context, inner), room: 2);
        var picture = Picture(plan, context, inner);
        Put((Figures.Moved(picture.Figures, new(0, -picture.HeightMm)), picture.HeightMm), room: 4);
        Put(CutPlanLists.PieceTable(context, inner).At(new(0, 0), CutPlanLists.Pieces(plan, context)), room: 5);
        if (CutPlanLists.Leftovers(plan, context).ToList() is { Count: > 0 } leftovers)
        {
            Put(CutPlanLists.LeftoverTable(inner).At(new(0, 0), leftovers), room: 0);
        }

        var height = MarginMm - y;
        return new("cut-plan", Say.Of($"Cut plan, {context.JobName}"), WidthMm, height, Figures.Moved(figures.ToImmutable(), new(0, height)));

        void Put((ImmutableArray<Figure> Figures, double HeightMm) block, double room)
        {
            figures.AddRange(Figures.Moved(block.Figures, new(MarginMm, y)));
            y -= block.HeightMm + room;
        }
    }

    /// <summary>The picture alone, as wide as a page leaves room for.</summary>
    public static Sheet Picture(CutPlan plan, SheetContext context, double widthMm) =>
        new("cut-plan-picture", Say.Of($"Cut plan, {context.JobName}"), widthMm, CutPlanPicture.Of(plan, context, widthMm, out var figures), figures);

    /// <summary>Title and sentences, hanging from the origin.</summary>
    private static (ImmutableArray<Figure> Figures, double HeightMm) Head(CutPlan plan, SheetContext context, double widthMm)
    {
        var figures = ImmutableArray.CreateBuilder<Figure>();
        figures.Add(new Lettering(Say.Of($"Cut plan: {context.JobName}"), new(0, -TitleMm), TitleMm, IsBold: true));
        var y = -TitleMm - 6;
        var sentences = CutPlanLists.Sentences(plan, context).Append(context.Warning).Where(sentence => sentence.Length > 0);
        foreach (var (sentence, line) in sentences.SelectMany(sentence => TextWrap.Lines(sentence, widthMm, TextMm, isBold: true).Select(line => (sentence, line))))
        {
            figures.Add(new Lettering(line, new(0, y), TextMm, IsBold: sentence == context.Warning));
            y -= PitchMm;
        }

        return (figures.ToImmutable(), -y - PitchMm);
    }
}
