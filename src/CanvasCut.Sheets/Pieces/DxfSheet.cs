using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Sheets;

/// <summary>All pieces of a job side by side on one sheet, as often as they are drawn, not as often as they are cut.</summary>
public static class DxfSheet
{
    private const double GapMm = 50;

    /// <summary>The pieces in a row from left to right, all on one base line.</summary>
    public static Sheet Of(ImmutableArray<PieceDrawing> drawings)
    {
        var figures = ImmutableArray.CreateBuilder<Figure>();
        var left = 0.0;
        foreach (var drawing in drawings)
        {
            figures.AddRange(Figures.Moved(drawing.Figures, new Step(left, 0)));
            left += drawing.Size.WidthMm + GapMm;
        }

        return new("pieces", Say.Of("All pieces"), left - GapMm, drawings.Max(drawing => drawing.Size.HeightMm), figures.ToImmutable());
    }
}
