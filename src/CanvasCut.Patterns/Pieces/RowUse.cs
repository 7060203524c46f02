using CanvasCut.Design;

namespace CanvasCut.Patterns;

/// <summary>What a row of stitches does.</summary>
public enum RowKind
{
    /// <summary>Holds a hem of its own piece.</summary>
    Hem,

    /// <summary>Holds a turned edge down on what the piece is sewn to.</summary>
    Edge,

    /// <summary>Holds a zipper's tape.</summary>
    Zipper,

    /// <summary>Holds a flap on the carrier, or a tape on a flap.</summary>
    Mount,

    /// <summary>Closes a sleeve in its own piece.</summary>
    Sleeve,

    /// <summary>Holds what the panel is bonded to.</summary>
    Ground,

    /// <summary>Joins two widths.</summary>
    Felled,
}

/// <summary>What a row does, and when.</summary>
/// <param name="Kind">What it does.</param>
/// <param name="AfterFolds">How many of the piece's folds are made before it is sewn.</param>
/// <param name="Edge">The carrier's edge that is held there; null for other rows.</param>
/// <param name="Face">Rows of one seam with the same number hold the same two faces together: all rows of one edge.</param>
public sealed record RowUse(RowKind Kind, int AfterFolds, Side? Edge = null, int Face = 0);
