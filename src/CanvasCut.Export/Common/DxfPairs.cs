using System.Globalization;
using CanvasCut.Geometry;

namespace CanvasCut.Export.Common;

/// <summary>Writes the pairs of group code and value that a DXF file consists of.</summary>
/// <param name="output">Where they go.</param>
/// <param name="unitMm">The file's unit in millimetres.</param>
/// <param name="form">How a number is written: "0." and a sign for each decimal.</param>
internal sealed class DxfPairs(TextWriter output, double unitMm = 1, string form = "0.0########")
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

    /// <summary>A number with a point and no exponent, as old readers want it.</summary>
    public DxfPairs Number(int code, double value)
    {
        var rounded = Math.Round(value, form.Length - "0.".Length);

        // Added to minus zero, zero takes its sign away.
        return Text(code, (rounded + 0.0).ToString(form, CultureInfo.InvariantCulture));
    }

    /// <summary>A length in the file's unit.</summary>
    public DxfPairs Length(int code, double lengthMm) => Number(code, lengthMm / unitMm);

    /// <summary>A place in the plane, in the file's unit: its X at the code, Y ten above it.</summary>
    public DxfPairs FlatPlace(int code, Point place) => Length(code, place.X).Length(code + 10, place.Y);

    /// <summary>A place: its X at the code, Y ten and Z twenty above it.</summary>
    public DxfPairs Place(int code, Point place) => FlatPlace(code, place).Number(code + 20, 0);
}
