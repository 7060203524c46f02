using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using CanvasCut.Placing;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Tells whether the distances are kept.</summary>
internal static class FitChecks
{
    /// <summary>Margins, keep-outs, and everything that must not lie on a tube.</summary>
    public static IEnumerable<CheckResult> Of(PatternSet patterns)
    {
        foreach (var clearance in Clearances.Of(patterns.Job, patterns.Mounted))
        {
            yield return Judged(clearance, Verdict.Fail, AdviceOn(clearance));
        }

        foreach (var result in BentSide(patterns.Job, patterns.Mounted)
            .Concat(patterns.EachPanel.SelectMany(each => CellsOnTubes(each.Job, each.Mounted)))
            .Concat(patterns.OfEach(each => MissingBox(each.Job, each.Mounted))))
        {
            yield return result;
        }
    }

    /// <summary>The room between the carriers of a top, each pair once.</summary>
    public static IEnumerable<CheckResult> Between(PlacedTop placed) =>
        placed.Between.Select(clearance => Judged(clearance, Verdict.Fail, AdviceOn(clearance)));

    private static string CodeOf(ClearanceKind kind) => kind switch
    {
        ClearanceKind.Margin => CheckCodes.Margin,
        ClearanceKind.KeepOut => CheckCodes.KeepOut,
        ClearanceKind.Fixture => CheckCodes.Fixture,
        ClearanceKind.Boom => CheckCodes.Boom,
        ClearanceKind.Between => CheckCodes.Between,
        ClearanceKind.TubeEdge => CheckCodes.TubeEdge,
        ClearanceKind.TubeZipper => CheckCodes.TubeZipper,
        ClearanceKind.TubeMount => CheckCodes.TubeMount,
        ClearanceKind.TubePocket => CheckCodes.TubePocket,
        ClearanceKind.TubeStrip => CheckCodes.TubeStrip,
        ClearanceKind.TubeBox => CheckCodes.TubeBox,
        _ => CheckCodes.TubeCells,
    };

    private static string SourceOf(ClearanceKind kind) => kind switch
    {
        ClearanceKind.Margin => "top.edge_margin",
        ClearanceKind.KeepOut => Say.Of("the keep-out's clearance"),
        ClearanceKind.Fixture => Say.Of("top.fixed, its clearance and what it forbids"),
        ClearanceKind.Boom => Say.Of("top.boom.clearance"),
        ClearanceKind.Between => Say.Of("limits.between_carriers (common practice, no source)"),
        ClearanceKind.TubeCells => Say.Of("limits.cell_margin (rule of thumb, editable)"),
        _ => Say.Of("limits.tube_clearance (rule of thumb, editable)"),
    };

    private static string AdviceOn(Clearance clearance) => clearance.To?.Kind == PartKind.Tube ? AdviceOnTube(clearance.Kind) : clearance.Kind switch
    {
        ClearanceKind.Margin => Say.Of("The mounted outline comes too near this edge: move the carrier, narrow the border, or choose a smaller panel."),
        ClearanceKind.KeepOut => Say.Of($"Everything mounted must stay away from {clearance.Subject}: move or turn the panel."),
        ClearanceKind.Fixture => Say.Of("It must stay clear of what is on the top already: move or turn the panel, or say in forbids what may lie on it after all."),
        ClearanceKind.Boom => Say.Of("It stands too high for the boom to pass over with its clearance, and would be struck: move it out of the swing, or hold the boom higher."),
        ClearanceKind.Between => Say.Of("Hands, zipper pulls and cables need room between two carriers: move one, or choose smaller panels."),
        ClearanceKind.TubeCells => Say.Of("A tube under cells is a hard point that can crack them: move or turn the panel, or ask its maker whether strips of foam on both sides of the tube make it good (panel.hard_points)."),
        ClearanceKind.TubeZipper => Say.Of("A zipper on a tube chafes and cannot be sewn flat: move the carrier along the boat."),
        ClearanceKind.TubeMount => Say.Of("What holds this edge would lie on a tube, chafe, and could not be set or pressed closed: move the carrier along the boat."),
        ClearanceKind.TubeBox => Say.Of("The junction box would press on the tube: move or turn the panel."),
        _ => Say.Of("A seam on a tube chafes through: move the carrier along the boat."),
    };

    /// <summary>A bow is left behind along the boat; another tube may be left behind either way.</summary>
    private static string AdviceOnTube(ClearanceKind kind) => kind switch
    {
        ClearanceKind.TubeCells => Say.Of("A tube under cells is a hard point that can crack them: move or turn the panel, or ask its maker whether strips of foam on both sides of the tube make it good (panel.hard_points)."),
        ClearanceKind.TubeBox => Say.Of("The junction box would press on the tube: move or turn the panel."),
        _ => Say.Of("What lies on this tube is worn through from below and cannot be sewn flat: move the carrier away from it, along the boat or across, or turn the panel."),
    };

    private static IEnumerable<CheckResult> BentSide(CarrierJob job, MountedShape mounted)
    {
        var radius = job.Top.Edges.CornerRadius;
        if (radius.Millimeters <= 0)
        {
            yield break;
        }

        var each = EachPanel.Of(job, mounted);
        foreach (var side in new[] { Side.Port, Side.Starboard })
        {
            var nearest = each.MinBy(one => TopRim.InsideMm(job.Top, side, one.Mounted.PanelBox))!;
            var (panel, distance) = (nearest.Job, TopRim.InsideMm(job.Top, side, nearest.Mounted.PanelBox));
            yield return CheckResult.Judged(
                (CheckCodes.BentSide, PanelWords.Of(panel, Say.Of($"panel and the {Words.Of(side)} bend of the frame"))),
                Measured.AtLeast(Length.FromMillimeters(distance), radius),
                Verdict.Fail,
                "top.corner_radius",
                Say.Of("The panel would lie where the bow bends down: move it inboard or choose a narrower one.")).On(new PartKeys(panel).Panel, PartKey.TopEdge(side));
        }
    }

    /// <summary>Where the maker allows hard points a tube under cells is not a fault, but worth a word.</summary>
    private static IEnumerable<CheckResult> CellsOnTubes(CarrierJob job, MountedShape mounted)
    {
        if (!job.Panel.Limits.AllowsHardPoints)
        {
            yield break;
        }

        foreach (var clearance in Clearances.CellsFromTubes(job, mounted))
        {
            yield return Judged(
                clearance,
                Verdict.Caution,
                Say.Of("The maker allows hard points (panel.hard_points); a strip of foam beside the tube spares the cells."));
        }
    }

    private static CheckResult Judged(Clearance clearance, Verdict otherwise, string advice) => CheckResult.Judged(
        (CodeOf(clearance.Kind), clearance.Subject),
        Measured.AtLeast(clearance.Distance, clearance.Needed),
        otherwise,
        SourceOf(clearance.Kind),
        advice).On(new[] { clearance.Of, clearance.To }.OfType<PartKey>());

    private static IEnumerable<CheckResult> MissingBox(CarrierJob job, MountedShape mounted)
    {
        if (mounted.JunctionBox is null && job.Top.Bows.Length + job.Top.Tubes.Length > 0)
        {
            yield return new(
                CheckCodes.TubeBox,
                Say.Of("junction box and tubes"),
                Verdict.NotChecked,
                Measured.Nothing,
                SourceOf(ClearanceKind.TubeBox),
                Say.Of("The place of the junction box is not given: add panel.junction_box."));
        }
    }
}
