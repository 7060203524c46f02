namespace CanvasCut.Nesting;

/// <summary>What shows that no layout can be shorter.</summary>
public enum BoundKind
{
    /// <summary>The pieces' area, with half the gap round each, over the strip's width.</summary>
    Area,

    /// <summary>One piece reaches so far in every turn.</summary>
    LongestPiece,

    /// <summary>Pieces that are too wide to lie beside each other add up along the strip.</summary>
    ChordsAlong,

    /// <summary>Pieces that are too long to lie behind each other add up across the strip.</summary>
    ChordsAcross,

    /// <summary>Pieces that cannot pass each other lie in a row, in whatever order.</summary>
    Row,

    /// <summary>Every way to lay the pieces that could matter was tried.</summary>
    Tried,
}

/// <summary>A length that no layout can stay below.</summary>
/// <param name="LengthMm">The length.</param>
/// <param name="Kind">What shows it.</param>
public sealed record LengthBound(double LengthMm, BoundKind Kind);
