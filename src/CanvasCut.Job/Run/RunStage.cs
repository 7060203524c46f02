namespace CanvasCut.Job;

/// <summary>What a run works out, each once.</summary>
public enum RunStage
{
    /// <summary>Where the carrier goes.</summary>
    Placed,

    /// <summary>The pieces to cut.</summary>
    Pieces,

    /// <summary>Whether it fits, holds and lasts.</summary>
    Checks,

    /// <summary>How the pieces lie on the roll, which takes longest.</summary>
    Plan,

    /// <summary>What to buy.</summary>
    Purchase,

    /// <summary>In which order to work.</summary>
    Work,

    /// <summary>The drawing of every piece.</summary>
    Drawings,

    /// <summary>The top from above.</summary>
    Placement,

    /// <summary>The top in space.</summary>
    Shape,
}
