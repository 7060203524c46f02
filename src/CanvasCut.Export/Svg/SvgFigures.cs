using System.Collections.Immutable;
using System.Security;
using System.Text;
using CanvasCut.Drawing;
using CanvasCut.Geometry;

namespace CanvasCut.Export.Svg;

/// <summary>Writes figures into a view whose upper left corner is SVG's origin.</summary>
internal sealed class SvgFigures(TextWriter output, Box view)
{
    public void Write(ImmutableArray<Figure> figures)
    {
        foreach (var figure in figures)
        {
            Write(figure);
        }
    }

    private void Write(Figure figure)
    {
        switch (figure)
        {
            case Stroke stroke:
                Write(stroke);
                break;
            case Tint tint:
                output.Write($"<path d=\"{Path(tint.Outline.Corners, isClosed: true)}\" fill=\"{Grey(tint.Darkness)}\" stroke=\"none\"{Shown(tint)}/>\n");
                break;
            case Lettering lettering:
                Write(lettering);
                break;
            case Inset inset:
                Write(inset);
                break;
            default:
                throw new ArgumentException($"SVG has no way to draw a {figure.GetType().Name}.", nameof(figure));
        }
    }

    private void Write(Stroke stroke)
    {
        var style = LineStyle.Of(stroke.Role);
        var role = RoleName(stroke.Role);
        output.Write($"<path class=\"{role}\" data-role=\"{role}\"{Shown(stroke)} stroke-width=\"{SvgNumber.Text(style.WidthMm)}\"");
        if (!style.DashesMm.IsEmpty)
        {
            output.Write($" stroke-dasharray=\"{string.Join(' ', style.DashesMm.Select(SvgNumber.Text))}\"");
        }

        output.Write($" d=\"{Path(stroke.Points, stroke.IsClosed)}\"/>\n");
    }

    private void Write(Lettering lettering)
    {
        if (string.IsNullOrWhiteSpace(lettering.Text))
        {
            return;
        }

        var (x, y) = (SvgNumber.Text(lettering.At.X - view.Left), SvgNumber.Text(view.Top - lettering.At.Y));
        output.Write($"<text x=\"{x}\" y=\"{y}\" font-size=\"{SvgNumber.Text(TextWidth.EmMm(lettering.HeightMm))}\"");
        output.Write(lettering.IsBold ? " font-weight=\"bold\"" : string.Empty);
        output.Write(lettering.Anchor switch
        {
            TextAnchor.Left => string.Empty,
            TextAnchor.Middle => " text-anchor=\"middle\"",
            _ => " text-anchor=\"end\"",
        });
        output.Write(lettering.TurnDegrees == 0 ? string.Empty : $" transform=\"rotate({SvgNumber.Text(-lettering.TurnDegrees)} {x} {y})\"");
        output.Write($" textLength=\"{SvgNumber.Text(TextWidth.Of(lettering))}\" lengthAdjust=\"spacingAndGlyphs\"");
        output.Write($" fill=\"#000\" stroke=\"none\"{Shown(lettering)} xml:space=\"preserve\">{SecurityElement.Escape(lettering.Text)}</text>\n");
    }

    private void Write(Inset inset)
    {
        var (widthMm, heightMm) = (inset.Window.WidthMm * inset.Scale, inset.Window.HeightMm * inset.Scale);
        var (x, y) = (SvgNumber.Text(inset.At.X - view.Left), SvgNumber.Text(view.Top - inset.At.Y - heightMm));
        output.Write($"<svg x=\"{x}\" y=\"{y}\" width=\"{SvgNumber.Text(widthMm)}\" height=\"{SvgNumber.Text(heightMm)}\"");
        output.Write($" viewBox=\"0 0 {SvgNumber.Text(inset.Window.WidthMm)} {SvgNumber.Text(inset.Window.HeightMm)}\"");

        // Rounding may make the two ratios differ in the last digit; "none" keeps the viewer from centring the rest.
        output.Write(" preserveAspectRatio=\"none\" overflow=\"hidden\">\n");
        new SvgFigures(output, inset.Window).Write(inset.Figures);
        output.Write("</svg>\n");
    }

    private static string Shown(Figure figure) => figure.Shows.Length == 0 ? string.Empty : $" data-shows=\"{SecurityElement.Escape(figure.Shows)}\"";

    private string Path(ImmutableArray<Point> points, bool isClosed)
    {
        var path = new StringBuilder();
        foreach (var point in points)
        {
            path.Append(path.Length == 0 ? 'M' : 'L');
            path.Append(SvgNumber.Text(point.X - view.Left)).Append(' ').Append(SvgNumber.Text(view.Top - point.Y));
        }

        return path.Append(isClosed ? "Z" : string.Empty).ToString();
    }

    private static string Grey(double darkness)
    {
        var level = (int)Math.Round(255 * (1 - Math.Clamp(darkness, 0, 1)));
        return $"#{level:x2}{level:x2}{level:x2}";
    }

    private static string RoleName(LineRole role) => role switch
    {
        LineRole.Cut => "cut",
        LineRole.Stitch => "stitch",
        LineRole.Fold => "fold",
        LineRole.Mark => "mark",
        LineRole.Grain => "grain",
        _ => "note",
    };
}
