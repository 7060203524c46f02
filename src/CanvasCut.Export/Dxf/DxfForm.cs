namespace CanvasCut.Export.Dxf;

/// <summary>How a DXF file is written.</summary>
/// <param name="IsInInches">Whether its unit is the inch; else the millimetre.</param>
/// <param name="HasArcs">Whether arcs held as points are written as arcs.</param>
public sealed record DxfForm(bool IsInInches, bool HasArcs)
{
    /// <summary>In millimetres, curves as points.</summary>
    public static DxfForm Plain { get; } = new(IsInInches: false, HasArcs: false);
}
