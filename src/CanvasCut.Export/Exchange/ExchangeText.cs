using CanvasCut.Export.Common;
using CanvasCut.Geometry;

namespace CanvasCut.Export.Exchange;

/// <summary>Writes texts on one layer.</summary>
internal sealed class ExchangeText(DxfPairs pairs, int layer)
{
    private const double HeightMm = 2.5;
    private const double PitchMm = 4;

    /// <summary>Lines of text one below the other.</summary>
    public void Column(Point top, IEnumerable<string> lines)
    {
        foreach (var (row, line) in lines.Index())
        {
            Line(line, top - new Step(0, row * PitchMm), HeightMm, 0);
        }
    }

    public void Line(string text, Point at, double heightMm, double turnDegrees) =>
        pairs.Text(0, "TEXT").Whole(8, layer).FlatPlace(10, at).Length(40, heightMm).Number(50, turnDegrees)
            .Text(1, SevenBitText.Of(text)).Text(7, "STANDARD");
}
