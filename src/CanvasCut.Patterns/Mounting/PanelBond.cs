using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>The foam tape that bonds a panel without an adhesive back, and the webbing under it.</summary>
/// <param name="Strips">Each strip of tape, in the plan of the top.</param>
/// <param name="NeedsGround">Whether the cloth is porous, so that smooth webbing is sewn on first.</param>
public sealed record PanelBond(ImmutableArray<Box> Strips, bool NeedsGround)
{
    /// <summary>From the panel's edge to the tape; common practice, no source.</summary>
    public static readonly Length Inset = Length.FromMillimeters(5);

    /// <summary>The most between two strips; common practice, no source.</summary>
    public static readonly Length MostGap = Length.FromMillimeters(300);

    /// <summary>Square millimetres of tape a kilogram carries at rest: 0.25 psi, a tape seller's hull-fitting bulletin; single source.</summary>
    public static readonly Pressure Carries = Pressure.FromPoundsForcePerSquareInch(0.25);

    /// <summary>All strips end to end.</summary>
    public Length TapeLength => Length.FromMillimeters(Strips.Sum(strip => Math.Max(strip.WidthMm, strip.HeightMm)));

    /// <summary>The strips of a job; none for an adhesive back.</summary>
    /// <remarks>One all round inside the panel's edge, and others along its shorter side so that no gap is wider than 300 mm.</remarks>
    public static PanelBond Of(CarrierJob job, MountedShape mounted)
    {
        if (job.Panel.Limits.HasAdhesive)
        {
            return new([], NeedsGround: false);
        }

        var box = mounted.PanelBox.Grown(-Inset.Millimeters);
        var width = Math.Min(job.Workshop.Supplies.Tapes.Foam.Width.Millimeters, Math.Min(box.WidthMm, box.HeightMm) / 3);
        return new([.. Frame(box, width), .. Across(box, width)], !job.Workshop.Supplies.Cloth.IsSmooth);
    }

    private static IEnumerable<Box> Frame(Box box, double width) =>
    [
        box with { Bottom = box.Top - width },
        box with { Top = box.Bottom + width },
        new(box.Left, box.Bottom + width, box.Left + width, box.Top - width),
        new(box.Right - width, box.Bottom + width, box.Right, box.Top - width),
    ];

    private static IEnumerable<Box> Across(Box box, double width)
    {
        var isAthwart = box.WidthMm >= box.HeightMm;
        var (inside, start) = isAthwart ? (box.WidthMm - (2 * width), box.Left + width) : (box.HeightMm - (2 * width), box.Bottom + width);
        var count = Math.Max(0, (int)Math.Ceiling((inside - MostGap.Millimeters) / (MostGap.Millimeters + width)));
        var gap = (inside - (count * width)) / (count + 1);
        for (var i = 0; i < count; i++)
        {
            var from = start + gap + (i * (gap + width));
            yield return isAthwart
                ? new(from, box.Bottom + width, from + width, box.Top - width)
                : new(box.Left + width, from, box.Right - width, from + width);
        }
    }
}
