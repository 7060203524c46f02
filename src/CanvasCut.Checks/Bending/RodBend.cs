using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Holds the bend of a rod against what it bears: across over the arc of the top, along over its ridges.</summary>
/// <remarks>
/// A straight rod laid over a bend of radius R is strained by d/2R. Held down at its ends it lies like a beam loaded in the
/// middle (Roark's Formulas for Stress and Strain, table 8.1, case 1e): each end presses with 3EI/(R L), I being π d⁴/64.
/// </remarks>
internal static class RodBend
{
    /// <summary>At so many places along an end the arc's radius is asked for.</summary>
    private const int Places = 9;

    /// <summary>The stiffness of glass fibre in polyester, drawn as a rod; from memory.</summary>
    private static readonly Pressure Stiffness = Pressure.FromGigapascals(40);

    private static string Source => Say.Of("mount.sleeve.bend_radius; without it 100 times the rod's diameter, half a per cent of strain: from memory");

    /// <summary>The check of one sleeve.</summary>
    /// <param name="flap">The sleeve.</param>
    /// <param name="patterns">The job's patterns.</param>
    public static CheckResult Check(FlapPlace flap, PatternSet patterns)
    {
        var ((from, to), sleeve) = (flap.Line, flap.Parts.Sleeve!);
        return Check(
            Say.Of($"bend of the rod of the {flap.Name}"),
            new(flap.Side, from, to, sleeve.Rod) { Least = sleeve.LeastRadius, Band = flap.Band, TooSharp = Say.Of("The rod would break or stay bent: take a thinner one (mount.sleeve.rod), or one that is sold for such a bend (mount.sleeve.bend_radius).") },
            patterns);
    }

    /// <summary>The check of any rod along an edge.</summary>
    public static CheckResult Check(string name, LaidRod rod, PatternSet patterns)
    {
        if (patterns.Surface.Surface is not { } surface)
        {
            return AlongBend.Unknown(CheckCodes.MountRod, name, patterns.Surface);
        }

        var radius = rod.Side is Side.Forward or Side.Aft ? OverArc(rod, surface) : OverRidges(rod, patterns, surface);
        return radius is not { } sharpest
            ? new(CheckCodes.MountRod, name, Verdict.Pass, Measured.Nothing, Source, Say.Of("It is straight there."))
            : Judged(name, rod, patterns.Job.Units, sharpest);
    }

    /// <summary>How hard each end of a rod presses when it is bent.</summary>
    /// <param name="diameter">The rod's.</param>
    /// <param name="radius">Of the bend.</param>
    /// <param name="length">From end to end.</param>
    public static Force EndForce(Length diameter, Length radius, Length length)
    {
        var area = Math.PI * Math.Pow(diameter.Meters, 4) / 64;
        return Force.FromNewtons(3 * Stiffness.Pascals * area / (radius.Meters * length.Meters));
    }

    /// <summary>How far the ends of a straight rod stand off a bend that its middle touches: L²/8R.</summary>
    private static Length Rise(Length radius, Length length) => length * (length / radius / 8);

    private static CheckResult Judged(string name, LaidRod rod, PrintUnits units, Length radius)
    {
        var (measured, run) = (Measured.AtLeast(radius, rod.Least), Length.FromMillimeters(rod.From.DistanceMm(rod.To)));
        return new(
            CheckCodes.MountRod,
            name,
            measured.Holds ? Verdict.Pass : Verdict.Fail,
            measured,
            Source,
            measured.Holds
                ? Say.Of($"Laid straight on the top its ends stand about {LengthText.Of(Rise(radius, run), units)} off. A rod of glass fibre is bent down to it and springs back: each end presses up with about {QuantityWords.Of(EndForce(rod.Diameter, radius, run))}. A rod of metal takes a set.")
                : rod.TooSharp);
    }

    private static Length? OverArc(LaidRod rod, TopSurface surface) => Enumerable.Range(0, Places)
        .Select(i => surface.ArcRadiusAt(Plan.PlaceOf(rod.From.Toward(rod.To, i / (Places - 1.0)))))
        .Where(radius => radius is not null)
        .MinBy(radius => radius!.Value.Millimeters);

    /// <summary>The rod lies beside the panel's edge and bends over the same ridges; it is too stiff to follow cloth that is slack between them.</summary>
    private static Length? OverRidges(LaidRod rod, PatternSet patterns, TopSurface surface)
    {
        if (!patterns.Mounted.LiesOn(rod.Band ?? Box.Holding([rod.From, rod.To])))
        {
            return null;
        }

        var beside = patterns.EachPanel.Select(each => PanelProfile.Of(each.Job, each.Mounted, surface)).Select(profiles => rod.Side == Side.Port ? profiles[0] : profiles[^1]);
        return BendLimit.RadiusOf(beside.Min(profile => profile.Strip.Sharpest.RadiusMm));
    }
}

/// <summary>A rod where it lies along an edge.</summary>
/// <param name="Side">The edge.</param>
/// <param name="From">One end.</param>
/// <param name="To">The other.</param>
/// <param name="Diameter">Its own.</param>
internal sealed record LaidRod(Side Side, Point From, Point To, Length Diameter)
{
    /// <summary>To which it may be bent for good.</summary>
    public Length Least { get; init; } = SleeveSpec.LeastRadiusOf(Diameter);

    /// <summary>All of what it lies in; null for the rod alone.</summary>
    public Box? Band { get; init; }

    /// <summary>What to do when that is not enough.</summary>
    public string TooSharp { get; init; } = Say.Of("The rod would break or stay bent: take a thinner one (weather_strip.rod), or hold the strip by something else.");
}
