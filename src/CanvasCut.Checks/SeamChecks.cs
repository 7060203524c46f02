using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Tells whether a domestic machine sews through every crossing.</summary>
internal static class SeamChecks
{
    private static string Source => Say.Of("limits.sewn_thickness: nine layers stall many domestic machines (an article for sailors, 2000, single source), so eight of 0.5 mm; editable");

    /// <summary>For each seam its thickest crossing, in the order of sewing.</summary>
    public static IEnumerable<CheckResult> Of(PatternSet patterns)
    {
        var (supplies, limit) = (patterns.Job.Workshop.Supplies, patterns.Job.Limits.SewnThickness);
        foreach (var seam in JobSeams.Of(patterns))
        {
            var thickest = seam.Thickest(supplies);
            var measured = Measured.AtMost(thickest.Thickness(supplies), limit);
            yield return CheckResult.Judged(
                (CheckCodes.SeamLayers, seam.Name),
                measured,
                Verdict.Caution,
                Source,
                measured.Holds ? string.Empty : Say.Of($"{thickest.Plies} plies ({thickest}): {Lower(seam, patterns)} Or turn the handwheel by hand there.")).On(PartsOf(seam, new(patterns.Job)));
        }
    }

    private static string Lower(SewnSeam seam, PatternSet patterns) => seam.Kind switch
    {
        SeamKind.Hems when IsCarrier(seam) && patterns.CarrierPieces.Length > 1 =>
            Say.Of("face or bind that edge where the felled seam runs into the hem (carrier.edges), trim the seam's allowances inside the hem, or buy a wider roll."),
        SeamKind.Hems when IsCarrier(seam) && patterns.Job.Carrier.Corner == CornerKind.Square => Mitre(seam, patterns),
        SeamKind.Hems when seam.Pieces[0].Kind == PieceKind.WeatherStrip => patterns.Job.Carrier.Corner == CornerKind.Square
            ? Say.Of("carrier.corner = \"mitred\" mitres the strip's corners too; or face its ends instead of hemming them.")
            : Say.Of("face its ends instead of hemming them, or trim a joining seam's allowances inside the hem."),
        SeamKind.Hems => Say.Of("face or bind the edge instead of hemming it, or trim the turn-under at its ends."),
        SeamKind.Mount => Say.Of($"the corners of a flap are trimmed already, so it is the cloth, {LengthText.Of(patterns.Job.Workshop.Supplies.Cloth.Thickness, patterns.Job.Units)} thick: make the flap of thinner cloth, or widen mount.setback so that it ends short of the corner's hems."),
        SeamKind.Zipper when patterns.Job.Fastenings.Zipper.CapTurn > Length.Zero =>
            Say.Of("cut the end caps with a hot knife and do not turn their edges (zipper.cap_turn), or widen zipper.setback so that they end short of the corner's hems."),
        SeamKind.Zipper => Say.Of("widen zipper.setback so that the end caps end short of the corner's hems."),
        SeamKind.Caps when patterns.Job.Fastenings.Zipper.CapTurn > Length.Zero =>
            Say.Of("cut the caps with a hot knife and do not turn their edges (zipper.cap_turn)."),
        SeamKind.Caps => Say.Of("use thinner cloth for the caps."),
        SeamKind.Edges => Say.Of("trim what is turned under inside the corners and tips to 6 mm before it is folded, or bind the edge instead."),
        SeamKind.Felled => Say.Of("join with cloth.join = \"semi\", or buy a wider roll."),
        SeamKind.Bound => Say.Of("trim the hem at its ends before it is bound."),
        SeamKind.Patch => Say.Of("use thinner coated cloth."),
        _ => Say.Of("use thinner webbing, or a coated patch in its place."),
    };

    /// <summary>What a mitre would leave, worked out on the carrier folded that way.</summary>
    private static string Mitre(SewnSeam seam, PatternSet patterns)
    {
        var job = patterns.Job with { Carrier = patterns.Job.Carrier with { Corner = CornerKind.Mitred } };
        var mitred = JobSeams.Of(PatternSet.Of(job, patterns.Mounted)).First(each => each.Kind == seam.Kind && each.Pieces.SequenceEqual(seam.Pieces)).Thickest(job.Workshop.Supplies);
        return Say.Of($"carrier.corner = \"mitred\" lowers it to {mitred.Plies} plies, {LengthText.Of(mitred.Thickness(job.Workshop.Supplies), job.Units)}; a facing lowers it too.");
    }

    private static IEnumerable<PartKey> PartsOf(SewnSeam seam, PartKeys keys) =>
        [.. seam.Pieces.Select(PartKey.Of).Distinct(), .. seam.Edge is { } edge ? [keys.Fastening(edge)] : Array.Empty<PartKey>()];

    private static bool IsCarrier(SewnSeam seam) => seam.Pieces.Any(key => key.Kind == PieceKind.Carrier);
}
