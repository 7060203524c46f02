using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>Papers by name.</summary>
/// <remarks>A sizes: ISO 216. Letter, Tabloid, ANSI C, D, E: ANSI/ASME Y14.1 (A to E). Arch D and E, of the architectural series: 24 by 36 and 36 by
/// 48 in.</remarks>
internal static class PaperSizes
{
    private const string Roll = "roll ";
    private const double RollHeightMm = 5000;

    private static readonly (string Name, double WidthMm, double HeightMm)[] Known =
    [
        ("A4", 210, 297),
        ("A3", 297, 420),
        ("A2", 420, 594),
        ("A1", 594, 841),
        ("A0", 841, 1189),
        ("Letter", 215.9, 279.4),
        ("Tabloid", 279.4, 431.8),
        ("ANSI C", 431.8, 558.8),
        ("ANSI D", 558.8, 863.6),
        ("ANSI E", 863.6, 1117.6),
        ("Arch D", 609.6, 914.4),
        ("Arch E", 914.4, 1219.2),
    ];

    /// <summary>The names to choose from, for messages.</summary>
    public static IEnumerable<string> Names => [.. Known.Select(paper => paper.Name), "roll 914 mm"];

    /// <summary>A paper without margins and overlap, or null when there is none of that name.</summary>
    public static PaperSpec? Of(string name)
    {
        if (name.StartsWith(Roll, StringComparison.OrdinalIgnoreCase) && LengthText.Parse(name[Roll.Length..]).Value is { Millimeters: > 0 } width)
        {
            return Spec(Roll + name[Roll.Length..].Trim(), width.Millimeters, RollHeightMm);
        }

        return Known.Where(paper => paper.Name.Equals(name, StringComparison.OrdinalIgnoreCase))
            .Select(paper => Spec(paper.Name, paper.WidthMm, paper.HeightMm))
            .FirstOrDefault();
    }

    private static PaperSpec Spec(string name, double widthMm, double heightMm) =>
        new(name, Length.FromMillimeters(widthMm), Length.FromMillimeters(heightMm), Length.Zero, Length.Zero);
}
