using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>What the wind does to the mounted carrier, and what holds it.</summary>
/// <remarks>
/// Uplift = q × coefficient × area. The fastenings of the edges share it, see <see cref="EdgeShare"/>: half each where two are held. When one has
/// come open its two pockets carry half. Cloth bears uplift by pulling, see <see cref="EdgePull"/>: each part bears the pull and its
/// upright share together, for the worse of a stiff and a limp panel.
/// No margin is kept twice: the edge factor is on the upright share alone and stands for local peaks of pressure, and for a fastener that bears
/// before its neighbours; the safety factor is on the strength alone and stands for its scatter, for wear, and for pull that is not even.
/// </remarks>
public sealed class HoldDown
{
    /// <summary>The seam that bears at each end of a pocket's mouth, where it pulls hardest; chosen for this program.</summary>
    private static readonly Length PocketEnd = Length.FromMillimeters(25);

    private readonly CarrierJob _job;
    private readonly MountedShape _mounted;
    private readonly ImmutableDictionary<EdgePlace, EdgePull> _pulls;

    private HoldDown(CarrierJob job, MountedShape mounted)
    {
        (_job, _mounted) = (job, mounted);
        Wanted = job.PanelsMaxWind is { } most && most < job.Conditions.Wind.OffAt ? most : job.Conditions.Wind.OffAt;
        _pulls = mounted.Fastened.Edges
            .Select(edge => (Edge: edge, Pull: EdgePull.Of(job, mounted, edge)))
            .Where(each => each.Pull is not null)
            .ToImmutableDictionary(each => each.Edge, each => each.Pull!);
        Holds = [.. Chains(), .. Ends(), .. Fasteners(), .. Lugs(), .. Pocket(), .. Seam(), .. Bond()];
    }

    /// <summary>The wind, in gusts, at which it comes off if everything holds: the maker's limit or the job's, the lower.</summary>
    public Speed Wanted { get; }

    /// <summary>What holds it, with the loads at <see cref="Wanted"/>.</summary>
    public ImmutableArray<WindHold> Holds { get; }

    /// <summary>Whether it is known how much the cloth stretches, without which nothing is known of its pull.</summary>
    public bool KnowsPull => _job.Workshop.Supplies.Cloth.Stiffness is not null;

    /// <summary>Whether it is known what the adhesive bears.</summary>
    public bool KnowsBond => BondPlan.All(_job, _mounted).All(bond => bond.Bears is not null);

    /// <summary>Whether load and strength of everything that holds the edges are known.</summary>
    public bool KnowsEdges => KnowsPull && KnowsZippers && UnknownFasteners.IsEmpty;

    /// <summary>The wind to which what holds the edges holds; null when that of nothing is known.</summary>
    public Speed? EdgesHoldTo => Holds
        .Where(hold => hold.Code is CheckCodes.WindZipper or CheckCodes.WindZipperEnd or CheckCodes.WindFastener or CheckCodes.WindSleeve)
        .Select(hold => (Speed?)hold.HoldsTo)
        .MinBy(speed => speed!.Value.MetersPerSecond);

    /// <summary>The edges held by fasteners of unknown strength.</summary>
    public ImmutableArray<FlapPlace> UnknownFasteners => [.. _mounted.Fastened.Flaps.Where(flap => EdgeHolds.IsUnknown(flap))];

    /// <summary>Whether the zippers' strength is known, or there are none.</summary>
    public bool KnowsZippers =>
        _mounted.Fastened.Zippers.IsEmpty || (ZipperHold.Chain(Strength.Zipper) is not null && ZipperHold.End(Strength.Zipper) is not null);

    /// <summary>What gives first; only where the load of something is known.</summary>
    public WindHold Weakest => Holds.MinBy(hold => hold.HoldsTo.MetersPerSecond)!;

    /// <summary>The wind, in gusts, at which it must be off: the lowest of what was wanted and what everything holds to.</summary>
    public Speed OffAt => !Holds.IsEmpty && Weakest.HoldsTo < Wanted ? Weakest.HoldsTo : Wanted;

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

    /// <summary>What lifts an edge at a wind, fairly shared; nothing of the pull in it.</summary>
    public Force UprightAt(Speed wind, EdgePlace edge) => UpliftAt(wind) * EdgeShare.Of(edge, _mounted);

    /// <summary>The loads on the worst-placed stretch of a zipper, or of what stands for one, at a wind; null where the pull is not known.</summary>
    public PullBounds? EdgeLoadAt(Speed wind, EdgePlace edge) =>
        _pulls.TryGetValue(edge, out var pull) ? pull.At(UpliftAt(wind)).Times(pull.GatheredOn(edge.Run)) : null;

    /// <summary>The edge with the greatest load at the wind that is wanted.</summary>
    public EdgePlace WorstEdge => _mounted.Fastened.Edges.MaxBy(edge => EdgeLoadAt(Wanted, edge)?.Worst.NewtonsPerMeter ?? 0)!;

    /// <summary>The load on a pocket at a wind, when the zipper beside it has come open; null where the pull is not known.</summary>
    /// <remarks>The cloth in the pocket's mouth ties the corner of the panel as the border ties its edge.</remarks>
    public Force? PocketLoadAt(Speed wind)
    {
        if (_job.Workshop.Supplies.Cloth.Stiffness is not { } stiffness)
        {
            return null;
        }

        // The mouth lies across the corner: √2 times what the pocket covers from one end to the other, and half of that from the corner.
        var (upright, mouth) = (UpliftAt(wind) / 4, _mounted.Fastened.Pockets.Min(pocket => pocket.Covers.Meters) * Math.Sqrt(2));
        var (depth, give) = (Length.FromMeters(mouth / 2), _mounted.Fastened.Edges.Where(edge => edge.IsEnd).Min(edge => TopGive.Beyond(edge, _job.Top)));
        var pull = new BorderTie(depth, Length.Zero, depth + give, stiffness).Pull(ForcePerLength.FromNewtonsPerMeter(upright.Newtons / mouth));
        return Force.FromNewtons(double.Hypot(pull.NewtonsPerMeter * mouth, upright.Newtons * Factors.Edge.DecimalFractions));
    }

    private Force Lift(Speed wind, Area area) =>
        Force.FromNewtons(Wind.Pressure(wind).Pascals * Factors.Coefficient.DecimalFractions * area.SquareMeters);

    private IEnumerable<WindHold> Chains() => ZipperHold.Chain(Strength.Zipper) is not { } chain ? [] : _mounted.Fastened.Zippers.SelectMany(zipper => Line(
        CheckCodes.WindZipper,
        Say.Of($"{Words.Of(zipper.Side)} zipper's chain"),
        zipper,
        ForcePerLength.FromNewtonsPerMeter(chain.Newtons / ZipperHold.Jaw.Meters / Factors.Safety.DecimalFractions)));

    /// <summary>The end bears its own jaw's width, and its half of the edge beyond it; the other half lies nearer to the pocket.</summary>
    private IEnumerable<WindHold> Ends() => ZipperHold.End(Strength.Zipper) is not { } end ? [] : _mounted.Fastened.Zippers.SelectMany(zipper => Single(
        CheckCodes.WindZipperEnd,
        Say.Of($"{Words.Of(zipper.Side)} zipper's end"),
        zipper,
        _mounted.Fastened.FreeEnd(zipper) + ZipperHold.Jaw,
        end / Factors.Safety.DecimalFractions));

    /// <summary>Fasteners share what the whole edge bears; hook-and-loop is peeled by the upright share alone.</summary>
    private IEnumerable<WindHold> Fasteners() => _mounted.Fastened.Flaps.Where(flap => flap.Lugs is null).SelectMany(flap => flap switch
    {
        { Fasteners: { } row, Parts.Spec: { } spec } => spec.Strength is { } strength
            ? Single(CheckCodes.WindFastener, flap.Name, flap, Length.FromMillimeters(flap.Frame.Turned(_mounted.CarrierBox).WidthMm) / row.Count, strength / Factors.Safety.DecimalFractions)
            : [],
        _ => [EdgeHolds.Peeled(flap, _job, UprightAt(Wanted, flap), Wanted)],
    });

    /// <summary>An edge's load passes through the lugs of the top, which are one fewer than the carrier's; one row of stitches holds each.</summary>
    private IEnumerable<WindHold> Lugs() =>
        from flap in _mounted.Fastened.Flaps
        let lugs = flap.Lugs
        where lugs is not null
        from hold in Line(
            CheckCodes.WindSleeve,
            Say.Of($"seam at the lugs of the {flap.Name}"),
            flap,
            SeamHolds / Factors.Safety.DecimalFractions,
            lugs.Lug * lugs.OnTop)
        select hold;

    private string AnEdge => _mounted.Fastened.HasEndZippersOnly ? Say.Of("a zipper") : Say.Of("an edge");

    private IEnumerable<WindHold> Pocket()
    {
        if (PocketLoadAt(Wanted) is { } load)
        {
            var allowed = Force.FromNewtons(SeamHolds.NewtonsPerMeter * 2 * PocketEnd.Meters / Factors.Safety.DecimalFractions);
            yield return new(
                CheckCodes.WindPocket,
                Say.Of($"each pocket beside {AnEdge} that came open"),
                Measured.AtMost(load, allowed),
                WindReach.Of(wind => PocketLoadAt(wind)!.Value / allowed));
        }
    }

    private IEnumerable<WindHold> Seam() => Line(
        CheckCodes.WindSeam,
        Say.Of($"one row of stitches along {AnEdge}"),
        WorstEdge,
        SeamHolds / Factors.Safety.DecimalFractions);

    /// <summary>The plan's strips, or all of an adhesive back, bear what lifts the panel; nothing is said of a back whose figure is not known.</summary>
    private IEnumerable<WindHold> Bond() => EachPanel.Of(_job, _mounted).SelectMany(each => Bond(each.Job, each.Mounted));

    private IEnumerable<WindHold> Bond(CarrierJob job, MountedShape mounted)
    {
        var bond = BondPlan.Of(job, mounted);
        if (bond.Bears is { } bears)
        {
            var lift = Lift(Wanted, Area.FromSquareMillimeters(mounted.PanelBox.WidthMm * mounted.PanelBox.HeightMm));
            var load = Pressure.FromPascals(lift.Newtons / bond.Adhesive.SquareMeters);
            yield return new(CheckCodes.WindBond, PanelWords.Of(job, Say.Of("adhesive under the panel")), Measured.AtMost(load, bears), WindReach.Square(Wanted, load / bears)) { IsAdhesiveBack = job.Panel.Limits.HasAdhesive };
        }
    }

    /// <summary>What is held all along: the edge's load, gathered on its run or on the parts of it that hold.</summary>
    private IEnumerable<WindHold> Line(string code, string subject, EdgePlace edge, ForcePerLength allowed, Length? holding = null)
    {
        if (_pulls.TryGetValue(edge, out var pull))
        {
            var times = pull.GatheredOn(holding ?? edge.Run);
            PullBounds At(Speed wind) => pull.At(UpliftAt(wind)).Times(times);
            yield return new(code, subject, Measured.AtMost(At(Wanted).Worst, allowed), WindReach.Of(wind => At(wind).Worst / allowed))
            {
                Edge = edge.Side,
                Bounds = LoadBounds.Of(At(Wanted), load => load),
            };
        }
    }

    /// <summary>What is held at one place: the load of a stretch of the edge.</summary>
    private IEnumerable<WindHold> Single(string code, string subject, EdgePlace edge, Length stretch, Force allowed)
    {
        if (_pulls.TryGetValue(edge, out var pull))
        {
            Force On(ForcePerLength load) => Force.FromNewtons(load.NewtonsPerMeter * stretch.Meters);
            yield return new(code, subject, Measured.AtMost(On(pull.At(UpliftAt(Wanted)).Worst), allowed), WindReach.Of(wind => On(pull.At(UpliftAt(wind)).Worst) / allowed))
            {
                Edge = edge.Side,
                Bounds = LoadBounds.Of(pull.At(UpliftAt(Wanted)), load => On(load)),
            };
        }
    }
}
