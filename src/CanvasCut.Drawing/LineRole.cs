namespace CanvasCut.Drawing;

/// <summary>What a line tells the person who cuts and sews; every format draws each role its own way.</summary>
public enum LineRole
{
    /// <summary>Cut here.</summary>
    Cut,

    /// <summary>A row of stitches.</summary>
    Stitch,

    /// <summary>Fold here.</summary>
    Fold,

    /// <summary>Mark here: ticks, centre lines, where something else will lie.</summary>
    Mark,

    /// <summary>The direction of the cloth's warp.</summary>
    Grain,

    /// <summary>Only to read or look at: frames, dimension lines, leaders.</summary>
    Note,
}
