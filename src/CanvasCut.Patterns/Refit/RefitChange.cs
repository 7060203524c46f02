using System.Collections.Immutable;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>What a change is made to.</summary>
public enum ChangedThing
{
    /// <summary>The border that the job asks for on one side.</summary>
    Border,

    /// <summary>The widest border that a carrier may have.</summary>
    WidestBorder,

    /// <summary>How far the weather strips reach over the carrier; they are made anew.</summary>
    StripOverlap,

    /// <summary>How far outside the carrier the pockets are sewn; all are made anew.</summary>
    PocketEase,

    /// <summary>The leg of one corner's pocket, which is made anew.</summary>
    PocketLeg,

    /// <summary>The carrier's size athwart: pockets are sewn further out, the zippers stay.</summary>
    Athwart,

    /// <summary>The carrier's size fore and aft: the aft zipper half and what is beside it are sewn further aft.</summary>
    ForeAft,
}

/// <summary>One measure that must change.</summary>
/// <param name="Thing">Of what.</param>
/// <param name="At">Of which side or corner; null for all.</param>
/// <param name="From">What it is.</param>
/// <param name="To">What it must be.</param>
public sealed record MeasureChange(ChangedThing Thing, object? At, Length From, Length To)
{
    /// <summary>Whether something that is sewn must be unpicked.</summary>
    public bool IsOnTop => Thing is not (ChangedThing.Border or ChangedThing.WidestBorder);
}

/// <summary>The smallest change after which a sewn half accepts a panel.</summary>
/// <param name="Measures">What must change, what costs least work first; at least one.</param>
public sealed record RefitChange(ImmutableArray<MeasureChange> Measures)
{
    /// <summary>The job when the change is made.</summary>
    public CarrierJob AppliedTo(CarrierJob job) => Measures.Aggregate(job, Applied);

    /// <summary>The sewn half when the change is made.</summary>
    public SewnHalf AppliedTo(SewnHalf sewn) => Measures.Aggregate(sewn, Applied);

    private static CarrierJob Applied(CarrierJob job, MeasureChange change) => change.Thing switch
    {
        ChangedThing.Border => job with
        {
            Carrier = job.Carrier with { Border = Sides.Of(side => change.At is Side at && side == at ? change.To + job.Carrier.Room.Kept[side] : job.Carrier.Border[side]) },
        },
        ChangedThing.WidestBorder => job with { Carrier = job.Carrier with { Room = job.Carrier.Room with { Widest = change.To } } },
        _ => job,
    };

    private static SewnHalf Applied(SewnHalf sewn, MeasureChange change)
    {
        var (fastenings, more) = (sewn.Fastenings, change.To - change.From);
        return change.Thing switch
        {
            ChangedThing.StripOverlap => sewn with { Fastenings = fastenings with { WeatherStrip = fastenings.WeatherStrip with { Overlap = change.To } } },
            ChangedThing.PocketLeg => sewn with { Legs = [.. Corner.All.Zip(sewn.Legs, (corner, leg) => corner.Equals(change.At) ? change.To : leg)] },

            // A pocket that is sewn further out on two sides needs a leg longer by both to cover as much.
            ChangedThing.PocketEase => sewn with
            {
                Fastenings = fastenings with { Pocket = fastenings.Pocket with { Ease = change.To } },
                Legs = [.. sewn.Legs.Select(leg => leg + (more * 2))],
            },
            ChangedThing.Athwart => Wider(sewn, more),
            ChangedThing.ForeAft => sewn with
            {
                Carrier = sewn.Carrier with { ForeAft = change.To, Middle = sewn.Carrier.Middle with { Station = sewn.Carrier.Middle.Station + (more / 2) } },
            },
            _ => sewn,
        };
    }

    /// <summary>The zippers keep their runs, so they end further from the corners, and the strips reach less far past the carrier.</summary>
    private static SewnHalf Wider(SewnHalf sewn, Length more)
    {
        var (strip, setback) = (sewn.Fastenings.WeatherStrip, sewn.Zipper.Setback + (more / 2));
        return sewn with
        {
            Carrier = sewn.Carrier with { Athwart = sewn.Carrier.Athwart + more },
            Zipper = sewn.Zipper with { Setback = setback, WantedSetback = setback },
            Fastenings = sewn.Fastenings with { WeatherStrip = strip with { Overhang = UnitMath.Max(strip.Overhang - (more / 2), Length.Zero) } },
        };
    }
}
