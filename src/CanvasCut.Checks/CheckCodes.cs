using System.Collections.Immutable;

namespace CanvasCut.Checks;

/// <summary>The stable names of the checks; docs/checks.md tells of each.</summary>
public static class CheckCodes
{
    /// <summary>The mounted outline and the top's edges.</summary>
    public const string Margin = "fit.margin";

    /// <summary>The mounted outline and a keep-out.</summary>
    public const string KeepOut = "fit.keep-out";

    /// <summary>The panel and the bent sides of the frame.</summary>
    public const string BentSide = "fit.bent-side";

    /// <summary>A tube and a zipper.</summary>
    public const string TubeZipper = "tube.zipper";

    /// <summary>A tube and an edge of the carrier.</summary>
    public const string TubeEdge = "tube.edge";

    /// <summary>A tube and a pocket.</summary>
    public const string TubePocket = "tube.pocket";

    /// <summary>A tube and a strip's seam.</summary>
    public const string TubeStrip = "tube.strip";

    /// <summary>A tube and the junction box.</summary>
    public const string TubeBox = "tube.box";

    /// <summary>A tube and the cells.</summary>
    public const string TubeCells = "tube.cells";

    /// <summary>The arc across and the panel's smallest radius.</summary>
    public const string BendAthwart = "bend.athwart";

    /// <summary>A pocket and the cells.</summary>
    public const string PocketShade = "pocket.shade";

    /// <summary>Whether a pocket covers enough to hold.</summary>
    public const string PocketHold = "pocket.hold";

    /// <summary>A pocket and the zipper's end.</summary>
    public const string PocketZipper = "pocket.zipper";

    /// <summary>Two pockets on one edge.</summary>
    public const string PocketRoom = "pocket.room";

    /// <summary>A pocket and the hem of its mouth.</summary>
    public const string PocketMouth = "pocket.mouth";

    /// <summary>A strip and the cells.</summary>
    public const string StripShade = "strip.shade";

    /// <summary>The junction box and what lies over the panel.</summary>
    public const string BoxCover = "box.cover";

    /// <summary>The zipper wanted and the lengths on sale.</summary>
    public const string ZipperStock = "zipper.stock";

    /// <summary>A piece and the roll's width.</summary>
    public const string ClothWidth = "cloth.width";

    /// <summary>A seam's thickest crossing and what a machine sews through.</summary>
    public const string SeamLayers = "seam.layers";

    /// <summary>A piece and the plotter's roll.</summary>
    public const string PlotRoll = "plot.roll";

    /// <summary>All of them, in the order of the report.</summary>
    public static ImmutableArray<string> All { get; } =
    [
        Margin, KeepOut, BentSide, TubeZipper, TubeEdge, TubePocket, TubeStrip, TubeBox, TubeCells, BendAthwart,
        PocketShade, PocketHold, PocketMouth, PocketZipper, PocketRoom, StripShade, BoxCover, ZipperStock, ClothWidth,
        SeamLayers, PlotRoll,
    ];
}
