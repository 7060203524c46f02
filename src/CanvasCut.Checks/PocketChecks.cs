using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Tells whether what lies over the panel holds it, and shades no cell.</summary>
internal static class PocketChecks
{
    /// <summary>Between the junction box and cloth over the panel; common practice, no source.</summary>
    public static readonly Length BoxRoom = Length.FromMillimeters(10);

    private static string ShadeSource => Say.Of("limits.shade_gap (rule of thumb, editable)");

    /// <summary>Pockets, strips and the junction box.</summary>
    public static IEnumerable<CheckResult> Of(PatternSet patterns)
    {
        var (job, mounted) = (patterns.Job, patterns.Mounted);
        return
        [
            .. mounted.Fastened.Pockets.SelectMany(pocket => OnPocket(job, mounted, pocket).Append(PocketRoomCheck.Of(job, mounted, pocket).On(new PartKeys(job).Pocket(pocket.Corner)))),
            PocketFittingCheck.Of(job, mounted),
            .. Room(job, mounted),
            .. mounted.Fastened.StripsOnTop.Select(strip => Shade(job, mounted, strip)),
            .. patterns.OfEach(each => Box(each.Job, each.Mounted)),
        ];
    }

    private static IEnumerable<CheckResult> Box(CarrierJob job, MountedShape mounted) =>
    [
        mounted.JunctionBox is null ? BoxCover(mounted) : BoxCover(mounted).On(new PartKeys(job).JunctionBox),
        .. BoxBack(job, mounted).Select(check => check.On(new PartKeys(job).JunctionBox)),
    ];

    private static IEnumerable<CheckResult> OnPocket(CarrierJob job, MountedShape mounted, PocketPlace pocket)
    {
        var (subject, keys) = (Say.Of($"{pocket.Corner} pocket"), new PartKeys(job));
        var clear = PocketPlace.ToCells(pocket.Corner, mounted.CarrierBox, mounted.Cells) - job.Limits.ShadeGap;
        yield return CheckResult.Judged(
            (CheckCodes.PocketShade, Say.Of($"{subject} and cells")),
            Measured.AtMost(pocket.Covers, clear),
            Verdict.Fail,
            ShadeSource,
            Say.Of($"Its mouth reaches over cells: shorten pocket.leg to {LengthText.Of(clear + pocket.OutX + pocket.OutY, job.Units)} or less.")).On(keys.Pocket(pocket.Corner), NearestCells(job, mounted, panel => PocketPlace.ToCells(pocket.Corner, mounted.CarrierBox, panel.CellBox)));
        yield return CheckResult.Judged(
            (CheckCodes.PocketHold, Say.Of($"{subject}'s hold")),
            Measured.AtLeast(pocket.Covers, PocketPlace.HoldingCover),
            Verdict.Caution,
            LimitSource.Practice,
            Say.Of("It covers little of the carrier's edges; a wider border or dead border would let it hold more, or more pocket.ease where the panel's bend keeps it small.")).On(keys.Pocket(pocket.Corner));
        yield return CheckResult.Judged(
            (CheckCodes.PocketMouth, Say.Of($"{subject}'s mouth hem")),
            Measured.AtMost(job.Fastenings.Pocket.Mouth.Width, pocket.Leg / (2 * Math.Sqrt(2))),
            Verdict.Fail,
            Say.Of("half the pocket's height over its mouth (geometry)"),
            Say.Of("The hem of the mouth is too deep for so small a pocket: narrow pocket.mouth.width, or bind the mouth.")).On(keys.Pocket(pocket.Corner));
        foreach (var result in job.Fastenings.Pocket.OverZipper ? [] : mounted.Fastened.Edges.Select(edge => End(job, pocket, edge)).OfType<CheckResult>())
        {
            yield return result;
        }
    }

    /// <summary>A pocket that does not go over what holds an edge lies between its end and the corner; null for an edge that it is not at.</summary>
    private static CheckResult? End(CarrierJob job, PocketPlace pocket, EdgePlace edge)
    {
        if (edge.Side != pocket.Corner.End && edge.Side != pocket.Corner.Hand)
        {
            return null;
        }

        var isFirst = edge.IsEnd ? pocket.Corner.Hand == Side.Port : pocket.Corner.End == Side.Forward;
        var needed = pocket.Leg - (edge.IsEnd ? pocket.OutX : pocket.OutY) + MountedFastenings.SeamClearance;
        return CheckResult.Judged(
            (CheckCodes.PocketZipper, SubjectOf(Say.Of($"{pocket.Corner} pocket"), edge)),
            Measured.AtLeast(edge.SetbackAt(isFirst), needed),
            Verdict.Fail,
            "pocket.over_zipper = false",
            edge.Kind switch
            {
                MountKind.Zipper => Say.Of($"The pocket's leg meets the zipper: set zipper.setback to {LengthText.Of(needed, job.Units)} or more, or pocket.over_zipper = true."),
                MountKind.Sleeve => Say.Of($"The pocket's leg meets the sleeve: set mount.setback to {LengthText.Of(needed, job.Units)} or more."),
                _ => Say.Of($"The pocket's leg meets the flap: set mount.setback to {LengthText.Of(needed, job.Units)} or more, or pocket.over_zipper = true."),
            }).On(new PartKeys(job).Pocket(pocket.Corner), new PartKeys(job).Fastening(edge.Side));
    }

    private static string SubjectOf(string subject, EdgePlace edge) => (edge.IsEnd, edge.Kind) switch
    {
        (true, MountKind.Zipper) => Say.Of($"{subject} and zipper's end"),
        (true, _) => Say.Of($"{subject} and the flap's end"),
        _ => Say.Of($"{subject} and the end of the {edge.Name}"),
    };

    private static IEnumerable<CheckResult> Room(CarrierJob job, MountedShape mounted)
    {
        var pockets = mounted.Fastened.Pockets;
        foreach (var (one, other) in new[] { (0, 1), (2, 3), (0, 2), (1, 3) })
        {
            var distance = pockets[one].Outline.Bounds.DistanceMm(pockets[other].Outline.Bounds);
            yield return CheckResult.Judged(
                (CheckCodes.PocketRoom, Say.Of($"{pockets[one].Corner} pocket and {pockets[other].Corner} pocket")),
                Measured.AtLeast(Length.FromMillimeters(distance), MountedFastenings.SeamClearance),
                Verdict.Fail,
                LimitSource.Practice,
                Say.Of("The pockets meet: shorten pocket.leg.")).On(new PartKeys(job).Pocket(pockets[one].Corner), new PartKeys(job).Pocket(pockets[other].Corner));
        }
    }

    private static CheckResult Shade(CarrierJob job, MountedShape mounted, StripPlace strip)
    {
        Length ToCells(Box cells) => StripPlace.Inside(strip.Side, mounted.CarrierBox, cells);
        var most = mounted.Cells.Select(ToCells).Aggregate(UnitMath.Min) - job.Limits.ShadeGap;
        return CheckResult.Judged(
            (CheckCodes.StripShade, Say.Of($"{strip.Name} and cells")),
            Measured.AtMost(job.Fastenings.WeatherStrip.Overlap, most),
            Verdict.Fail,
            ShadeSource,
            Say.Of($"It reaches over cells: shorten weather_strip.overlap to {LengthText.Of(most, job.Units)} or less.")).On(new PartKeys(job).Strip(strip.Side), NearestCells(job, mounted, panel => ToCells(panel.CellBox)));
    }

    /// <summary>The cells that are nearest to something: of a row those of one panel.</summary>
    private static PartKey NearestCells(CarrierJob job, MountedShape mounted, Func<MountedShape, Length> distance) =>
        new PartKeys(EachPanel.Of(job, mounted).MinBy(each => distance(each.Mounted).Millimeters)!.Job).Cells;

    /// <summary>The carrier has no window for a box at the panel's back: between panel and cloth it would lift the panel off its bond.</summary>
    private static IEnumerable<CheckResult> BoxBack(CarrierJob job, MountedShape mounted)
    {
        if (mounted.Panel.Fittings.JunctionBox is { IsAtBack: true } box)
        {
            var under = BondPlan.Of(job, mounted).HasTape ? job.Workshop.Supplies.Tapes.Foam.Thickness : Length.Zero;
            yield return CheckResult.Judged(
                (CheckCodes.BoxBack, Say.Of("junction box at the panel's back")),
                Measured.AtMost(-box.Height, under),
                Verdict.Fail,
                Say.Of("room between panel and carrier: the foam tape's thickness"),
                Say.Of("Not possible on this carrier, which has no window for it: the box would lift the panel off its bond, and the cells would bend over its edges and lie on the top by them. Choose a panel with its box on the face."));
        }
    }

    private static CheckResult BoxCover(MountedShape mounted)
    {
        var subject = Say.Of("junction box and what lies over the panel");
        if (mounted.JunctionBox is not { } box)
        {
            return new(
                CheckCodes.BoxCover, subject, Verdict.NotChecked, Measured.Nothing, LimitSource.Practice, Say.Of("The place of the junction box is not given: add panel.junction_box."));
        }

        var covers = mounted.Fastened.Pockets.Select(pocket => pocket.Outline)
            .Concat(mounted.Fastened.Strips.Select(strip => Outline.Of(strip.Finished)));
        var distance = covers.Min(cover => Witness.DistanceMm(cover, Outline.Of(box)));
        return CheckResult.Judged(
            (CheckCodes.BoxCover, subject),
            Measured.AtLeast(Length.FromMillimeters(distance), BoxRoom),
            Verdict.Fail,
            LimitSource.Practice,
            Say.Of("A pocket or strip would press on the box: turn the panel or shorten what lies over it."));
    }
}
