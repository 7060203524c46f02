using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Tells whether what the shop sells will do.</summary>
internal static class SupplyChecks
{
    /// <summary>Zippers on sale and the roll's width.</summary>
    public static IEnumerable<CheckResult> Of(PatternSet patterns) =>
        patterns.Mounted.Fastened.Zippers.Select(zipper => Stock(zipper, patterns.Job.Units).On(new PartKeys(patterns.Job).Fastening(zipper.Side))).Append(Width(patterns));

    private static CheckResult Stock(ZipperPlace zipper, PrintUnits units) => new(
        CheckCodes.ZipperStock,
        Say.Of($"{Words.Of(zipper.Side)} zipper's setback"),
        zipper.Choice.IsShort ? Verdict.Caution : Verdict.Pass,
        Measured.AtMost(zipper.Choice.Setback, zipper.Choice.WantedSetback),
        Say.Of("zipper.setback and zipper.stock"),
        zipper.Choice.IsShort
            ? Say.Of($"No length on sale is long enough; the longest, {LengthText.Of(zipper.Choice.Buy, units)}, ends further from the corners. A continuous zipper would reach.")
            : string.Empty);

    private static CheckResult Width(PatternSet patterns)
    {
        var cloth = patterns.Job.Workshop.Cloth;
        var (whole, widths) = (patterns.WholeCarrier, patterns.CarrierPieces.Length);
        var across = whole.AcrossWarp.Millimeters <= cloth.Roll.UsableWidth.Millimeters || cloth.Lay.AllowedTurns != RollTurns.Quarter
            ? whole.AcrossWarp
            : Length.FromMillimeters(Math.Min(whole.CutSize.Athwart.Millimeters, whole.CutSize.ForeAft.Millimeters));
        return new(
            CheckCodes.ClothWidth,
            Say.Of("carrier on the roll"),
            widths == 1 ? Verdict.Pass : Verdict.Caution,
            Measured.AtMost(across, cloth.Roll.UsableWidth),
            Say.Of("cloth.roll_width less twice cloth.selvage"),
            widths == 1
                ? string.Empty
                : Say.Of($"The carrier is wider than the roll and is joined from {widths} widths with a felled seam, a ridge under the panel. A wider roll would need none."));
    }
}
