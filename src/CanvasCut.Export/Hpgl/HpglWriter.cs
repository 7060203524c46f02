using System.Globalization;
using CanvasCut.Drawing;
using CanvasCut.Export.Common;
using CanvasCut.Geometry;

namespace CanvasCut.Export.Hpgl;

/// <summary>Writes a sheet for a pen plotter or cutter in HP-GL: 40 units a millimetre, whole numbers, no scaling.</summary>
/// <remarks>
/// One pen a role, in the order of <see cref="PenOf"/> reversed, so that what pen 1 cuts comes loose last. A place is right
/// to 0.0125 mm each way. HP-GL/2 takes whole numbers to 1073741823 by its manual, and devices with 24-bit numbers to
/// 8388607, 209 m (from memory); devices before it stop at 32767, see <see cref="OldReachMm"/>. Text is written by the
/// device's own letters, made as wide as the sheet expects. Grey areas are left out. Source: Hewlett-Packard, PCL 5
/// Printer Language Technical Reference Manual, part II, "An Introduction to HP-GL/2 Vector Graphics".
/// </remarks>
public static class HpglWriter
{
    /// <summary>How far a device with 16-bit numbers can draw from its origin, in millimetres.</summary>
    public const double OldReachMm = 32767 / UnitsInMm;

    private const double UnitsInMm = 40;
    private const double LargestNumber = 8388607;

    /// <summary>Ends a text; it stands in none.</summary>
    private const char TextEnd = '~';

    /// <summary>How far the device's letters stand apart, in widths of a letter.</summary>
    private const double LetterPitch = 1.5;

    private static readonly LineRole[] ByPen = [LineRole.Cut, LineRole.Stitch, LineRole.Fold, LineRole.Mark, LineRole.Grain, LineRole.Note];

    /// <summary>The pen of a role: cut 1, stitch 2, fold 3, mark 4, grain 5, note and all text 6.</summary>
    public static int PenOf(LineRole role) => Array.IndexOf(ByPen, role) + 1;

    /// <summary>Writes one sheet. The same sheet gives the same characters every time.</summary>
    /// <exception cref="ArgumentException">The sheet reaches beyond what HP-GL/2 can number, or holds an inset.</exception>
    public static void Write(Sheet sheet, TextWriter output)
    {
        if (sheet.Figures.Any(figure => figure is Inset))
        {
            throw new ArgumentException("HP-GL has no windows.", nameof(sheet));
        }

        Order(output, $"IN;DT{TextEnd}");
        foreach (var role in ByPen.Reverse())
        {
            Order(output, Invariant($"SP{PenOf(role)}"));
            foreach (var words in sheet.Figures.OfType<Lettering>().Where(words => role == LineRole.Note && !string.IsNullOrWhiteSpace(words.Text)))
            {
                Write(words, output);
            }

            foreach (var stroke in sheet.Figures.OfType<Stroke>().Where(stroke => stroke.Role == role))
            {
                Write(stroke, output);
            }
        }

        Order(output, "PU;SP0");
    }

    private static void Write(Stroke stroke, TextWriter output)
    {
        var onward = stroke.IsClosed ? stroke.Points.Skip(1).Append(stroke.Points[0]) : stroke.Points.Skip(1);
        Order(output, $"PU{Place(stroke.Points[0])}");
        Order(output, $"PD{string.Join(',', onward.Select(Place))}");
    }

    private static void Write(Lettering words, TextWriter output)
    {
        const double MmInCentimetre = 10;
        var text = SevenBitText.Of(words.Text).Replace(TextEnd, '-');
        var width = TextWidth.Of(words) / text.Length / LetterPitch;
        var (sine, cosine) = Math.SinCos(words.TurnDegrees * Math.PI / 180);
        Order(output, $"PU{Place(Figures.StartOf(words))}");
        Order(output, Invariant($"SI{width / MmInCentimetre:0.####},{words.HeightMm / MmInCentimetre:0.####}"));
        Order(output, Invariant($"DI{Plain(cosine):0.####},{Plain(sine):0.####}"));
        Order(output, $"LB{text}{TextEnd}");
    }

    private static void Order(TextWriter output, string order)
    {
        output.Write(order);
        output.Write(";\n");
    }

    private static string Place(Point point) => Invariant($"{Units(point.X)},{Units(point.Y)}");

    private static int Units(double mm)
    {
        var units = Math.Round(mm * UnitsInMm);
        return Math.Abs(units) <= LargestNumber
            ? (int)units
            : throw new ArgumentException("The sheet reaches beyond what HP-GL/2 can number.", nameof(mm));
    }

    private static double Plain(double value) => Math.Round(value, 4) + 0.0;

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
