using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>What is bonded to what, and in which weather.</summary>
internal static class BondingChecks
{
    public static IEnumerable<CheckResult> Of(PatternSet patterns)
    {
        var bonding = patterns.Job.Conditions.Bonding;
        return patterns.OfEach(panel => [Onto(panel)]).Concat(BondingWeather.Of(bonding.Day, bonding.Limits));
    }

    /// <summary>Less is round-off.</summary>
    private static readonly Area RoundOff = Area.FromSquareMillimeters(1);

    /// <summary>Judged by what the plan lays there, whatever was asked for: all that sticks must lie on it.</summary>
    private static CheckResult Onto(PatternSet patterns)
    {
        var isRaw = patterns.Bond.OnCloth(patterns.Mounted.PanelBox) > RoundOff && !patterns.Job.Workshop.Supplies.Cloth.IsSmooth;
        return new(
            CheckCodes.BondingOnto,
            Say.Of("what the adhesive is pressed to"),
            isRaw ? Verdict.Caution : Verdict.Pass,
            Measured.Nothing,
            Say.Of("surface preparation bulletin for foam tapes, 2007 and 2012"),
            !isRaw ? string.Empty
                : patterns.Bond.HasTape ? Say.Of("Raw woven cloth is porous and its finish repels water and glue: the tape touches only the tops of the threads and peels. Sew a smooth tape or a coated patch to the cloth and bond to that.")
                : Say.Of("Raw woven cloth is porous and its finish repels water and glue: an adhesive back touches only the tops of the threads and peels. Sew a coated patch to the cloth (bonding.onto = \"coated-patch\") and bond to that."));
    }
}
