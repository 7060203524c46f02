using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>A flat panel on a top that is curved both ways: it can follow one curve only.</summary>
/// <param name="AcrossRadius">The arc across under the panel; null when straight.</param>
/// <param name="AlongRadius">The sharpest radius along that the bending check finds; null when straight.</param>
/// <param name="AlongRise">How far the highest or deepest tube lies from the straight line between the held edges.</param>
/// <param name="Across">The panel's size across the boat.</param>
/// <param name="Along">Its size along the boat.</param>
public sealed record DoubleCurve(Length? AcrossRadius, Length? AlongRadius, Length AlongRise, Length Across, Length Along)
{
    /// <summary>
    /// How far it stands off along the shallower curve when it follows the deeper one: across w²/8R, with w its size and R the
    /// radius there; along, where the cloth is a ridge and no arc, the rise itself.
    /// </summary>
    public Length EdgeGap => UnitMath.Min(Rise(Across, AcrossRadius), AlongRise);

    /// <summary>
    /// What its edges are shortened by, as a part of their length, when it is pressed flat all the same: Kw²/12 with
    /// K = 1/R₁R₂ and w the narrower side. The middle is stretched by half of that. Along, R is the radius of the bent panel,
    /// which over a ridge is two thirds of that of a circle of the same rise.
    /// </summary>
    public double EdgeStrain
    {
        get
        {
            var width = UnitMath.Min(Across, Along);
            return AcrossRadius is { } across && AlongRadius is { } along ? width / across * (width / along) / 12 : 0;
        }
    }

    /// <summary>The curves under a panel.</summary>
    public static DoubleCurve Of(MountedShape mounted, TopSurface surface, ImmutableArray<PanelProfile> profiles)
    {
        const int Stations = 13;
        var across = PanelNet.Places(mounted, Stations, 3).Select(surface.ArcRadiusAt).MinBy(radius => radius?.Millimeters ?? double.PositiveInfinity);
        var riseMm = profiles.SelectMany(profile => profile.Tubes).Select(tube => Math.Abs(tube.Cloth.Millimeters)).DefaultIfEmpty(0).Max();
        var (wide, deep) = (mounted.PanelBox.WidthMm, mounted.PanelBox.HeightMm);
        return new(across, AlongBend.Sharpest(profiles), Length.FromMillimeters(riseMm), Length.FromMillimeters(wide), Length.FromMillimeters(deep));
    }

    /// <summary>Holds the gap against what is allowed.</summary>
    internal static CheckResult Check(CarrierJob job, MountedShape mounted, TopSurface surface, ImmutableArray<PanelProfile> profiles)
    {
        var curve = Of(mounted, surface, profiles);
        var strain = Say.Of($"Pressed down all the same, its edges would be shortened by {curve.EdgeStrain * 100:0.000} % and its middle stretched by {curve.EdgeStrain * 50:0.000} %.");
        var measured = Measured.AtMost(curve.EdgeGap, job.Limits.Shape.EdgeGap);
        return new(
            CheckCodes.BendDouble,
            Say.Of("panel on a top curved both ways"),
            measured.Holds ? Verdict.Pass : Verdict.Caution,
            measured,
            Say.Of("limits.edge_gap (rule of thumb, editable)"),
            measured.Holds ? strain : Say.Of($"The top curves both ways and the panel only one: it will stand off. Move it off the ridge, turn it, or take two smaller panels. {strain}"));
    }

    private static Length Rise(Length size, Length? radius) => radius is { } known ? size * (size / known / 8) : Length.Zero;
}
