using CanvasCut.Drawing;
using CanvasCut.Geometry;

namespace CanvasCut.Export.Dxf;

/// <summary>Writes a sheet as an ASCII DXF file of release 12 (AC1009), in millimetres, one layer a role.</summary>
/// <remarks>
/// Closed lines are closed polylines, two-point lines are LINE, text stands on the layer NOTE. Grey areas are left out:
/// a plotter cannot draw them. Coordinates are rounded to 1e-9 mm. The extents are those of the lines.
/// </remarks>
public static class DxfWriter
{
    /// <summary>Writes one sheet. The same sheet gives the same characters every time.</summary>
    /// <exception cref="ArgumentException">An inset of the sheet hides part of its figures.</exception>
    public static void Write(Sheet sheet, TextWriter output)
    {
        Figure[] figures = [.. DxfFlat.Of(sheet.Figures)];
        var points = figures.OfType<Stroke>().SelectMany(stroke => stroke.Points).ToList();
        var pairs = new DxfPairs(output);
        var tables = new DxfTables(pairs);
        tables.WriteHeader(points.Count > 0 ? Box.Holding(points) : new(0, 0, sheet.WidthMm, sheet.HeightMm));
        tables.WriteTables();
        pairs.Text(0, "SECTION").Text(2, "ENTITIES");
        foreach (var figure in figures)
        {
            Write(pairs, figure);
        }

        pairs.Text(0, "ENDSEC").Text(0, "EOF");
    }

    private static void Write(DxfPairs pairs, Figure figure)
    {
        switch (figure)
        {
            case Stroke { Points.Length: 2 } line:
                pairs.Text(0, "LINE").Text(8, DxfLayers.Of(line.Role)).Place(10, line.Points[0]).Place(11, line.Points[1]);
                break;
            case Stroke stroke:
                Write(pairs, stroke);
                break;
            case Lettering lettering when !string.IsNullOrWhiteSpace(lettering.Text):
                Write(pairs, lettering);
                break;
        }
    }

    private static void Write(DxfPairs pairs, Stroke stroke)
    {
        var layer = DxfLayers.Of(stroke.Role);
        pairs.Text(0, "POLYLINE").Text(8, layer).Whole(66, 1).Place(10, new(0, 0)).Whole(70, stroke.IsClosed ? 1 : 0);
        foreach (var point in stroke.Points)
        {
            pairs.Text(0, "VERTEX").Text(8, layer).Place(10, point);
        }

        pairs.Text(0, "SEQEND").Text(8, layer);
    }

    private static void Write(DxfPairs pairs, Lettering lettering)
    {
        pairs.Text(0, "TEXT").Text(8, DxfLayers.Of(LineRole.Note)).Place(10, Figures.StartOf(lettering));
        pairs.Number(40, lettering.HeightMm).Text(1, DxfText.Escaped(lettering.Text)).Number(50, lettering.TurnDegrees);
        if (lettering.Anchor != TextAnchor.Left)
        {
            pairs.Whole(72, lettering.Anchor == TextAnchor.Middle ? 1 : 2).Place(11, lettering.At);
        }
    }
}
