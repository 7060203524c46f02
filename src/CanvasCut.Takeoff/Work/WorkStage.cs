namespace CanvasCut.Takeoff;

/// <summary>A part of the work, as it is headed on paper.</summary>
public enum WorkStage
{
    /// <summary>Measures and templates.</summary>
    Prepare,

    /// <summary>Cutting and marking.</summary>
    Cut,

    /// <summary>Sewing the carrier.</summary>
    Carrier,

    /// <summary>Bonding the panel.</summary>
    Bond,

    /// <summary>Making ready what will be sewn to the top.</summary>
    TopPieces,

    /// <summary>Marking the top from the carrier.</summary>
    Mark,

    /// <summary>Sewing to the top.</summary>
    Top,

    /// <summary>Fitting, wiring, testing.</summary>
    Fit,
}

/// <summary>What sort of work a step is.</summary>
public enum WorkKind
{
    /// <summary>Measuring, looking, trying.</summary>
    Look,

    /// <summary>Printing and joining paper.</summary>
    Paper,

    /// <summary>Cutting cloth.</summary>
    Cut,

    /// <summary>Marking.</summary>
    Mark,

    /// <summary>Sewing with the machine.</summary>
    Machine,

    /// <summary>Other work by hand.</summary>
    Hand,

    /// <summary>Bonding and leaving the bond alone.</summary>
    Bond,

    /// <summary>Electric work.</summary>
    Electric,
}
