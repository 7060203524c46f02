using System.Collections.Immutable;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>The lugs of a sleeve along its run: the first, the third and so on are the carrier's, those between the top's.</summary>
/// <param name="Count">How many there are, the carrier's and the top's together; odd, so that the carrier has both ends.</param>
/// <param name="Pitch">From the middle of a gap to the next.</param>
/// <param name="Gap">Between neighbours.</param>
/// <remarks>
/// As few as keep to the segment that was asked for, but an odd number of at least three: run / segment, rounded up, and one
/// more when that is even. No lug is shorter than <see cref="LeastLug"/>.
/// </remarks>
public sealed record LugRow(int Count, Length Pitch, Length Gap)
{
    /// <summary>Two of the carrier and one of the top between them.</summary>
    public const int Fewest = 3;

    /// <summary>What is worth sewing; common practice, no source.</summary>
    public static readonly Length LeastLug = Length.FromMillimeters(15);

    private const double RoundOff = 1e-9;

    /// <summary>How many the carrier has.</summary>
    public int OnCarrier => (Count + 1) / 2;

    /// <summary>How many the top has.</summary>
    public int OnTop => Count / 2;

    /// <summary>Along the rod; the two at the ends of the carrier's are longer by half a gap.</summary>
    public Length Lug => Pitch - Gap;

    /// <summary>What is cut out of the carrier's sleeve for the top's lugs, from the middle of the run, port first.</summary>
    public ImmutableArray<(Length From, Length To)> CutFromCarrier => [.. Enumerable.Range(0, OnTop).Select(i => Around((2 * i) + 1))];

    /// <summary>What is cut out of the top's sleeve for the carrier's lugs; none is needed beyond its ends.</summary>
    public ImmutableArray<(Length From, Length To)> CutFromTop => [.. Enumerable.Range(1, OnTop - 1).Select(i => Around(2 * i))];

    /// <summary>The lugs on a run.</summary>
    /// <param name="run">The sleeve's length on the carrier.</param>
    /// <param name="sleeve">How it is divided.</param>
    /// <exception cref="ArgumentException">There is no room for three.</exception>
    public static LugRow Along(Length run, SleeveSpec sleeve)
    {
        if (!HasRoom(run, sleeve))
        {
            throw new ArgumentException("There is no room for three lugs.", nameof(run));
        }

        var wanted = (int)Math.Clamp(Math.Ceiling((run / sleeve.Segment) - RoundOff), Fewest, int.MaxValue / 2);
        var most = (int)Math.Clamp(Math.Floor((run / (sleeve.Gap + LeastLug)) + RoundOff), Fewest, int.MaxValue / 2);
        var count = Math.Min(wanted + (wanted % 2 == 0 ? 1 : 0), most - (most % 2 == 0 ? 1 : 0));
        return new(count, run / count, sleeve.Gap);
    }

    /// <summary>Whether a run is long enough for three lugs.</summary>
    public static bool HasRoom(Length run, SleeveSpec sleeve) => (run / Fewest).Millimeters >= (sleeve.Gap + LeastLug).Millimeters - 1e-6;

    /// <summary>A lug's place and half a gap beyond each of its ends, twice: its own and its neighbour's.</summary>
    private (Length From, Length To) Around(int lug)
    {
        var from = (Pitch * lug) - (Pitch * Count / 2);
        return (from - (Gap / 2), from + Pitch + (Gap / 2));
    }
}
