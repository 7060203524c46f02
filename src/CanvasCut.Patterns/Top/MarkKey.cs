using CanvasCut.Design;

namespace CanvasCut.Patterns;

/// <summary>Of what a mark on the top is.</summary>
public enum MarkThing
{
    /// <summary>The carrier.</summary>
    Carrier,

    /// <summary>The panel.</summary>
    Panel,

    /// <summary>What holds an edge.</summary>
    Fastening,

    /// <summary>A corner pocket.</summary>
    Pocket,

    /// <summary>A weather strip.</summary>
    Strip,
}

/// <summary>Which place on it.</summary>
public enum MarkSpot
{
    /// <summary>A corner.</summary>
    Corner,

    /// <summary>An end of the line along which both halves meet, a zipper's chain.</summary>
    Line,

    /// <summary>An end of the outer edge.</summary>
    OuterEdge,

    /// <summary>The fastener at an end.</summary>
    Fastener,

    /// <summary>The end of a leg.</summary>
    Leg,

    /// <summary>An end of the seam.</summary>
    Seam,
}

/// <summary>Which mark on the top it is.</summary>
/// <param name="Thing">Of what.</param>
/// <param name="Spot">Which place on it.</param>
/// <param name="Edge">The edge of what has one.</param>
/// <param name="Corner">The corner of what has one.</param>
/// <param name="End">The end it is nearest to, of what has ends.</param>
public sealed record MarkKey(MarkThing Thing, MarkSpot Spot, Side? Edge = null, Corner? Corner = null, Side? End = null)
{
    /// <summary>Which of several panels on one carrier it is a mark of; nothing for other marks.</summary>
    public MountingName Panel { get; init; }

    /// <summary>As in fastening-forward-line-port, the same in every language. It is made here and nowhere else, and nothing finds a mark by it.</summary>
    public string Id => string.Join('-', Parts());

    /// <inheritdoc/>
    public override string ToString() => Id;

    private IEnumerable<string> Parts()
    {
        if (!Panel.IsOnly)
        {
            yield return Panel.Text;
        }

        yield return Thing switch
        {
            MarkThing.Carrier => "carrier",
            MarkThing.Panel => "panel",
            MarkThing.Fastening => "fastening",
            MarkThing.Pocket => "pocket",
            _ => "strip",
        };
        if (Edge is { } edge)
        {
            yield return Words.Id(edge);
        }

        if (Corner is { } corner && Thing == MarkThing.Pocket)
        {
            yield return corner.Id;
        }

        yield return Spot switch
        {
            MarkSpot.Corner => "corner",
            MarkSpot.Line => "line",
            MarkSpot.OuterEdge => "outer-edge",
            MarkSpot.Fastener => "fastener",
            MarkSpot.Leg => "leg",
            _ => "seam",
        };
        if (Corner is { } at && Thing != MarkThing.Pocket)
        {
            yield return at.Id;
        }

        if (End is { } end)
        {
            yield return Words.Id(end);
        }
    }
}
