using System.Collections.Immutable;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>A sewn half and a new panel that lies one way: which borders would do.</summary>
/// <remarks>
/// A border is at least what the job asks for (<c>carrier.border</c>), on a side with a weather strip also so wide that the
/// strip ends before the cells, or is sewn beside the panel; and at most <c>carrier.widest_border</c>, or what the job asks for if that is more. Where a
/// pocket's mouth crosses a corner, the borders and dead borders of the two sides that meet must be more than it covers.
/// </remarks>
public sealed class RefitWay
{
    private static readonly Length RoundOff = Length.FromMillimeters(1e-6);

    private readonly SewnHalf _sewn;
    private readonly CarrierJob _job;

    /// <summary>Looks at a panel the way it would lie.</summary>
    public RefitWay(SewnHalf sewn, CarrierJob job, LongSide longSide) => (_sewn, _job, Panel) = (sewn, job, MountedPanel.Of(job.Panel, longSide));

    /// <summary>The panel the way it would lie.</summary>
    public MountedPanel Panel { get; }

    /// <summary>The thickest panel whose rim the pockets reach over: as thick as they are eased; common practice, no source.</summary>
    public Length MostThickness => _sewn.Fastenings.Pocket.Ease;

    /// <summary>What the panel leaves of the carrier athwart; negative when it is larger.</summary>
    public Length Across => _sewn.Carrier.Athwart - Panel.Athwart;

    /// <summary>What the panel leaves of the carrier fore and aft; negative when it is larger.</summary>
    public Length Along => _sewn.Carrier.ForeAft - Panel.ForeAft;

    /// <summary>The borders, as near as may be to those asked for and an even share of what is left; null when none will do.</summary>
    public Sides<Length>? Border => IsThinEnough && Asked.Nearest(Across.Millimeters, Along.Millimeters, WantedMm) is { } found ? Typed(found) : null;

    /// <summary>Whether the pockets reach over the panel's rim.</summary>
    public bool IsThinEnough => _job.Panel.Body.Thickness <= MostThickness;

    /// <summary>The borders when those asked for may be narrowed as far as cells and sewn pieces allow; null when none will do.</summary>
    internal SidesMm? Narrowed => Hard.Nearest(Across.Millimeters, Along.Millimeters, WantedMm);

    /// <summary>The panels that the sewn half accepts this way, with the dead borders of this one.</summary>
    public PanelRange Range
    {
        get
        {
            var (room, most, dead) = (Asked, MostBorder, Panel.Fittings.DeadBorder);
            var isAthwart = Panel.LongSide == LongSide.Athwart;
            var rules = room.SumRules().Select(rule => (rule.Across, rule.Along, Most: MostOf(rule))).ToList();
            var athwart = (From: Larger(_sewn.Carrier.Athwart - most.Port - most.Starboard, dead.Port + dead.Starboard), To: rules[0].Most);
            var foreAft = (From: Larger(_sewn.Carrier.ForeAft - most.Forward - most.Aft, dead.Forward + dead.Aft), To: rules[1].Most);
            var limits = Stricter(rules[2].Most, rules[3].Most, rules[4].Most, (athwart.To, foreAft.To))
                .Select(rule => isAthwart ? new SizeLimit(rule.Across, rule.Along, rule.Most) : new SizeLimit(rule.Along, rule.Across, rule.Most));
            var none = (Length.Zero, room.IsPossible ? Length.Zero : Length.FromMillimeters(-1));
            return !room.IsPossible ? new(Panel.LongSide, none, none, [])
                : isAthwart ? new(Panel.LongSide, athwart, foreAft, [.. limits])
                : new(Panel.LongSide, foreAft, athwart, [.. limits]);
        }
    }

    /// <summary>The one size that leaves the borders exactly as asked: athwart and fore and aft.</summary>
    public (Length Athwart, Length ForeAft) AsAsked
    {
        get
        {
            var asked = _job.Carrier.AskedBorder;
            return (_sewn.Carrier.Athwart - asked.Port - asked.Starboard, _sewn.Carrier.ForeAft - asked.Forward - asked.Aft);
        }
    }

    /// <summary>The borders asked for, in millimetres.</summary>
    internal SidesMm WantedMm => Plain(_job.Carrier.AskedBorder);

    /// <summary>The narrowest borders that cells and weather strips allow.</summary>
    internal Sides<Length> HardBorder => Sides.Of(HardOf);

    /// <summary>What the borders at each corner must add up to.</summary>
    internal ImmutableArray<Length> CornerNeeds => [.. Corner.All.Select((corner, i) =>
        _sewn.Covers(i) + _job.Limits.ShadeGap - Panel.Fittings.DeadBorder[corner.End] - Panel.Fittings.DeadBorder[corner.Hand])];

    private Sides<Length> AskedLeast => Sides.Of(side => Larger(_job.Carrier.AskedBorder[side], HardOf(side)));

    private Sides<Length> MostBorder => Sides.Of(side => Larger(_job.Carrier.Room.Widest, AskedLeast[side]));

    private BorderRoom Asked => new(Plain(AskedLeast), Plain(MostBorder), Corners);

    private BorderRoom Hard => new(Plain(HardBorder), Plain(MostBorder), Corners);

    private CornersMm Corners => CornerNeeds is [var forwardPort, var forwardStarboard, var aftPort, var aftStarboard]
        ? new(forwardPort.Millimeters, forwardStarboard.Millimeters, aftPort.Millimeters, aftStarboard.Millimeters)
        : throw new InvalidOperationException("A carrier has four corners.");

    private Length HardOf(Side side)
    {
        var strip = _sewn.Fastenings.WeatherStrip;
        return !strip.Edges.Contains(side) ? Length.Zero
            : strip.SewnTo[side] == StripGround.Carrier ? StripPlace.SeamIn(side, _sewn.Fastenings) + StripPlace.PanelRoom
            : Larger(strip.Overlap + _job.Limits.ShadeGap - Panel.Fittings.DeadBorder[side], Length.Zero);
    }

    /// <summary>Of the limits on both sizes together, those that the others do not bring with them.</summary>
    private static IEnumerable<(int Across, int Along, Length Most)> Stricter(Length both, Length twiceAlong, Length twiceAcross, (Length Across, Length Along) to)
    {
        var sum = UnitMath.Min(both, to.Across + to.Along);
        if (both + RoundOff < to.Across + to.Along)
        {
            yield return (1, 1, both);
        }

        if (twiceAlong + RoundOff < sum + to.Along)
        {
            yield return (1, 2, twiceAlong);
        }

        if (twiceAcross + RoundOff < sum + to.Across)
        {
            yield return (2, 1, twiceAcross);
        }
    }

    private Length MostOf((int Across, int Along, double LeastMm) rule) =>
        (_sewn.Carrier.Athwart * rule.Across) + (_sewn.Carrier.ForeAft * rule.Along) - Length.FromMillimeters(rule.LeastMm);

    private static SidesMm Plain(Sides<Length> sides) => new(sides.Forward.Millimeters, sides.Aft.Millimeters, sides.Port.Millimeters, sides.Starboard.Millimeters);

    private static Sides<Length> Typed(SidesMm sides) => new(
        Length.FromMillimeters(sides.Forward), Length.FromMillimeters(sides.Aft), Length.FromMillimeters(sides.Port), Length.FromMillimeters(sides.Starboard));

    private static Length Larger(Length one, Length other) => UnitMath.Max(one, other);
}
