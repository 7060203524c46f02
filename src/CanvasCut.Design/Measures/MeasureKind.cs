namespace CanvasCut.Design;

/// <summary>What a measure of the sheet is taken between.</summary>
public enum MeasureKind
{
    /// <summary>Straight between the ends of a bow.</summary>
    Chord,

    /// <summary>Along the cloth over a bow, end to end.</summary>
    Girth,

    /// <summary>From the straight line between the ends of a bow up to the cloth's middle.</summary>
    Crown,

    /// <summary>Along the port edge from the first bow.</summary>
    Port,

    /// <summary>Along the starboard edge from the first bow.</summary>
    Starboard,

    /// <summary>Straight from the port end of the bow before to the starboard end of this one.</summary>
    DiagonalFromPort,

    /// <summary>Straight from the starboard end of the bow before to the port end of this one.</summary>
    DiagonalFromStarboard,

    /// <summary>Straight from the port end of the first bow to the starboard end of the last.</summary>
    OverallFromPort,

    /// <summary>Straight from the starboard end of the first bow to the port end of the last.</summary>
    OverallFromStarboard,

    /// <summary>Along the cloth on the centreline, from the top's forward edge to the bow.</summary>
    Station,

    /// <summary>Along the cloth on the centreline, from the top's forward edge to its aft edge.</summary>
    TopLength,

    /// <summary>Across along the cloth, from the top's port edge to its starboard edge.</summary>
    TopWidth,
}
