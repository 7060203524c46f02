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

    /// <summary>ISO 216.</summary>
    public static PaperSize A3 { get; } = new("A3", 297, 420);

    /// <summary>ISO 216.</summary>
    public static PaperSize A0 { get; } = new("A0", 841, 1189);

    /// <summary>ANSI Y14.1 size A: 8.5 x 11 in.</summary>
    public static PaperSize Letter { get; } = new("Letter", 215.9, 279.4);

    /// <summary>ANSI Y14.1 size B: 11 x 17 in.</summary>
    public static PaperSize Tabloid { get; } = new("Tabloid", 279.4, 431.8);

    /// <summary>The American architects' size E: 36 x 48 in.</summary>
    public static PaperSize ArchE { get; } = new("Arch E", 914.4, 1219.2);

    /// <summary>The sizes known by name, from the home printer's to the copy shop's.</summary>
    public static ImmutableArray<PaperSize> Standard { get; } = [A4, A3, A0, Letter, Tabloid, ArchE];

    /// <summary>The size of a name, in capitals or not; null when there is none.</summary>
    public static PaperSize? Named(string name) =>
        Standard.FirstOrDefault(size => string.Equals(size.Name, name, StringComparison.OrdinalIgnoreCase));
}
