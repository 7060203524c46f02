using System.Collections.Immutable;

namespace CanvasCut.Drawing.Pages;

/// <summary>A size of paper, upright.</summary>
/// <param name="Name">What it is sold as.</param>
/// <param name="WidthMm">The shorter side.</param>
/// <param name="HeightMm">The longer side.</param>
public sealed record PaperSize(string Name, double WidthMm, double HeightMm)
{
    /// <summary>ISO 216.</summary>
    public static PaperSize A4 { get; } = new("A4", 210, 297);

    /// <summary>ANSI/ASME Y14.1 size A: 8.5 x 11 in.</summary>
    public static PaperSize Letter { get; } = new("Letter", 215.9, 279.4);

    /// <summary>The sizes known by name, from the home printer's to the copy shop's.</summary>
    /// <remarks>
    /// A0 to A4: ISO 216. Letter, Tabloid, ANSI C, D and E: ANSI/ASME Y14.1 sizes A to E. Arch D and Arch E: the American
    /// architects' 24 x 36 and 36 x 48 in. The job file knows the same names; a test holds the two against each other.
    /// </remarks>
    public static ImmutableArray<PaperSize> Standard { get; } =
    [
        A4,
        new("A3", 297, 420),
        new("A2", 420, 594),
        new("A1", 594, 841),
        new("A0", 841, 1189),
        Letter,
        new("Tabloid", 279.4, 431.8),
        new("ANSI C", 431.8, 558.8),
        new("ANSI D", 558.8, 863.6),
        new("ANSI E", 863.6, 1117.6),
        new("Arch D", 609.6, 914.4),
        new("Arch E", 914.4, 1219.2),
    ];

    /// <summary>The size of a name, in capitals or not; null when there is none.</summary>
    public static PaperSize? Named(string name) =>
        Standard.FirstOrDefault(size => string.Equals(size.Name, name, StringComparison.OrdinalIgnoreCase));
}
