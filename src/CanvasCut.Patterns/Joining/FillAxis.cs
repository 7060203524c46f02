using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Patterns;

/// <summary>The direction across the warp: X when the warp runs fore and aft, Y when it runs athwart.</summary>
/// <param name="Warp">Which way the warp runs.</param>
internal sealed record FillAxis(WarpDirection Warp)
{
    private bool IsX => Warp == WarpDirection.ForeAft;

    /// <summary>What a box covers of the axis.</summary>
    public (double From, double To) Span(Box box) => IsX ? (box.Left, box.Right) : (box.Bottom, box.Top);

    /// <summary>All that lies before a place on the axis.</summary>
    public HalfPlane Before(double atMm) => IsX ? new(new(atMm, 0), new(0, 1)) : new(new(0, atMm), new(-1, 0));

    /// <summary>All that lies after a place on the axis.</summary>
    public HalfPlane After(double atMm) => IsX ? new(new(atMm, 0), new(0, -1)) : new(new(0, atMm), new(1, 0));

    /// <summary>What the first and the last of several widths lie nearest to.</summary>
    public (string First, string Last) EndNames => IsX ? (Say.Of("port"), Say.Of("starboard")) : (Say.Of("aft"), Say.Of("forward"));
}
