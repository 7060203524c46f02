using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Placing;

/// <summary>One way the panel may lie, at its best place.</summary>
/// <param name="LongSide">Which way its long side lies.</param>
/// <param name="Place">Where the carrier's middle lies.</param>
/// <param name="Spare">The smallest distance left beyond what must be kept; negative when something is too close.</param>
/// <param name="MayBend">Whether the panel may be curved the way the top is.</param>
public sealed record FitOption(LongSide LongSide, TopPlace Place, Length Spare, bool MayBend);

/// <summary>Where the carrier goes.</summary>
/// <param name="Mounted">What is mounted, at its place.</param>
/// <param name="Options">Every way that was looked at, the chosen first.</param>
/// <param name="IsPlaceChosen">Whether the program chose the place.</param>
/// <remarks>
/// The best place is that with the largest smallest spare distance, on a grid of 5 mm from the top's forward edge and
/// from the centreline. Of equal places the nearest to the centreline is taken, then the nearest to the top's middle
/// fore and aft, then the forward and the port one. Of the two ways to lie, one the panel may be bent for goes before
/// one it may not, then the larger spare, then athwart.
/// </remarks>
public sealed record FitChoice(MountedShape Mounted, ImmutableArray<FitOption> Options, bool IsPlaceChosen)
{
    /// <summary>The grid on which the best place is looked for.</summary>
    public const double GridMm = 5;

    /// <summary>Chooses for a job.</summary>
    public static FitChoice For(CarrierJob job)
    {
        LongSide[] ways = job.Panel.LongSide is { } given ? [given] : [LongSide.Athwart, LongSide.ForeAft];
        var options = ways
            .Select(way => OptionFor(job, way))
            .OrderByDescending(option => option.MayBend)
            .ThenByDescending(option => option.Spare.Millimeters)
            .ToImmutableArray();
        var best = options[0];
        return new(MountedShape.Of(job, best.LongSide).At(best.Place), options, job.Carrier.Position is null);
    }

    /// <summary>The only choice where all that is mounted is settled.</summary>
    public static FitChoice Settled(CarrierJob job, MountedShape mounted)
    {
        var way = mounted.Panel.LongSide;
        var option = new FitOption(way, Plan.PlaceOf(mounted.CarrierBox.Center), Length.FromMillimeters(SpareMm(job, mounted)), PanelBends.MayAcross(job, way));
        return new(mounted, [option], IsPlaceChosen: false);
    }

    private static FitOption OptionFor(CarrierJob job, LongSide way)
    {
        var shape = MountedShape.Of(job, way);
        var place = job.Carrier.Position ?? BestPlace.Of(job, shape);
        return new(way, place, Length.FromMillimeters(SpareMm(job, shape.At(place))), PanelBends.MayAcross(job, way));
    }

    private static double SpareMm(CarrierJob job, MountedShape mounted) => Clearances.Of(job, mounted).Min(clearance => clearance.SpareMm);
}
