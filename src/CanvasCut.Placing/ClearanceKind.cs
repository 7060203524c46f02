namespace CanvasCut.Placing;

/// <summary>What a distance is kept for.</summary>
public enum ClearanceKind
{
    /// <summary>The mounted outline and the top's edges.</summary>
    Margin,

    /// <summary>The mounted outline and a keep-out.</summary>
    KeepOut,

    /// <summary>A part and what is on the top already.</summary>
    Fixture,

    /// <summary>What is too high and the swing of the boom.</summary>
    Boom,

    /// <summary>Two carriers with all that holds them.</summary>
    Between,

    /// <summary>A tube and an edge of the carrier.</summary>
    TubeEdge,

    /// <summary>A tube and a zipper.</summary>
    TubeZipper,

    /// <summary>A tube and what holds an edge in the place of a zipper.</summary>
    TubeMount,

    /// <summary>A tube and a pocket.</summary>
    TubePocket,

    /// <summary>A tube and a strip's seam.</summary>
    TubeStrip,

    /// <summary>A tube and the junction box.</summary>
    TubeBox,

    /// <summary>A tube and the cells.</summary>
    TubeCells,
}
