using System.Collections.Immutable;

namespace CanvasCut.Drawing;

/// <summary>How a line of a role looks on paper; told apart by width and dashes alone, never by colour.</summary>
/// <param name="WidthMm">The line's width, one of the ISO 128 series 0.18, 0.25, 0.35, 0.5, 0.7 mm.</param>
/// <param name="DashesMm">Lengths of dash, gap, dash, gap …; empty for a continuous line.</param>
public sealed record LineStyle(double WidthMm, ImmutableArray<double> DashesMm)
{
    private static readonly ImmutableDictionary<LineRole, LineStyle> ByRole = new Dictionary<LineRole, LineStyle>
    {
        [LineRole.Cut] = new(0.5, []),
        [LineRole.Stitch] = new(0.35, [3, 2]),
        [LineRole.Fold] = new(0.25, [12, 2, 2, 2]),
        [LineRole.Mark] = new(0.25, []),
        [LineRole.Grain] = new(0.35, []),
        [LineRole.Note] = new(0.18, []),
    }.ToImmutableDictionary();

    /// <summary>The style of a role.</summary>
    public static LineStyle Of(LineRole role) => ByRole[role];
}
