using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>A strip of tape or webbing under the panel.</summary>
/// <param name="Box">What it covers, in the plan of the top.</param>
/// <param name="IsAthwart">Whether it runs across the boat.</param>
/// <param name="IsRim">Whether it runs along the panel's rim; otherwise from rim to rim under the cells.</param>
public sealed record BondStrip(Box Box, bool IsAthwart, bool IsRim)
{
    /// <summary>Along its run.</summary>
    public Length Length => Length.FromMillimeters(IsAthwart ? Box.WidthMm : Box.HeightMm);

    /// <summary>Across its run.</summary>
    public Length Width => Length.FromMillimeters(IsAthwart ? Box.HeightMm : Box.WidthMm);

    /// <summary>Its two long edges.</summary>
    public ImmutableArray<(Point From, Point To)> Edges => LinesInside(0);

    /// <summary>The two rows that hold it when it is sewn.</summary>
    public ImmutableArray<(Point From, Point To)> Rows => LinesInside(Math.Min(StitchRows.FromFold.Millimeters, Width.Millimeters / 3));

    private ImmutableArray<(Point From, Point To)> LinesInside(double byMm) => IsAthwart
        ? [(new(Box.Left, Box.Bottom + byMm), new(Box.Right, Box.Bottom + byMm)), (new(Box.Left, Box.Top - byMm), new(Box.Right, Box.Top - byMm))]
        : [(new(Box.Left + byMm, Box.Bottom), new(Box.Left + byMm, Box.Top)), (new(Box.Right - byMm, Box.Bottom), new(Box.Right - byMm, Box.Top))];
}
