using System.Collections.Frozen;
using System.Globalization;
using System.Text;

namespace CanvasCut.Drawing;

/// <summary>The letters that can be printed, and how wide each is.</summary>
/// <remarks>Kept as data so that layout is pure arithmetic: no font is loaded to find out where a word ends.</remarks>
public static class LetterTable
{
    /// <summary>The height of a capital letter as a part of the em (the font's nominal size): 1434/2048.</summary>
    public const double CapitalPart = 1434 / UnitsInEm;

    private const double UnitsInEm = 2048;

    private static readonly FrozenDictionary<Rune, (int Regular, int Bold)> Widths = Read();

    private static readonly (int Regular, int Bold) WidthOfUnknown = Widths[new Rune('m')];

    /// <summary>Every character that can be printed, in the order of their code points.</summary>
    public static IEnumerable<Rune> Characters => Widths.Keys.Order();

    /// <summary>Whether a character can be printed; one that cannot takes the width of "m".</summary>
    public static bool Has(Rune character) => Widths.ContainsKey(character);

    /// <summary>How far a character moves the pen, as a part of the em.</summary>
    internal static double EmsOf(Rune character, bool isBold)
    {
        var (regular, bold) = Widths.GetValueOrDefault(character, WidthOfUnknown);
        return (isBold ? bold : regular) / UnitsInEm;
    }

    private static FrozenDictionary<Rune, (int Regular, int Bold)> Read()
    {
        using var data = typeof(LetterTable).Assembly.GetManifestResourceStream("letter-widths.txt")!;
        using var reader = new StreamReader(data, Encoding.UTF8);
        return reader.ReadToEnd()
            .Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Where(line => line[0] != '#')
            .Select(line => line.Split(' '))
            .ToFrozenDictionary(
                row => new Rune(int.Parse(row[0], NumberStyles.HexNumber, CultureInfo.InvariantCulture)),
                row => (int.Parse(row[1], CultureInfo.InvariantCulture), int.Parse(row[2], CultureInfo.InvariantCulture)));
    }
}
