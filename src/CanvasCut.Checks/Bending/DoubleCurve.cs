using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>A flat panel on a top that is curved both ways: it can follow one curve only.</summary>
/// <param name="AcrossRadiusMm">The arc across under the panel.</param>
/// <param name="AlongRadiusMm">The arc through both held edges and the highest or deepest tube between them.</param>
/// <param name="AcrossMm">The panel's size across the boat.</param>
/// <param name="AlongMm">Its size along the boat.</param>
public sealed record DoubleCurve(double AcrossRadiusMm, double AlongRadiusMm, double AcrossMm, double AlongMm)
{
    /// <summary>
    /// How far it stands off along the shallower curve when it follows the deeper one: w²/8R, with w its size and R the
    /// radius along that curve.
    /// </summary>
    public double EdgeGapMm => Math.Min(RiseMm(AcrossMm, AcrossRadiusMm), RiseMm(AlongMm, AlongRadiusMm));

    /// <summary>
    /// What its edges are shortened by, as a part of their length, when it is pressed flat all the same: Kw²/12 with
    /// K = 1/R₁R₂ and w the narrower side. The middle is stretched by half of that.
    /// </summary>
    public double EdgeStrain
    {
        get
        {
            var width = Math.Min(AcrossMm, AlongMm);
            return width * width / (12 * AcrossRadiusMm * AlongRadiusMm);
        }
    }

    /// <summary>The curves under a panel.</summary>
    public static DoubleCurve Of(MountedShape mounted, TopSurface surface, ImmutableArray<PanelProfile> profiles)
    {
        const int Stations = 13;
        var across = PanelNet.Places(mounted, Stations, 3).Min(place => surface.ArcRadiusAt(place)?.Millimeters ?? double.PositiveInfinity);
        var rise = profiles.SelectMany(profile => profile.Tubes).Select(tube => Math.Abs(tube.Cloth.Millimeters)).DefaultIfEmpty(0).Max();
        var (wide, deep) = (mounted.PanelBox.WidthMm, mounted.PanelBox.HeightMm);
        return new(across, deep * deep / (8 * rise), wide, deep);
    }

    /// <summary>Holds the gap against what is allowed.</summary>
    internal static CheckResult Check(CarrierJob job, MountedShape mounted, TopSurface surface, ImmutableArray<PanelProfile> profiles)
    {
        var curve = Of(mounted, surface, profiles);
        var strain = FormattableString.Invariant($"Pressed down all the same, its edges would be shortened by {curve.EdgeStrain * 100:0.000} % and its middle stretched by {curve.EdgeStrain * 50:0.000} %.");
        var measured = Measured.AtMost(Length.FromMillimeters(curve.EdgeGapMm), job.Limits.Shape.EdgeGap);
        return new(
            CheckCodes.BendDouble,
            "panel on a top curved both ways",
            measured.Holds ? Verdict.Pass : Verdict.Caution,
            measured,
            "limits.edge_gap (rule of thumb, editable)",
            measured.Holds ? strain : $"The top curves both ways and the panel only one: it will stand off. Move it off the ridge, turn it, or take two smaller panels. {strain}");
    }

    private static double RiseMm(double sizeMm, double radiusMm) => sizeMm * sizeMm / (8 * radiusMm);
}
