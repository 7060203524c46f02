using System.Collections.Immutable;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>Looks for the smallest change after which a sewn half accepts a panel.</summary>
/// <remarks>
/// Everything that may change is first changed as far as may ever be needed; then it is taken back measure by measure, the
/// most laborious first, as far as the others allow, in whole steps of a ruler, so that the measures as printed will do.
/// So what touches no sewn piece changes before a piece is made anew, and that before anything is moved. What is left does,
/// and no measure of it may be a step less.
/// </remarks>
internal sealed class SmallestChange
{
    private const double RoundOffMm = 1e-6;

    /// <summary>A strip must reach over the carrier's edge at all; the least that docs/job-file.md calls usual.</summary>
    private static readonly Length LeastOverlap = Length.FromMillimeters(3);

    private readonly SewnHalf _sewn;
    private readonly CarrierJob _job;
    private readonly LongSide _longSide;
    private readonly Length _step;

    private SmallestChange(SewnHalf sewn, CarrierJob job, LongSide longSide) =>
        (_sewn, _job, _longSide, _step) = (sewn, job, longSide, RulerSteps.Of(job.Units));

    /// <summary>The change for a panel that does not fit.</summary>
    public static RefitChange For(SewnHalf sewn, CarrierJob job, LongSide longSide)
    {
        var search = new SmallestChange(sewn, job, longSide);
        var onTop = search.TakenBack([.. search.NoBorders(), .. search.Widest(), .. search.OnTop()]);
        ImmutableArray<MeasureChange> settled = [.. onTop.Where(measure => measure.Thing != ChangedThing.Border)];
        ImmutableArray<MeasureChange> even = [.. search.EvenBorders(settled), .. settled];

        // In whole steps an even share may be a part of a step less than the border that is needed; then the uneven one does.
        return new(search.Fits(even) ? search.TakenBack(even) : onTop);
    }

    private IEnumerable<MeasureChange> NoBorders() =>
        from side in Enum.GetValues<Side>()
        where _job.Carrier.AskedBorder[side] > Length.Zero
        select new MeasureChange(ChangedThing.Border, side, _job.Carrier.AskedBorder[side], Length.Zero);

    /// <summary>No border can be wider than the carrier, however far that grows.</summary>
    private IEnumerable<MeasureChange> Widest()
    {
        var most = RulerSteps.Up(Grown(Side.Port) + Grown(Side.Forward), _step);
        return most > _job.Carrier.Room.Widest ? [new(ChangedThing.WidestBorder, null, _job.Carrier.Room.Widest, most)] : [];
    }

    private IEnumerable<MeasureChange> OnTop()
    {
        var (strip, way) = (_sewn.Fastenings.WeatherStrip, new RefitWay(_sewn, _job, _longSide));
        if (!strip.Edges.IsEmpty && strip.Overlap > LeastOverlap)
        {
            yield return new(ChangedThing.StripOverlap, null, strip.Overlap, LeastOverlap);
        }

        var eased = way.IsThinEnough ? Length.Zero : RulerSteps.Up(_job.Panel.Body.Thickness, _step) - way.MostThickness;
        if (eased > Length.Zero)
        {
            yield return new(ChangedThing.PocketEase, null, way.MostThickness, way.MostThickness + eased);
        }

        // Taken back from the last, so the aft pockets give way before the forward ones, which lie under the weather strip.
        foreach (var (i, corner) in Corner.All.Index().Reverse())
        {
            var (leg, least) = (_sewn.Legs[i] + (eased * 2), RulerSteps.Up(_sewn.Legs[i] + (eased * 2) - _sewn.Covers(i) + PocketPlace.LeastCover, _step));
            if (least < leg)
            {
                yield return new(ChangedThing.PocketLeg, corner, leg, least);
            }
        }

        yield return new(ChangedThing.Athwart, null, _sewn.Carrier.Athwart, RulerSteps.Up(Grown(Side.Port), _step));
        yield return new(ChangedThing.ForeAft, null, _sewn.Carrier.ForeAft, RulerSteps.Up(Grown(Side.Forward), _step));
    }

    /// <summary>A carrier so large that any borders fit beside the panel: what strip and pockets want on both sides.</summary>
    private Length Grown(Side side)
    {
        var way = new RefitWay(_sewn, _job, _longSide);
        var (from, panel) = side == Side.Port ? (_sewn.Carrier.Athwart, way.Panel.Athwart) : (_sewn.Carrier.ForeAft, way.Panel.ForeAft);
        var rim = way.CornerNeeds.Concat([way.HardBorder.Forward, way.HardBorder.Aft]).Max(need => Math.Max(need.Millimeters, 0));
        return UnitMath.Max(from, panel + Length.FromMillimeters(2 * rim)) + _step;
    }

    /// <summary>With all else settled, borders that are no wider than there is room for, an even share on both sides.</summary>
    private IEnumerable<MeasureChange> EvenBorders(ImmutableArray<MeasureChange> settled)
    {
        var all = new RefitChange(settled);
        var borders = new RefitWay(all.AppliedTo(_sewn), all.AppliedTo(_job), _longSide).Narrowed
            ?? throw new InvalidOperationException("All else was settled so that there are borders.");
        foreach (var (side, border) in new[] { (Side.Forward, borders.Forward), (Side.Aft, borders.Aft), (Side.Port, borders.Port), (Side.Starboard, borders.Starboard) })
        {
            var asked = _job.Carrier.AskedBorder[side];
            if (border < asked.Millimeters - RoundOffMm)
            {
                yield return new(ChangedThing.Border, side, asked, UnitMath.Max(RulerSteps.Down(Length.FromMillimeters(border), _step), Length.Zero));
            }
        }
    }

    /// <summary>
    /// Taken back until nothing more can be: where a border asked for is wider than the widest, it is the widest too, so asking for
    /// less of one leaves less room for the others, and what was settled before may be taken back once more.
    /// </summary>
    private ImmutableArray<MeasureChange> TakenBack(ImmutableArray<MeasureChange> measures)
    {
        var less = TakenBackOnce(measures);
        while (!less.SequenceEqual(measures))
        {
            (measures, less) = (less, TakenBackOnce(less));
        }

        return less;
    }

    private ImmutableArray<MeasureChange> TakenBackOnce(ImmutableArray<MeasureChange> measures)
    {
        foreach (var measure in measures.Reverse())
        {
            ImmutableArray<MeasureChange> WithLess(int steps) => Less(measure, steps) is { } less ? measures.Replace(measure, less) : measures.Remove(measure);
            var (does, doesNot) = (0, (int)Math.Ceiling(Math.Abs((measure.To - measure.From) / _step)) + 1);
            while (doesNot - does > 1)
            {
                var middle = (does + doesNot) / 2;
                (does, doesNot) = Fits(WithLess(middle)) ? (middle, doesNot) : (does, middle);
            }

            measures = WithLess(does);
        }

        return measures;
    }

    private bool Fits(ImmutableArray<MeasureChange> measures)
    {
        var change = new RefitChange(measures);
        return new RefitWay(change.AppliedTo(_sewn), change.AppliedTo(_job), _longSide).Border is not null;
    }

    /// <summary>A change that goes less far; null when nothing is left of it.</summary>
    private MeasureChange? Less(MeasureChange change, int steps)
    {
        var (way, back) = (change.To - change.From, _step * steps);
        return steps == 0 ? change
            : back.Millimeters > Math.Abs(way.Millimeters) - RoundOffMm ? null
            : change with { To = way > Length.Zero ? change.To - back : change.To + back };
    }
}
