using CanvasCut.Language;

namespace CanvasCut.Patterns;

/// <summary>What a line on a piece shows, besides what is done there.</summary>
public enum LineShows
{
    /// <summary>Nothing that is written at it.</summary>
    Nothing,

    /// <summary>The fold that becomes the finished edge.</summary>
    FinishedEdge,

    /// <summary>The fold of the raw edge.</summary>
    TurnUnder,

    /// <summary>The fold of a mitre.</summary>
    Mitre,

    /// <summary>Where a strip is folded in half.</summary>
    FoldInHalf,

    /// <summary>Where a cap is folded over the end of a tape.</summary>
    FoldOverEnd,

    /// <summary>A pocket's mouth.</summary>
    Mouth,

    /// <summary>A pocket's leg.</summary>
    Leg,

    /// <summary>Where a zipper ends.</summary>
    ZipperEnd,

    /// <summary>Where a zipper starts.</summary>
    ZipperStart,

    /// <summary>Where a zipper starts with its pin.</summary>
    ZipperPin,

    /// <summary>Where a flap ends.</summary>
    FlapEnd,

    /// <summary>The panel's edge.</summary>
    PanelEdge,

    /// <summary>The cells.</summary>
    Cells,

    /// <summary>The junction box.</summary>
    JunctionBox,

    /// <summary>The hole for the cable.</summary>
    CableExit,

    /// <summary>The patch round that hole.</summary>
    ExitPatch,

    /// <summary>Foam tape under the panel.</summary>
    FoamTape,

    /// <summary>Webbing under the panel.</summary>
    Webbing,

    /// <summary>Webbing with foam tape on it.</summary>
    TapeOnWebbing,

    /// <summary>A coated patch under the panel.</summary>
    CoatedPatch,

    /// <summary>The boat's centreline.</summary>
    Centreline,

    /// <summary>The middle of a piece that does not lie on the centreline.</summary>
    Middle,

    /// <summary>What is cut out of a sleeve.</summary>
    Opening,

    /// <summary>The first of several centres of fasteners.</summary>
    Centres,

    /// <summary>Where two widths are joined.</summary>
    FelledSeam,

    /// <summary>Where the sewn edge of a weather strip lies.</summary>
    StripSeam,
}

/// <summary>Puts into words what a line shows.</summary>
internal static class LineText
{
    public static string Of(PieceLine line) => line.Shows switch
    {
        LineShows.FinishedEdge => Say.Of("fold: finished edge"),
        LineShows.TurnUnder => Say.Of("fold: turn under first"),
        LineShows.Mitre => Say.Of("fold: mitre"),
        LineShows.FoldInHalf => Say.Of("fold in half"),
        LineShows.FoldOverEnd => Say.Of("fold over the end"),
        LineShows.Mouth => Say.Of("mouth: finished edge"),
        LineShows.Leg => Say.Of("leg: fold and seam"),
        LineShows.ZipperEnd => Say.Of("zipper end"),
        LineShows.ZipperStart => Say.Of("zipper starts here"),
        LineShows.ZipperPin => Say.Of("zipper starts here: pin"),
        LineShows.FlapEnd => Say.Of("flap end"),
        LineShows.PanelEdge => line.Panel.IsOnly ? Say.Of("panel edge") : Say.Of($"edge of panel \"{line.Panel}\""),
        LineShows.Cells => Say.Of("cells: no stitch inside"),
        LineShows.JunctionBox => Say.Of("junction box"),
        LineShows.CableExit => Say.Of("cable exit"),
        LineShows.ExitPatch => Say.Of("cable exit patch"),
        LineShows.FoamTape => Say.Of("foam tape"),
        LineShows.Webbing => Say.Of("webbing"),
        LineShows.TapeOnWebbing => Say.Of("webbing, foam tape on it"),
        LineShows.CoatedPatch => Say.Of("coated patch"),
        LineShows.Centreline => Say.Of("centreline"),
        LineShows.Middle => Say.Of("middle"),
        LineShows.Opening => Say.Of("cut out"),
        LineShows.Centres => Say.Of($"{line.Count} centres"),
        LineShows.StripSeam => Say.Of("weather strip's sewn edge"),
        LineShows.FelledSeam => Say.Of("felled seam: sew here first"),
        _ => string.Empty,
    };
}
