using UnitsNet;

namespace CanvasCut.Design;

/// <summary>How it is sewn.</summary>
/// <param name="StitchLength">From hole to hole.</param>
/// <param name="Thread">What to ask the shop for.</param>
/// <param name="Rows">Rows of stitches along hems, zippers and pocket legs.</param>
public sealed record SewingSpec(Length StitchLength, string Thread, int Rows);

/// <summary>The paper the templates are printed on.</summary>
/// <param name="Name">Such as A4, Letter or roll 914 mm.</param>
/// <param name="Width">The shorter side, or a roll's width.</param>
/// <param name="Height">The longer side, or how much of a roll one sheet takes.</param>
/// <param name="Margin">What the printer leaves blank along every edge.</param>
/// <param name="Overlap">How far neighbouring pages repeat each other.</param>
/// <param name="Readings">What the printer makes of the 100 mm square; null when it is taken to be true.</param>
public sealed record PaperSpec(string Name, Length Width, Length Height, Length Margin, Length Overlap, PrintReadings? Readings = null);

/// <summary>How the DXF file for a shop's cutter is written.</summary>
/// <param name="Unit">Its unit.</param>
/// <param name="HasArcs">Whether rounded corners and circles are arcs; else they are points.</param>
/// <param name="IsOneFilePerPiece">Whether each piece has a file of its own; else all stand side by side in one.</param>
public sealed record DxfSpec(DxfUnit Unit, bool HasArcs, bool IsOneFilePerPiece);

/// <summary>The unit of a DXF file.</summary>
public enum DxfUnit
{
    /// <summary>Millimetres.</summary>
    Millimetre,

    /// <summary>Inches.</summary>
    Inch,
}

/// <summary>What a copy shop's or a sewing loft's plotter draws.</summary>
/// <param name="RollWidth">The width of its paper; null for no roll.</param>
/// <param name="SingleStroke">Whether letters are plain lines for a pen or a knife.</param>
public sealed record PlotSpec(Length? RollWidth, bool SingleStroke);

/// <summary>The limits that the checks hold the job against.</summary>
/// <param name="BendFactor">A radius must be at least so many times the panel's smallest.</param>
/// <param name="TubeClearance">Between a tube and what must not lie on one.</param>
/// <param name="CellMargin">Between a tube and the nearest cell.</param>
/// <param name="ShadeGap">Between cloth over the panel and the nearest cell.</param>
/// <param name="Shape">What is allowed of the shape of cloth and carrier.</param>
/// <param name="SewnThickness">The most that a domestic machine sews through.</param>
public sealed record LimitSpec(double BendFactor, Length TubeClearance, Length CellMargin, Length ShadeGap, ShapeLimits Shape, Length SewnThickness)
{
    /// <summary>The clear strip between two carriers, with all that holds them, in which hands and zipper pulls need room.</summary>
    public Length BetweenCarriers { get; init; } = Length.FromMillimeters(50);

    /// <summary>The room to work between two carriers.</summary>
    public BetweenLimits Between { get; init; } = BetweenLimits.Usual;
}

/// <summary>Room to work between two carriers; all common practice, no source.</summary>
/// <param name="Pockets">Between the pockets of two carriers, for the machine's foot.</param>
/// <param name="Pulls">Round the start of a zipper, for two fingers and its pull.</param>
/// <param name="Hands">Beside an edge that is closed by hand.</param>
/// <param name="Cables">Round the place where a cable leaves.</param>
public sealed record BetweenLimits(Length Pockets, Length Pulls, Length Hands, Length Cables)
{
    /// <summary>What counts where the job says nothing.</summary>
    public static BetweenLimits Usual { get; } = new(Length.FromMillimeters(15), Length.FromMillimeters(50), Length.FromMillimeters(60), Length.FromMillimeters(40));
}

/// <summary>How far cloth and carrier may be from the shape they are drawn in.</summary>
/// <param name="ClothSag">How far the cloth is taken to sag between two bows where it was not measured, as a part of the span.</param>
/// <param name="EdgeGap">How far a panel may stand off a top that is curved both ways.</param>
/// <param name="ZipperPull">How far apart two halves of a zipper may lie and still be closed.</param>
/// <param name="Shrink">How much the carrier is taken to shrink in use, 0.01 for one per cent.</param>
/// <param name="Creep">How much it is taken to stretch in use, 0.01 for one per cent.</param>
public sealed record ShapeLimits(double ClothSag, Length EdgeGap, Length ZipperPull, double Shrink, double Creep);

/// <summary>Which units are printed first.</summary>
public enum PrintUnits
{
    /// <summary>Millimetres and inches.</summary>
    Both,

    /// <summary>Millimetres only.</summary>
    Metric,

    /// <summary>Inches only.</summary>
    Imperial,
}
