using System.Security;
using CanvasCut.Drawing;

namespace CanvasCut.Export.Svg;

/// <summary>Writes a sheet as SVG 1.1, true to size: one user unit is one millimetre.</summary>
/// <remarks>
/// Every line is black and has its role as class and <c>data-role</c>; what shows a known thing has its key as <c>data-shows</c>. Text carries its
/// own length, so that the
/// layout is the same with whatever font the viewer has. Coordinates are rounded to 0.0001 mm.
/// </remarks>
public static class SvgWriter
{
    /// <summary>Writes one sheet. The same sheet gives the same characters every time.</summary>
    public static void Write(Sheet sheet, TextWriter output)
    {
        var (width, height) = (SvgNumber.Text(sheet.WidthMm), SvgNumber.Text(sheet.HeightMm));
        output.Write("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        output.Write($"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}mm\" height=\"{height}mm\" viewBox=\"0 0 {width} {height}\">\n");
        output.Write($"<title>{SecurityElement.Escape(sheet.Title)}</title>\n");
        output.Write("<g fill=\"none\" stroke=\"#000\" stroke-linejoin=\"round\" font-family=\"Helvetica, Arial, sans-serif\">\n");
        new SvgFigures(output, new(0, 0, sheet.WidthMm, sheet.HeightMm)).Write(sheet.Figures);
        output.Write("</g>\n</svg>\n");
    }
}
