using CanvasCut.Drawing;
using CanvasCut.Export.Common;
using CanvasCut.Geometry;

namespace CanvasCut.Export.Dxf;

/// <summary>Writes a sheet as an ASCII DXF file of release 12 (AC1009), one layer a role.</summary>
/// <remarks>
/// Closed lines are closed polylines, two-point lines are LINE, text stands on the layer NOTE. Grey areas are left out:
/// a plotter cannot draw them. Coordinates are rounded to 1e-9 of the unit. The extents are those of the lines' points.
/// Arcs, where asked for, are bulges of a polyline and lie within <see cref="RoundedBox.SagittaMm"/> of the points.
/// </remarks>
public static class DxfWriter
{
    private const double MmInInch = 25.4;

    /// <summary>Writes one sheet. The same sheet gives the same characters every time.</summary>
    /// <exception cref="ArgumentException">An inset of the sheet hides part of its figures.</exception>
    public static void Write(Sheet sheet, DxfForm form, TextWriter output)
    {
        Figure[] figures = [.. DxfFlat.Of(sheet.Figures)];
        var points = figures.OfType<Stroke>().SelectMany(stroke => stroke.Points).ToList();
        var pairs = new DxfPairs(output, form.IsInInches ? MmInInch : 1);
        var tables = new DxfTables(pairs, form.IsInInches);
        tables.WriteHeader(points.Count > 0 ? Box.Holding(points) : new(0, 0, sheet.WidthMm, sheet.HeightMm));
        tables.WriteTables();
        pairs.Text(0, "SECTION").Text(2, "ENTITIES");
        foreach (var figure in figures)
        {
            Write(pairs, figure, form.HasArcs);
        }

        pairs.Text(0, "ENDSEC").Text(0, "EOF");
    }

    private static void Write(DxfPairs pairs, Figure figure, bool hasArcs)
    {
        switch (figure)
        {
            case Stroke { Points.Length: 2 } line:
                pairs.Text(0, "LINE").Text(8, DxfLayers.Of(line.Role)).Place(10, line.Points[0]).Place(11, line.Points[1]);
                break;
            case Stroke stroke:
                WritePolyline(pairs, stroke, hasArcs ? VerticesOf(BulgedLine.Of(stroke.Points, stroke.IsClosed)) : stroke.Points.Select(point => (point, 0.0)));
                break;
            case Lettering lettering when !string.IsNullOrWhiteSpace(lettering.Text):
                Write(pairs, lettering);
                break;
        }
    }

    /// <summary>Where each arc or straight edge begins, with its bulge.</summary>
    private static IEnumerable<(Point At, double Bulge)> VerticesOf(BulgedLine line)
    {
        var starts = line.Runs.Select(run => (line.Points[run.Start], run.Bulge));
        return line.IsClosed ? starts : starts.Append((line.Points[^1], 0));
    }

    private static void WritePolyline(DxfPairs pairs, Stroke stroke, IEnumerable<(Point At, double Bulge)> vertices)
    {
        var layer = DxfLayers.Of(stroke.Role);
        pairs.Text(0, "POLYLINE").Text(8, layer).Whole(66, 1).Place(10, new(0, 0)).Whole(70, stroke.IsClosed ? 1 : 0);
        foreach (var (at, bulge) in vertices)
        {
            pairs.Text(0, "VERTEX").Text(8, layer).Place(10, at);
            if (bulge != 0)
            {
                pairs.Number(42, bulge);
            }
        }

        pairs.Text(0, "SEQEND").Text(8, layer);
    }

    private static void Write(DxfPairs pairs, Lettering lettering)
    {
        pairs.Text(0, "TEXT").Text(8, DxfLayers.Of(LineRole.Note)).Place(10, Figures.StartOf(lettering));
        pairs.Length(40, lettering.HeightMm).Text(1, DxfText.Escaped(lettering.Text)).Number(50, lettering.TurnDegrees);
        if (lettering.Anchor != TextAnchor.Left)
        {
            pairs.Whole(72, lettering.Anchor == TextAnchor.Middle ? 1 : 2).Place(11, lettering.At);
        }
    }
}
