using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>A rod that holds an edge, through a sleeve on the carrier and one on the top that are cut out into lugs by turns.</summary>
/// <param name="Rod">The rod's diameter.</param>
/// <param name="Ease">How much longer the way round in the sleeve is than that round the rod.</param>
/// <param name="Segment">The most from the middle of a gap to the next, along the rod.</param>
/// <param name="Gap">Between a lug of the carrier and the next of the top.</param>
/// <param name="SmallestRadius">To which the rod may be bent for good; null for 100 times its diameter.</param>
/// <remarks>
/// The sleeve is a flap folded in half, the rod in the fold, closed by a row of stitches at half the girth. Girth = π × rod +
/// ease. Pulled from both sides the rod lies where the band of the girth is tight; see <see cref="TautLoop"/>.
/// </remarks>
public sealed record SleeveSpec(Length Rod, Length Ease, Length Segment, Length Gap, Length? SmallestRadius)
{
    /// <summary>From the carrier's edge out to the row that closes the sleeve, so that the presser foot passes; common practice, no source.</summary>
    public static readonly Length Land = Length.FromInches(0.25);

    /// <summary>How much of the flap on the top is sewn down; common practice, no source.</summary>
    public static readonly Length SewnDown = Length.FromInches(0.5);

    /// <summary>What the rod reaches beyond the sleeve at each end, for a stop and a cap; common practice, no source.</summary>
    public static readonly Length StickOut = Length.FromInches(0.75);

    /// <summary>
    /// A rod of fibreglass bent to 100 times its diameter is strained by half a per cent, a third or a quarter of what breaks it; from memory.
    /// </summary>
    private const double DiametersToBend = 100;

    /// <summary>No rod, of no size.</summary>
    public static SleeveSpec None { get; } = new(Length.Zero, Length.Zero, Length.Zero, Length.Zero, null);

    /// <summary>Once round inside the sleeve.</summary>
    public Length Girth => (Rod * Math.PI) + Ease;

    /// <summary>From the sleeve's row to its fold, laid flat.</summary>
    public Length Depth => Girth / 2;

    /// <summary>How far the flap reaches beyond the edge it is sewn to, laid flat.</summary>
    public Length Width => Land + Depth;

    /// <summary>From the carrier's edge out to the rod's middle, pulled tight.</summary>
    public Length ToRod => Land + Length.FromMillimeters(TautLoop.ToMiddleMm(Depth.Millimeters, Rod.Millimeters / 2));

    /// <summary>From the carrier's edge out to the outer edge of the flap on the top, which lies beyond the rod as the carrier's lies before it.</summary>
    public Length OuterEdge => (ToRod * 2) + SewnDown;

    /// <summary>The smallest radius to which the rod may be bent for good.</summary>
    public Length LeastRadius => SmallestRadius ?? LeastRadiusOf(Rod);

    /// <summary>The smallest radius to which a rod may be bent for good of which nothing else is known.</summary>
    public static Length LeastRadiusOf(Length rod) => rod * DiametersToBend;

    /// <summary>The largest thing that the sleeve lets through, round.</summary>
    public Length Bore => Girth / Math.PI;
}
