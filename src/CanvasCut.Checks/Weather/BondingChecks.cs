using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.Checks;

/// <summary>What is bonded to what, and in which weather.</summary>
internal static class BondingChecks
{
    public static IEnumerable<CheckResult> Of(CarrierJob job)
    {
        var bonding = job.Conditions.Bonding;
        return BondingWeather.Of(bonding.Day, bonding.Limits).Prepend(Onto(job));
    }

    /// <summary>An adhesive back lies on the cloth itself, whatever is said of the tape's ground: none is drawn or ordered for it.</summary>
    private static CheckResult Onto(CarrierJob job)
    {
        var isStuckOn = job.Panel.Limits.HasAdhesive && !job.Workshop.Supplies.Cloth.IsSmooth;
        var isRaw = job.Conditions.Bonding.Onto == BondSurface.RawCloth;
        return new(
            CheckCodes.BondingOnto,
            Say.Of("what the adhesive is pressed to"),
            isStuckOn || isRaw ? Verdict.Caution : Verdict.Pass,
            Measured.Nothing,
            Say.Of("surface preparation bulletin for foam tapes, 2007 and 2012"),
            isStuckOn ? Say.Of("The panel's adhesive back lies on raw woven cloth (panel.adhesive, cloth.grade), and no smooth ground is drawn or ordered for it: woven cloth is porous and its finish repels water and glue. Choose a coated cloth, or ask the panel's maker what to bond it to.")
                : isRaw ? Say.Of("Raw woven cloth is porous and its finish repels water and glue: the tape touches only the tops of the threads and peels. Sew a smooth tape or a coated patch to the cloth and bond to that.")
                : string.Empty);
    }
}
