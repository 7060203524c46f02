using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.Checks;

/// <summary>What is bonded to what, and in which weather.</summary>
internal static class BondingChecks
{
    public static IEnumerable<CheckResult> Of(CarrierJob job)
    {
        var bonding = job.Conditions.Bonding;
        return BondingWeather.Of(bonding.Day, bonding.Limits).Prepend(Onto(bonding.Onto));
    }

    private static CheckResult Onto(BondSurface onto) => new(
        CheckCodes.BondingOnto,
        Say.Of("what the adhesive is pressed to"),
        onto == BondSurface.RawCloth ? Verdict.Caution : Verdict.Pass,
        Measured.Nothing,
        Say.Of("surface preparation bulletin for foam tapes, 2007 and 2012"),
        onto == BondSurface.RawCloth
            ? Say.Of("Raw woven cloth is porous and its finish repels water and glue: the tape touches only the tops of the threads and peels. Sew a smooth tape or a coated patch to the cloth and bond to that.")
            : string.Empty);
}
