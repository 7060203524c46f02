using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Takeoff;

namespace CanvasCut.Sheets;

/// <summary>The things of a step to tick one by one, each behind a small box, as many in a line as have room.</summary>
internal static class WorkTicks
{
    private const double TextMm = 2.4;
    private const double BoxMm = 2.6;
    private const double ToTextMm = 1.2;
    private const double ApartMm = 5;
    private const double PitchMm = 4;
    private const double BelowMm = 0.4;

    /// <summary>Sets them out below a corner, in lines of a width.</summary>
    public static (ImmutableArray<Figure> Figures, double HeightMm) Of(ImmutableArray<StepPart> parts, Point upperLeft, double widthMm)
    {
        var figures = ImmutableArray.CreateBuilder<Figure>();
        var (xMm, line) = (0.0, 0);
        foreach (var part in parts)
        {
            var texts = TextWrap.Lines(part.ToString(), widthMm - BoxMm - ToTextMm, TextMm, isBold: false).ToList();
            var wide = BoxMm + ToTextMm + texts.Max(text => TextWidth.Of(text, TextMm, isBold: false));
            if (xMm > 0 && xMm + wide > widthMm)
            {
                (xMm, line) = (0, line + 1);
            }

            var (left, top) = (upperLeft.X + xMm, upperLeft.Y - (line * PitchMm));
            figures.Add(Stroke.Closed(LineRole.Cut, Outline.Of(new Box(left, top - 0.2 - BoxMm, left + BoxMm, top - 0.2))));
            figures.AddRange(texts.Select((text, i) => new Lettering(text, new(left + BoxMm + ToTextMm, top - TextMm - (i * PitchMm)), TextMm)));
            line += texts.Count - 1;
            xMm += wide + ApartMm;
        }

        return (figures.ToImmutable(), parts.IsEmpty ? 0 : ((line + 1) * PitchMm) + BelowMm);
    }
}
