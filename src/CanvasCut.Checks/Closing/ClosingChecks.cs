using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Tells whether the zippers close, when new and after years.</summary>
internal static class ClosingChecks
{
    /// <summary>Between the lengths of two halves that must mate: 1/16 in; common practice, no source.</summary>
    public static readonly Length Mating = Length.FromInches(1 / 16.0);

    /// <summary>From the middle of the top's cloth to the middle of the carrier's hem of three layers, in thicknesses of cloth.</summary>
    private const double LayersBetweenHalves = 2;

    private static string PullSource => Say.Of("limits.zipper_pull (rule of thumb, editable)");

    /// <summary>
    /// On cloth as slack as it may be and as it was measured, the worse counting: the way over the ridges, the same after shrinking and
    /// stretching, and the two halves along the zipper.
    /// </summary>
    public static IEnumerable<CheckResult> Of(PatternSet patterns, ImmutableArray<PanelShape> panels)
    {
        var (job, mounted, finding) = (patterns.Job, patterns.Mounted, patterns.Surface);
        ImmutableArray<CarrierPath> paths = (patterns.Slack.Surface, finding.Surface) is ({ } slack, { } measured)
            ? [.. CarrierPath.Of(mounted, slack, [.. panels.Select(panel => (panel.Patterns, panel.Slack))]), .. CarrierPath.Of(mounted, measured, [.. panels.Select(panel => (panel.Patterns, panel.Measured))])]
            : [];
        var half = mounted.Fastened.HasEndZippersOnly ? Say.Of("zipper") : Say.Of("edge");
        var way = Say.Of($"carrier from {half} to {half}");
        yield return finding.IsKnown ? Path(paths) : AlongBend.Unknown(CheckCodes.ClosingPath, way, finding);
        yield return Shrunk(job, mounted, paths);
        yield return Stretched(job, mounted, paths);
        foreach (var edge in mounted.Fastened.Edges.Where(edge => edge.MustMatch))
        {
            var subject = Say.Of($"halves of the {edge.Name}");
            var match = finding.IsKnown ? Match(subject, edge, job, finding.Surface) : AlongBend.Unknown(CheckCodes.ClosingMatch, subject, finding);
            yield return match.On(new PartKeys(job).Fastening(edge.Side));
        }

        CheckResult Path(ImmutableArray<CarrierPath> all)
        {
            var worst = all.MaxBy(path => Math.Abs(path.Shortfall.Millimeters))!;
            var (much, remedy) = worst.Shortfall > Length.Zero
                ? (Say.Of("short"), Say.Of($"widen carrier.border forward and aft by as much, or set the aft {half} by the carrier itself as it lies"))
                : (Say.Of("long"), Say.Of($"narrow carrier.border forward and aft by as much, or set the aft {half} by the carrier itself as it lies"));
            return CheckResult.Judged(
                (CheckCodes.ClosingPath, Say.Of($"{way}, too {much} by")),
                Measured.AtMost(worst.Shortfall > Length.Zero ? worst.Shortfall : -worst.Shortfall, job.Limits.Shape.ZipperPull),
                Verdict.Fail,
                PullSource,
                Say.Of($"The carrier is too {much} for its way over the bows: {remedy}."));
        }
    }

    /// <summary>The carrier's cloth along the boat, sewn larger for the shrinkage the job allows for, and shrunk in use.</summary>
    private static CheckResult Shrunk(CarrierJob job, MountedShape mounted, ImmutableArray<CarrierPath> paths)
    {
        var (cloth, shrink) = (Length.FromMillimeters(mounted.CarrierBox.HeightMm), job.Limits.Shape.Shrink);
        var left = cloth / (1 - job.Workshop.Cloth.ShrinkForeAft) * (1 - shrink);
        var gap = paths.Select(path => path.Shortfall).DefaultIfEmpty(Length.Zero).Max() + cloth - left;
        return CheckResult.Judged(
            (CheckCodes.ClosingShrunk, Say.Of($"carrier short of closing after shrinking {shrink * 100:0.##} %")),
            Measured.AtMost(UnitMath.Max(gap, Length.Zero), job.Limits.Shape.ZipperPull),
            Verdict.Caution,
            PullSource,
            Say.Of($"It may not close after some years: allow for it with cloth.shrink ({shrink * 100:0.##} % along the boat), wash and dry the cloth before cutting, and dry the carrier stretched."));
    }

    private static CheckResult Stretched(CarrierJob job, MountedShape mounted, ImmutableArray<CarrierPath> paths)
    {
        var (cloth, creep) = (Length.FromMillimeters(mounted.CarrierBox.HeightMm), job.Limits.Shape.Creep);
        var slack = (cloth / (1 - job.Workshop.Cloth.ShrinkForeAft) * (1 + creep)) - cloth - paths.Select(path => path.Shortfall).DefaultIfEmpty(Length.Zero).Min();
        return CheckResult.Judged(
            (CheckCodes.ClosingStretched, Say.Of($"carrier's slack after stretching {creep * 100:0.##} %")),
            Measured.AtMost(UnitMath.Max(slack, Length.Zero), mounted.Fastened.Pockets.Select(pocket => pocket.Covers).Min() / 2),
            Verdict.Caution,
            Say.Of("half of what the smallest pocket covers (rule of thumb)"),
            Say.Of("So much slack lets the corners slip out of their pockets and the cloth flutter: lower cloth.shrink, widen carrier.border so that the pockets cover more, or take the slack up in a tuck."));
    }

    private static CheckResult Match(string subject, EdgePlace edge, CarrierJob job, TopSurface surface) => CheckResult.Judged(
        (CheckCodes.ClosingMatch, subject),
        Measured.AtMost(edge.IsEnd ? LongerAcross(edge, surface) : LongerAlong(edge, job.Top, surface), Mating),
        Verdict.Caution,
        Say.Of("1/16 in between mating halves (common practice, no source)"),
        Say.Of("On so round a top the outer half comes out longer: sew it tick on tick, and ease it between the ticks."));

    /// <summary>Sewn one over the other on an arc, the outer half is longer by run × distance between them / radius.</summary>
    private static Length LongerAcross(EdgePlace edge, TopSurface surface)
    {
        const int Places = 9;
        var curvature = Enumerable.Range(0, Places)
            .Select(i => surface.ArcRadiusAt(PanelNet.At(-edge.LineY, edge.Band.Left + (edge.Band.WidthMm * i / (Places - 1)))))
            .Average(radius => radius is { } known ? 1 / known.Millimeters : 0);
        return edge.Run * (curvature * LayersBetweenHalves * CarrierPath.ClothThickness.Millimeters);
    }

    /// <summary>Over the ridges it is longer by distance between them × what the cloth turns there, in radians; in a valley shorter.</summary>
    private static Length LongerAlong(EdgePlace edge, TopCloth top, TopSurface surface)
    {
        var turn = surface.Ridges.Where(ridge => !Plan.BandOf(top, top.Bows[ridge.Bow]).Shared(edge.Band).IsEmpty).Sum(ridge => ridge.Turn.Radians);
        return CarrierPath.ClothThickness * (LayersBetweenHalves * Math.Abs(turn));
    }
}
