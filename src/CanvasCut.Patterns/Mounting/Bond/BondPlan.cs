using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>What lies between the cloth and the adhesive.</summary>
public enum BondGround
{
    /// <summary>The carrier's own cloth: it is smooth, or the job asks for it, or an adhesive back was given nothing better.</summary>
    Cloth,

    /// <summary>Webbing, sewn on under each strip of tape.</summary>
    Webbing,

    /// <summary>A coated patch as large as the panel, sewn on round its edge.</summary>
    Patch,
}

/// <summary>How the panel is bonded: the one plan from which pattern, order, wind check and order of work take their figures.</summary>
/// <param name="Ground">What the adhesive is pressed to.</param>
/// <param name="Tape">Each strip of foam tape, in the plan of the top; none for an adhesive back.</param>
/// <param name="Webbing">Each strip of webbing; none on another ground.</param>
/// <param name="Patches">The coated patch of each panel; none on another ground.</param>
/// <param name="Adhesive">The area that bears.</param>
/// <param name="Bears">What it may bear for long; null when the adhesive back's figure was not given.</param>
public sealed record BondPlan(
    BondGround Ground, ImmutableArray<BondStrip> Tape, ImmutableArray<BondStrip> Webbing, ImmutableArray<Box> Patches, Area Adhesive, Pressure? Bears)
{
    /// <summary>Long-time load of foam tape, 4 square inches to the pound: a maker's figure, with its own safety in it; single source.</summary>
    public static readonly Pressure TapeBears = Pressure.FromPoundsForcePerSquareInch(0.25);

    /// <summary>Whether it is bonded by tape.</summary>
    public bool HasTape => !Tape.IsEmpty;

    /// <summary>All strips of tape end to end.</summary>
    public Length TapeLength => LengthOf(Tape);

    /// <summary>All strips of webbing end to end.</summary>
    public Length WebbingLength => LengthOf(Webbing);

    /// <summary>How wide the tape is; zero without tape.</summary>
    public Length TapeWidth => Tape.IsEmpty ? Length.Zero : Tape[0].Width;

    /// <summary>How much of the adhesive meets the carrier's own cloth, because neither patch nor webbing lies under it.</summary>
    /// <param name="panel">The panel's outline, all of which an adhesive back covers.</param>
    public Area OnCloth(Box panel)
    {
        Box[] ground = [.. Webbing.Select(strip => strip.Box), .. Patches];
        return Area.FromSquareMillimeters((HasTape ? Tape.Select(strip => strip.Box) : [panel])
            .Sum(part => Math.Max(0, AreaOf([part]).SquareMillimeters - AreaOf(ground.Select(part.Shared).Where(shared => !shared.IsEmpty)).SquareMillimeters)));
    }

    /// <summary>The rows of stitches that hold the ground.</summary>
    public ImmutableArray<(Point From, Point To)> Rows =>
        [.. Webbing.SelectMany(strip => strip.Rows), .. Patches.SelectMany(patch => Around(patch.Grown(-StitchRows.FromFold.Millimeters)))];

    /// <summary>
    /// The plans of several panels as one: the ground is that of the first which has more than the carrier's own cloth, and bears what the
    /// weakest does.
    /// </summary>
    public static BondPlan Joined(ImmutableArray<BondPlan> plans) => plans is [var only] ? only : new(
        plans.Select(plan => plan.Ground).FirstOrDefault(ground => ground != BondGround.Cloth),
        [.. plans.SelectMany(plan => plan.Tape)],
        [.. plans.SelectMany(plan => plan.Webbing)],
        [.. plans.SelectMany(plan => plan.Patches)],
        plans.Aggregate(Area.Zero, (sum, plan) => sum + plan.Adhesive),
        plans.Any(plan => plan.Bears is null) ? null : plans.Min(plan => plan.Bears));

    /// <summary>The plans of a carrier's panels, in their order.</summary>
    public static ImmutableArray<BondPlan> All(CarrierJob job, MountedShape mounted) => [.. EachPanel.Of(job, mounted).Select(each => Of(each.Job, each.Mounted))];

    /// <summary>The plan of a carrier with one panel.</summary>
    public static BondPlan Of(CarrierJob job, MountedShape mounted)
    {
        var (ground, layout) = (GroundOf(job), BondLayout.Of(job, mounted));
        ImmutableArray<Box> patch = ground == BondGround.Patch ? [mounted.PanelBox] : [];
        if (job.Panel.Limits.HasAdhesive)
        {
            return new(ground, [], [], patch, AreaOf([mounted.PanelBox]), job.Panel.Limits.AdhesivePull);
        }

        var tape = layout.Tape();
        return new(ground, tape, ground == BondGround.Webbing ? layout.Webbing() : [], patch, AreaOf(tape.Select(strip => strip.Box)), TapeBears);
    }

    private static BondGround GroundOf(CarrierJob job) => (job.Conditions.Bonding.Onto, job.Panel.Limits.HasAdhesive) switch
    {
        _ when job.Workshop.Supplies.Cloth.IsSmooth => BondGround.Cloth,
        (BondSurface.CoatedPatch, _) => BondGround.Patch,
        (BondSurface.SewnTape, false) => BondGround.Webbing,
        _ => BondGround.Cloth,
    };

    private static Area AreaOf(IEnumerable<Box> boxes) => Area.FromSquareMillimeters(boxes.Sum(box => box.WidthMm * box.HeightMm));

    private static Length LengthOf(ImmutableArray<BondStrip> strips) => Length.FromMillimeters(strips.Sum(strip => strip.Length.Millimeters));

    private static ImmutableArray<(Point From, Point To)> Around(Box box) =>
    [
        (new(box.Left, box.Top), new(box.Right, box.Top)),
        (new(box.Left, box.Bottom), new(box.Right, box.Bottom)),
        (new(box.Left, box.Bottom), new(box.Left, box.Top)),
        (new(box.Right, box.Bottom), new(box.Right, box.Top)),
    ];
}
