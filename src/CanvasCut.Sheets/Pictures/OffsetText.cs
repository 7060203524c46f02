using CanvasCut.Design;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Sheets;

/// <summary>Writes an offset with its side instead of a sign.</summary>
internal static class OffsetText
{
    /// <summary>As in "120 mm port".</summary>
    public static string Of(Length offset, PrintUnits units)
    {
        var side = Math.Abs(offset.Millimeters) < 0.05 ? string.Empty : offset.Millimeters < 0 ? Say.Of(" port") : Say.Of(" stbd");
        return LengthText.Of(Length.FromMillimeters(Math.Abs(offset.Millimeters)), units) + side;
    }
}
