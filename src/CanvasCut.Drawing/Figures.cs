using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Drawing;

/// <summary>Moves, turns and measures figures.</summary>
public static class Figures
{
    /// <summary>How far letters such as "g" reach below the base line, as a part of a capital's height.</summary>
    private const double DescentPart = 0.3;

    /// <summary>The same figures, all of which show one thing.</summary>
    public static IEnumerable<Figure> Showing(string key, params IEnumerable<Figure> figures) => figures.Select(figure => figure with { Shows = key });

    /// <summary>The same figures elsewhere.</summary>
    public static ImmutableArray<Figure> Moved(ImmutableArray<Figure> figures, Step step) =>
        [.. figures.Select(figure => Moved(figure, step))];

    /// <summary>The same figures turned about the origin by quarter turns to the left, letters and insets too.</summary>
    public static ImmutableArray<Figure> Turned(ImmutableArray<Figure> figures, int quarters) =>
        [.. figures.Select(figure => Turned(figure, quarters))];

    /// <summary>The same figures stretched from the origin; letters and lines keep their shape and take the smaller factor.</summary>
    /// <param name="figures">What is stretched.</param>
    /// <param name="across">By how much from left to right; above zero.</param>
    /// <param name="up">By how much from bottom to top.</param>
    public static ImmutableArray<Figure> Stretched(ImmutableArray<Figure> figures, double across, double up) =>
        [.. figures.Select(figure => new Stretch(across, up).Of(figure))];

    /// <summary>The smallest upright box that holds the figures, text included; line widths are not counted.</summary>
    /// <exception cref="InvalidOperationException">There are no figures.</exception>
    public static Box BoundsOf(ImmutableArray<Figure> figures) =>
        figures.Select(BoundsOf).Aggregate((first, second) => first.Joined(second));

    /// <summary>The smallest upright box that holds a figure; of an inset, its window.</summary>
    public static Box BoundsOf(Figure figure) => figure switch
    {
        Stroke stroke => Box.Holding(stroke.Points),
        Tint tint => tint.Outline.Bounds,
        Lettering lettering => Box.Holding(CornersOf(lettering)),
        Inset inset => new(
            inset.At.X, inset.At.Y, inset.At.X + (inset.Window.WidthMm * inset.Scale), inset.At.Y + (inset.Window.HeightMm * inset.Scale)),
        _ => throw Unknown(figure),
    };

    /// <summary>The four corners of the box round a text, turned as the text is, from its lower left one to the left.</summary>
    public static ImmutableArray<Point> CornersOf(Lettering lettering)
    {
        var widthMm = TextWidth.Of(lettering);
        var (sine, cosine) = Math.SinCos(lettering.TurnDegrees * Math.PI / 180);
        var along = new Step(cosine, sine);
        var left = StartOf(lettering, widthMm) - (along.Left * (DescentPart * lettering.HeightMm));
        var up = along.Left * ((1 + DescentPart) * lettering.HeightMm);
        return [left, left + (along * widthMm), left + (along * widthMm) + up, left + up];
    }

    /// <summary>Where the base line of a text begins.</summary>
    public static Point StartOf(Lettering lettering) => StartOf(lettering, TextWidth.Of(lettering));

    private static Point StartOf(Lettering lettering, double widthMm)
    {
        var (sine, cosine) = Math.SinCos(lettering.TurnDegrees * Math.PI / 180);
        var part = lettering.Anchor switch { TextAnchor.Left => 0, TextAnchor.Middle => 0.5, _ => 1 };
        return lettering.At - (new Step(cosine, sine) * (part * widthMm));
    }

    private static Figure Moved(Figure figure, Step step) => figure switch
    {
        Stroke stroke => stroke with { Points = [.. stroke.Points.Select(point => point + step)] },
        Tint tint => tint with { Outline = tint.Outline.MovedBy(step) },
        Lettering lettering => lettering with { At = lettering.At + step },
        Inset inset => inset with { At = inset.At + step },
        _ => throw Unknown(figure),
    };

    private static Figure Turned(Figure figure, int quarters) => figure switch
    {
        Stroke stroke => stroke with { Points = [.. stroke.Points.Select(point => Turn.Quarters(point, quarters))] },
        Tint tint => tint with { Outline = tint.Outline.Turned(quarters) },
        Lettering lettering => lettering with
        {
            At = Turn.Quarters(lettering.At, quarters),
            TurnDegrees = (((lettering.TurnDegrees + (90 * quarters)) % 360) + 360) % 360,
        },
        Inset inset => TurnedInset(inset, quarters),
        _ => throw Unknown(figure),
    };

    private static Inset TurnedInset(Inset inset, int quarters)
    {
        var window = Outline.Of(inset.Window).Turned(quarters).Bounds;
        var corner = Turn.Quarters(inset.Window.LowerLeft, quarters);
        return inset with
        {
            Figures = Turned(inset.Figures, quarters),
            Window = window,
            At = Turn.Quarters(inset.At, quarters) + ((window.LowerLeft - corner) * inset.Scale),
        };
    }

    internal static ArgumentException Unknown(Figure figure) => new($"A figure of an unknown kind: {figure.GetType().Name}.", nameof(figure));
}
