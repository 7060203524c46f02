using System.Collections.Immutable;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>Whether a new panel fits the half of the top that is sewn.</summary>
/// <param name="Ways">Every way round that was looked at, the chosen first.</param>
/// <param name="Border">The borders of the new carrier; null when it does not fit.</param>
/// <param name="Change">The smallest change after which it fits; null when it fits.</param>
/// <remarks>
/// Of two ways round, one that fits goes before one that does not, then one that needs nothing on the top unpicked, then
/// the way the old panel lay.
/// </remarks>
public sealed record RefitAnswer(ImmutableArray<RefitWay> Ways, Sides<Length>? Border, RefitChange? Change)
{
    /// <summary>Whether it fits.</summary>
    public bool Fits => Border is not null;

    /// <summary>Looks whether a job's panel fits.</summary>
    /// <param name="sewn">What is sewn.</param>
    /// <param name="job">The new job; of its fastenings nothing counts, for they are sewn already.</param>
    public static RefitAnswer Of(SewnHalf sewn, CarrierJob job)
    {
        LongSide[] sides = job.Panel.LongSide is { } given ? [given] : [LongSide.Athwart, LongSide.ForeAft];
        var ways = sides
            .Select(side => new RefitWay(sewn, job, side))
            .Select(way => (Way: way, Change: way.Border is null ? SmallestChange.For(sewn, job, way.Panel.LongSide) : null))
            .OrderBy(each => each.Change is null ? 0 : each.Change.Measures.Any(measure => measure.IsOnTop) ? 2 : 1)
            .ThenBy(each => each.Way.Panel.LongSide == sewn.Carrier.Panel.LongSide ? 0 : 1)
            .ToList();
        return new([.. ways.Select(each => each.Way)], ways[0].Way.Border, ways[0].Change);
    }
}
