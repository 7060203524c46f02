using System.Globalization;
using CanvasCut.Geometry;

namespace CanvasCut.Export.Dxf;

/// <summary>Writes the pairs of group code and value that a DXF file consists of.</summary>
internal sealed class DxfPairs(TextWriter output)
{
    public DxfPairs Text(int code, string value)
    {
        output.Write(code.ToString(CultureInfo.InvariantCulture).PadLeft(3));
        output.Write('\n');
        output.Write(value);
        output.Write('\n');
        return this;
    }

    public DxfPairs Whole(int code, int value) => Text(code, value.ToString(CultureInfo.InvariantCulture));

    /// <summary>A number with up to nine decimals, a point and no exponent, as old readers want it.</summary>
    public DxfPairs Number(int code, double value)
    {
        var rounded = Math.Round(value, 9);
        return Text(code, rounded == 0 ? "0.0" : rounded.ToString("0.0########", CultureInfo.InvariantCulture));
    }

    /// <summary>A place: its X at the code, Y ten and Z twenty above it.</summary>
    public DxfPairs Place(int code, Point place) => Number(code, place.X).Number(code + 10, place.Y).Number(code + 20, 0);
}
