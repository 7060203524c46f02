using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>What holds one edge of the carrier, where it lies on the top: a zipper, or a flap with something on it.</summary>
public abstract record EdgePlace(Side Side)
{
    /// <summary>What kind it is.</summary>
    public abstract MountKind Kind { get; }

    /// <summary>All of it, the part under the carrier too.</summary>
    public abstract Box Band { get; init; }

    /// <summary>
    /// Where the half on the carrier and the half on the top meet, in millimetres: of an end in the plan, of a side as <see cref="AsEnd"/>
    /// has it.
    /// </summary>
    public abstract double LineY { get; }

    /// <summary>From end to end.</summary>
    public abstract Length Run { get; }

    /// <summary>From each finished corner of the carrier to its end; a zipper may start further in.</summary>
    public abstract Length Setback { get; }

    /// <summary>From the carrier's corner to its first or its last end; see <see cref="EndNames"/>.</summary>
    public virtual Length SetbackAt(bool first) => Setback;

    /// <summary>Whether both halves must come out equally long; what is adjusted as it is closed, or has gaps, need not.</summary>
    public bool MustMatch => Kind is not (MountKind.HookAndLoop or MountKind.Lacing or MountKind.Sleeve);

    /// <summary>As in "forward zipper".</summary>
    public string Name => Say.Of($"{Words.Of(Side)} {Words.Of(Kind)}");

    /// <summary>Whether it is the forward or the aft edge.</summary>
    public bool IsEnd => Side is Side.Forward or Side.Aft;

    /// <summary>Away from the carrier, as <see cref="AsEnd"/> has it: 1 forward or to starboard, -1 aft or to port.</summary>
    public int Outward => EdgeFrame.EndOf(Side) == Side.Forward ? 1 : -1;

    /// <summary>What its ends are called, in the order of everything along it.</summary>
    public (string First, string Last) EndNames => IsEnd ? (Words.Of(Side.Port), Words.Of(Side.Starboard)) : (Words.Of(Side.Forward), Words.Of(Side.Aft));

    /// <summary>Where both halves meet, from end to end, in the plan.</summary>
    public (Point From, Point To) Line
    {
        get
        {
            var band = AsEnd.Band;
            return (Frame.Back(new Point(band.Left, LineY)), Frame.Back(new Point(band.Right, LineY)));
        }
    }

    /// <summary>The same worked out as an end: the plan turned a quarter to the left for a side.</summary>
    public abstract EdgePlace AsEnd { get; }

    /// <summary>How the plan is turned for <see cref="AsEnd"/>.</summary>
    public EdgeFrame Frame => EdgeFrame.Of(Side);

    /// <summary>The same elsewhere.</summary>
    public abstract EdgePlace MovedBy(Step step);
}
