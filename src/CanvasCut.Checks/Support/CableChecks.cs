using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Tells whether the cable's hole lies clear of all that is sewn, bonded and folded, and can be reached when it is made.</summary>
internal static class CableChecks
{
    public static IEnumerable<CheckResult> Of(PatternSet patterns) =>
        patterns.Holes.SelectMany(hole => Clear(patterns, hole).Append(Reach(patterns, hole)).Select(result => result with { Subject = PanelWords.Of(hole.Panel, result.Subject) }));

    /// <summary>Everything that comes too near, each by its name; when nothing does, what is nearest.</summary>
    private static IEnumerable<CheckResult> Clear(PatternSet patterns, CableHole hole)
    {
        ImmutableArray<CheckResult> all =
        [
            .. Parts(patterns, hole)
                .Select(part => (part.Name, Away: Math.Max(0, part.Boxes.Min(box => ToBoxMm(hole.Middle, box)) - hole.Radius.Millimeters)))
                .GroupBy(part => part.Name)
                .Select(alike => (alike.Key, Away: alike.Min(part => part.Away)))
                .OrderBy(part => part.Away)
                .Select(part => CheckResult.Judged(
                    (CheckCodes.CableClear, Say.Of($"cable hole and {part.Key}")),
                    Measured.AtLeast(Length.FromMillimeters(part.Away), CableHole.Rim),
                    Verdict.Fail,
                    Say.Of("the flange of a gland or grommet, from memory"),
                    Say.Of("The flange would not lie flat, or would cut what lies there: move the hole (panel.cable_exit), or widen carrier.border where it lies."))),
        ];
        return all.All(result => result.Verdict == Verdict.Pass) ? all.Take(1) : all.Where(result => result.Verdict != Verdict.Pass);
    }

    private static CheckResult Reach(PatternSet patterns, CableHole hole)
    {
        var outside = patterns.Mounted.Panels.Min(panel => ToBoxMm(hole.Middle, panel.Box)) - hole.Radius.Millimeters;
        return new(
            CheckCodes.CableReach,
            Say.Of("cable hole and the bonded panel"),
            !hole.IsUnderPanel ? Verdict.Pass : hole.IsFromFace ? Verdict.Fail : Verdict.Caution,
            Measured.AtLeast(Length.FromMillimeters(Math.Max(0, outside)), CableHole.Rim),
            Say.Of("the flange of a gland or grommet, from memory"),
            !hole.IsUnderPanel ? string.Empty
                : hole.IsFromFace ? Say.Of("The box is on the panel's face, and its cable cannot come to a hole under the panel: move the hole into the border, as in from_forward = \"-17 mm\", or leave panel.cable_exit out and lead the cable over the edge.")
                : Say.Of("Nobody reaches a hole under a bonded panel: cut it and bush it flat before bonding, as the order of work has it, and lead the cable through it while the panel is laid."));
    }

    /// <summary>All that lies on the carrier as flat boxes; rows are boxes without a width.</summary>
    private static IEnumerable<(string Name, ImmutableArray<Box> Boxes)> Parts(PatternSet patterns, CableHole hole)
    {
        var (job, mounted, bond) = (patterns.Job, patterns.Mounted, patterns.Bond);
        yield return (Say.Of("carrier's edge"), LinesOf(mounted.CarrierBox));
        yield return (Say.Of("hems of the carrier"), Bands(mounted.CarrierBox, CableHole.FinishedBands(job)));
        yield return (Say.Of("rows of the carrier"), [.. HardParts.RowsOf([patterns.WholeCarrier]).Select(row => Box.Holding([row.From, row.To]))]);
        yield return (Say.Of("rows of its own patch"), LinesOf(hole.Patch.Grown(-StitchRows.FromFold.Millimeters)));
        yield return (Say.Of("cells"), mounted.Cells);
        foreach (var edge in mounted.Fastened.Edges)
        {
            yield return (edge.Name, [edge.Band]);
        }

        foreach (var pocket in mounted.Fastened.Pockets)
        {
            yield return (Say.Of($"{pocket.Corner} pocket"), [pocket.Outline.Bounds]);
        }

        if (bond.HasTape)
        {
            yield return (Say.Of("foam tape"), [.. bond.Tape.Concat(bond.Webbing).Select(strip => strip.Box)]);
        }

        if (!bond.Patches.IsEmpty)
        {
            yield return (Say.Of("edge of the coated patch"), [.. bond.Patches.SelectMany(patch => LinesOf(patch))]);
        }

        foreach (var bow in job.Top.Bows)
        {
            yield return (Say.Of("tubes"), [Plan.BandOf(job.Top, bow)]);
        }

        foreach (var tube in job.Top.Tubes)
        {
            yield return (Say.Of("tubes"), Pieces(tube));
        }

        foreach (var seam in HardParts.SeamsOf(patterns))
        {
            yield return (Say.Of("felled seams"), [seam]);
        }
    }

    /// <summary>A slanted tube as a row of boxes, which are a little larger than it, on the safe side.</summary>
    private static ImmutableArray<Box> Pieces(TopTube tube)
    {
        const double PieceMm = 5;
        var (from, to) = (Plan.Of(tube.From), Plan.Of(tube.To));
        var count = (int)Math.Ceiling(from.DistanceMm(to) / PieceMm);
        return [.. Enumerable.Range(0, count).Select(i => Box.Holding([from.Toward(to, (double)i / count), from.Toward(to, (i + 1.0) / count)]).Grown(tube.Diameter.Millimeters / 2))];
    }

    private static ImmutableArray<Box> Bands(Box carrier, Sides<Length> bands)
    {
        var inner = MountedShape.Inside(carrier, bands);
        return [carrier with { Bottom = inner.Top }, carrier with { Top = inner.Bottom }, carrier with { Right = inner.Left }, carrier with { Left = inner.Right }];
    }

    private static ImmutableArray<Box> LinesOf(Box box) =>
        [box with { Bottom = box.Top }, box with { Top = box.Bottom }, box with { Right = box.Left }, box with { Left = box.Right }];

    private static double ToBoxMm(Point point, Box box) => double.Hypot(
        Math.Max(0, Math.Max(box.Left - point.X, point.X - box.Right)),
        Math.Max(0, Math.Max(box.Bottom - point.Y, point.Y - box.Top)));
}
