using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>What the wind does to the mounted carrier, and what holds it.</summary>
/// <remarks>
/// Uplift = q × coefficient × area. The fastenings of the edges share it, see <see cref="EdgeShare"/>: half each where two are held. When one has
/// come open its two pockets carry half.
/// The worst-placed piece of each carries the edge factor times its fair share. A strength is divided by the safety factor.
/// </remarks>
public sealed class HoldDown
{
    /// <summary>The seam that bears at each end of a pocket's mouth, where it pulls hardest; chosen for this program.</summary>
    private static readonly Length PocketEnd = Length.FromMillimeters(25);

    private readonly CarrierJob _job;
    private readonly MountedShape _mounted;

    private HoldDown(CarrierJob job, MountedShape mounted)
    {
        (_job, _mounted) = (job, mounted);
        Wanted = job.Panel.Limits.MaxWind is { } most && most < job.Conditions.Wind.OffAt ? most : job.Conditions.Wind.OffAt;
        Holds = [.. Chains(), .. Ends(), .. Fasteners(), .. Lugs(), Pocket(), Seam(), .. Bond()];
    }

    /// <summary>The wind, in gusts, at which it comes off if everything holds: the maker's limit or the job's, the lower.</summary>
    public Speed Wanted { get; }

    /// <summary>What holds it, with the loads at <see cref="Wanted"/>.</summary>
    public ImmutableArray<WindHold> Holds { get; }

    /// <summary>Whether it is known what the adhesive bears.</summary>
    public bool KnowsBond => BondPlan.Of(_job, _mounted).Bears is not null;

    /// <summary>Whether the strength of everything that holds the edges is known.</summary>
    public bool KnowsEdges => KnowsZippers && UnknownFasteners.IsEmpty;

    /// <summary>The wind to which what holds the edges holds; null when that of nothing is known.</summary>
    public Speed? EdgesHoldTo => Holds
        .Where(hold => hold.Code is CheckCodes.WindZipper or CheckCodes.WindZipperEnd or CheckCodes.WindFastener or CheckCodes.WindSleeve)
        .Select(hold => (Speed?)hold.HoldsTo)
        .MinBy(speed => speed!.Value.MetersPerSecond);

    /// <summary>The edges held by fasteners of unknown strength.</summary>
    public ImmutableArray<FlapPlace> UnknownFasteners => [.. _mounted.Fastened.Flaps.Where(flap => flap.Lugs is null && HoldOf(flap) is null)];

    /// <summary>Whether the zippers' strength is known, or there are none.</summary>
    public bool KnowsZippers =>
        _mounted.Fastened.Zippers.IsEmpty || (ZipperHold.Chain(Strength.Zipper) is not null && ZipperHold.End(Strength.Zipper) is not null);

    /// <summary>What gives first.</summary>
    public WindHold Weakest => Holds.MinBy(hold => hold.HoldsTo.MetersPerSecond)!;

    /// <summary>The wind, in gusts, at which it must be off: the lowest of what was wanted and what everything holds to.</summary>
    public Speed OffAt => Weakest.HoldsTo < Wanted ? Weakest.HoldsTo : Wanted;

    /// <summary>The mean wind that brings such gusts.</summary>
    public Speed MeanAtOff => Speed.FromKnots(OffAt.Knots / Factors.Gust.DecimalFractions);

    /// <summary>The Beaufort force of <see cref="MeanAtOff"/> as it is printed, in whole knots.</summary>
    public int ForceAtOff => Wind.Beaufort(Speed.FromKnots(LimitWords.Knots(MeanAtOff)));

    private WindFactors Factors => _job.Conditions.Wind.Factors;

    private StrengthSpec Strength => _job.Conditions.Strength;

    private ForcePerLength SeamHolds => SeamStrength.InCloth(_job.Workshop.Sewing.StitchLength, Strength.Thread, Strength.ClothGrab);

    /// <summary>The hold-down of a mounting.</summary>
    public static HoldDown Of(CarrierJob job, MountedShape mounted) => new(job, mounted);

    /// <summary>What lifts the whole carrier at a wind.</summary>
    public Force UpliftAt(Speed wind) => Lift(wind, Area.FromSquareMillimeters(_mounted.CarrierBox.WidthMm * _mounted.CarrierBox.HeightMm));

    /// <summary>The load on the worst-placed stretch of a zipper, or of what stands for one, at a wind.</summary>
    public ForcePerLength EdgeLoadAt(Speed wind, EdgePlace edge) =>
        ForcePerLength.FromNewtonsPerMeter(UpliftAt(wind).Newtons * EdgeShare.Of(edge, _mounted) / edge.Run.Meters * Factors.Edge.DecimalFractions);

    /// <summary>The edge with the greatest load, the same at every wind.</summary>
    public EdgePlace WorstEdge => _mounted.Fastened.Edges.MaxBy(edge => EdgeLoadAt(Wanted, edge).NewtonsPerMeter)!;

    /// <summary>The load on a pocket at a wind, when the zipper beside it has come open.</summary>
    public Force PocketLoadAt(Speed wind) => UpliftAt(wind) / 4 * Factors.Edge.DecimalFractions;

    private Force Lift(Speed wind, Area area) =>
        Force.FromNewtons(Wind.Pressure(wind).Pascals * Factors.Coefficient.DecimalFractions * area.SquareMeters);

    private IEnumerable<WindHold> Chains() => ZipperHold.Chain(Strength.Zipper) is not { } chain ? [] : _mounted.Fastened.Zippers.Select(zipper => Line(
        CheckCodes.WindZipper,
        Say.Of($"{Words.Of(zipper.Side)} zipper's chain"),
        EdgeLoadAt(Wanted, zipper),
        ForcePerLength.FromNewtonsPerMeter(chain.Newtons / ZipperHold.Jaw.Meters / Factors.Safety.DecimalFractions)));

    /// <summary>The end bears what lifts the edge beyond it, and its own jaw's width.</summary>
    private IEnumerable<WindHold> Ends() => ZipperHold.End(Strength.Zipper) is not { } end ? [] : _mounted.Fastened.Zippers.Select(zipper => Single(
        CheckCodes.WindZipperEnd,
        Say.Of($"{Words.Of(zipper.Side)} zipper's end"),
        Force.FromNewtons(EdgeLoadAt(Wanted, zipper).NewtonsPerMeter * (zipper.Choice.Setback + ZipperHold.Jaw).Meters),
        end / Factors.Safety.DecimalFractions));

    private (Measured Load, double PartUsed)? HoldOf(FlapPlace flap) => EdgeHolds.Of(flap, _job, UpliftAt(Wanted) * EdgeShare.Of(flap, _mounted));

    private IEnumerable<WindHold> Fasteners() => _mounted.Fastened.Flaps
        .Where(flap => flap.Lugs is null)
        .Select(flap => (flap.Name, Hold: HoldOf(flap)))
        .Where(each => each.Hold is not null)
        .Select(each => new WindHold(CheckCodes.WindFastener, each.Name, each.Hold!.Value.Load, ToReach(each.Hold.Value.PartUsed)));

    /// <summary>An edge's load passes through the lugs of the top, which are one fewer than the carrier's; one row of stitches holds each.</summary>
    private IEnumerable<WindHold> Lugs() =>
        from flap in _mounted.Fastened.Flaps
        let lugs = flap.Lugs
        where lugs is not null
        let part = lugs.Lug * lugs.OnTop / flap.Run
        select Line(
            CheckCodes.WindSleeve,
            Say.Of($"seam at the lugs of the {flap.Name}"),
            EdgeLoadAt(Wanted, flap) / part,
            SeamHolds / Factors.Safety.DecimalFractions);

    private string AnEdge => _mounted.Fastened.HasEndZippersOnly ? Say.Of("a zipper") : Say.Of("an edge");

    private WindHold Pocket() => Single(
        CheckCodes.WindPocket,
        Say.Of($"each pocket beside {AnEdge} that came open"),
        PocketLoadAt(Wanted),
        Force.FromNewtons(SeamHolds.NewtonsPerMeter * 2 * PocketEnd.Meters / Factors.Safety.DecimalFractions));

    private WindHold Seam() => Line(
        CheckCodes.WindSeam,
        Say.Of($"one row of stitches along {AnEdge}"),
        EdgeLoadAt(Wanted, WorstEdge),
        SeamHolds / Factors.Safety.DecimalFractions);

    /// <summary>The plan's strips, or all of an adhesive back, bear what lifts the panel; nothing is said of a back whose figure is not known.</summary>
    private IEnumerable<WindHold> Bond()
    {
        var bond = BondPlan.Of(_job, _mounted);
        if (bond.Bears is { } bears)
        {
            var lift = Lift(Wanted, Area.FromSquareMillimeters(_mounted.PanelBox.WidthMm * _mounted.PanelBox.HeightMm));
            var load = Pressure.FromPascals(lift.Newtons / bond.Adhesive.SquareMeters);
            yield return new(CheckCodes.WindBond, Say.Of("adhesive under the panel"), Measured.AtMost(load, bears), ToReach(load / bears));
        }
    }

    private WindHold Line(string code, string subject, ForcePerLength load, ForcePerLength allowed) =>
        new(code, subject, Measured.AtMost(load, allowed), ToReach(load / allowed));

    private WindHold Single(string code, string subject, Force load, Force allowed) =>
        new(code, subject, Measured.AtMost(load, allowed), ToReach(load / allowed));

    private Speed ToReach(double partUsed) => Speed.FromKnots(Wanted.Knots / Math.Sqrt(partUsed));
}
