using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>What a direct current does to a compass.</summary>
public static class CompassField
{
    /// <summary>mu0 / 2 pi in microtesla metres an ampere.</summary>
    private const double Straight = 0.2;

    /// <summary>From centre to centre of two wires in one sheath: common practice, no source.</summary>
    private static readonly Length PairSpacing = Length.FromMillimeters(6);

    /// <summary>The earth's field across the boat, by which the needle stands: from memory, 15 to 40 microtesla where boats go.</summary>
    private static readonly MagneticField Earth = MagneticField.FromMicroteslas(20);

    /// <summary>One wire alone.</summary>
    public static MagneticField OfSingle(ElectricCurrent current, Length distance) => MagneticField.FromMicroteslas(Straight * current.Amperes / distance.Meters);

    /// <summary>Two wires side by side, the current out in one and back in the other, far from both.</summary>
    public static MagneticField OfPair(ElectricCurrent current, Length distance, Length spacing) =>
        MagneticField.FromMicroteslas(Straight * current.Amperes * spacing.Meters / (distance.Meters * distance.Meters));

    /// <summary>By how much the needle turns at worst: of wires that lie apart as of one alone, of a twisted pair as of two side by side.</summary>
    public static Angle Deviation(ElectricCurrent current, Length distance, bool isTwisted)
    {
        var field = distance <= Length.Zero ? double.PositiveInfinity
            : isTwisted ? OfPair(current, distance, PairSpacing).Microteslas : OfSingle(current, distance).Microteslas;
        return Angle.FromRadians(Math.Atan(field / Earth.Microteslas));
    }
}
