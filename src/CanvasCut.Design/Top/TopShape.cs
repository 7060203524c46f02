using System.Collections.Immutable;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>The measures of a top's outline, taken along the cloth.</summary>
/// <param name="Length">From the middle of the forward edge to that of the aft edge.</param>
/// <param name="Widths">How far it reaches to each side, forward to aft; at least one. Beyond the first and the last it runs straight on.</param>
public sealed record TopShape(Length Length, ImmutableArray<TopWidth> Widths)
{
    /// <summary>How the forward edge runs.</summary>
    public EdgeEnds Forward { get; init; } = EdgeEnds.Square;

    /// <summary>How the aft edge runs.</summary>
    public EdgeEnds Aft { get; init; } = EdgeEnds.Square;

    /// <summary>The corners.</summary>
    public TopCorners Corners { get; init; } = TopCorners.Sharp;

    /// <summary>Whether it has one width and four right angles.</summary>
    public bool IsRectangle => Widths.Length == 1 && Widths[0].Port.Equals(Widths[0].Starboard, Length.Zero) && Forward.IsSquare && Aft.IsSquare && Corners.AreSharp;

    /// <summary>A rectangle with the centreline in its middle.</summary>
    public static TopShape Rectangle(Length length, Length width) => new(length, [new(Length.Zero, width / 2, width / 2)]);
}

/// <summary>How far a top reaches to both sides at a station.</summary>
/// <param name="Station">From the middle of the forward edge.</param>
/// <param name="Port">From the centreline to the port edge.</param>
/// <param name="Starboard">From the centreline to the starboard edge.</param>
public sealed record TopWidth(Length Station, Length Port, Length Starboard)
{
    /// <summary>How far, halfway to the next station aft, the edges lie inside a straight line; negative outside.</summary>
    public Length HollowAft { get; init; }
}

/// <summary>How the forward or the aft edge runs: how much further aft than its middle its ends lie.</summary>
/// <param name="Port">The port end; negative when it lies further forward.</param>
/// <param name="Starboard">The starboard end.</param>
/// <param name="IsRound">Whether it is an arc through ends and middle, or straight from the middle to each end.</param>
public sealed record EdgeEnds(Length Port, Length Starboard, bool IsRound)
{
    /// <summary>Straight across.</summary>
    public static EdgeEnds Square { get; } = new(Length.Zero, Length.Zero, IsRound: false);

    /// <summary>Whether it is straight across.</summary>
    public bool IsSquare => Port.Millimeters == 0 && Starboard.Millimeters == 0;
}

/// <summary>A corner of a top.</summary>
/// <param name="Size">The radius of a rounded one; of a cut one how far from the corner each edge is cut; zero when sharp.</param>
/// <param name="IsCut">Whether it is cut straight, not rounded.</param>
public sealed record TopCorner(Length Size, bool IsCut)
{
    /// <summary>As the edges meet.</summary>
    public static TopCorner Sharp { get; } = new(Length.Zero, IsCut: false);
}

/// <summary>The corners of a top.</summary>
/// <param name="ForwardPort">Forward, to port.</param>
/// <param name="ForwardStarboard">Forward, to starboard.</param>
/// <param name="AftPort">Aft, to port.</param>
/// <param name="AftStarboard">Aft, to starboard.</param>
public sealed record TopCorners(TopCorner ForwardPort, TopCorner ForwardStarboard, TopCorner AftPort, TopCorner AftStarboard)
{
    /// <summary>All as the edges meet.</summary>
    public static TopCorners Sharp { get; } = new(TopCorner.Sharp, TopCorner.Sharp, TopCorner.Sharp, TopCorner.Sharp);

    /// <summary>Whether nothing is rounded or cut.</summary>
    public bool AreSharp => new[] { ForwardPort, ForwardStarboard, AftPort, AftStarboard }.All(corner => corner.Size.Millimeters == 0);
}
