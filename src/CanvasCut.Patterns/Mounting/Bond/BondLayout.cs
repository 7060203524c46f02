using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>Lays the strips: one all round inside the panel's edge, others from rim to rim along its shorter side.</summary>
/// <remarks>
/// Where the dead border is as wide as the tape the rim lies in it, nearer the edge than usual if need be. Without
/// bonding.tape_length there are as many strips across as leave no gap wider than 300 mm; with it, as many as it is enough for.
/// </remarks>
public sealed class BondLayout
{
    /// <summary>From the panel's edge to the tape; common practice, no source.</summary>
    public static readonly Length Inset = Length.FromMillimeters(5);

    /// <summary>The most between two strips; common practice, no source.</summary>
    public static readonly Length MostGap = Length.FromMillimeters(300);

    private readonly CarrierJob _job;
    private readonly Box _panel;
    private readonly double _tapeMm;
    private readonly Sides<Length> _insets;
    private readonly int _across;

    private BondLayout(CarrierJob job, MountedShape mounted)
    {
        (_job, _panel) = (job, mounted.PanelBox);
        var inside = _panel.Grown(-Inset.Millimeters);
        _tapeMm = Math.Min((job.Conditions.Bonding.TapeWidth ?? job.Workshop.Supplies.Tapes.Foam.Width).Millimeters, Math.Min(inside.WidthMm, inside.HeightMm) / 3);
        _insets = Sides.Of(side => InsetFor(mounted.Panel.Fittings.DeadBorder[side]));
        RimLength = Sum(Rim(_insets, _tapeMm));
        _across = Count();
        WidestGap = Length.FromMillimeters(Gap(_across));
    }

    /// <summary>Once round the panel's edge.</summary>
    public Length RimLength { get; }

    /// <summary>The widest gap between two strips.</summary>
    public Length WidestGap { get; }

    /// <summary>The layout of a job; of an adhesive back too, whose strips are not laid.</summary>
    public static BondLayout Of(CarrierJob job, MountedShape mounted) => new(job, mounted);

    /// <summary>The foam tape.</summary>
    public ImmutableArray<BondStrip> Tape() => [.. Rim(_insets, _tapeMm), .. Across(_tapeMm, 1)];

    /// <summary>The webbing: under all of the tape, inside the panel's edge; as many runs side by side as the tape is wide.</summary>
    public ImmutableArray<BondStrip> Webbing()
    {
        var width = _job.Workshop.Supplies.Tapes.Webbing.Width.Millimeters;
        var runs = (int)Math.Ceiling((_tapeMm / width) - 1e-9);
        Sides<Length> InsetsOf(int run) => Sides.Of(side =>
            Length.FromMillimeters(Math.Max(0, _insets[side].Millimeters + _tapeMm - (runs * width)) + (run * width)));
        return [.. Enumerable.Range(0, runs).SelectMany(run => Rim(InsetsOf(run), width)), .. Across(width, runs)];
    }

    private IEnumerable<BondStrip> Rim(Sides<Length> insets, double width)
    {
        var outer = MountedShape.Inside(_panel, insets);
        var (left, right) = (outer with { Right = outer.Left + width }, outer with { Left = outer.Right - width });
        foreach (var (strip, inset) in new[] { (outer with { Bottom = outer.Top - width }, insets.Forward), (outer with { Top = outer.Bottom + width }, insets.Aft) })
        {
            var corner = CornerMm(inset);
            yield return new(strip with { Left = Math.Max(strip.Left, _panel.Left + corner), Right = Math.Min(strip.Right, _panel.Right - corner) }, IsAthwart: true, IsRim: true);
        }

        foreach (var (strip, inset) in new[] { (left, insets.Port), (right, insets.Starboard) })
        {
            var corner = CornerMm(inset);
            yield return new(strip with { Bottom = Math.Max(outer.Bottom + width, _panel.Bottom + corner), Top = Math.Min(outer.Top - width, _panel.Top - corner) }, IsAthwart: false, IsRim: true);
        }
    }

    /// <summary>How far from the panel's corner a line at a distance from its edge begins: where it leaves the rounded corner.</summary>
    private double CornerMm(Length inset)
    {
        var radius = _job.Panel.Body.CornerRadius.Millimeters;
        var off = Math.Max(0, radius - inset.Millimeters);
        return radius - Math.Sqrt((radius * radius) - (off * off));
    }

    private bool IsAlongAthwart => _panel.WidthMm >= _panel.HeightMm;

    /// <summary>The room between the rims along the longer side, and the way across it.</summary>
    private (double FromMm, double ToMm, double CrossFromMm, double CrossToMm) Room
    {
        get
        {
            var inner = MountedShape.Inside(_panel, _insets).Grown(-_tapeMm);
            return IsAlongAthwart ? (inner.Left, inner.Right, inner.Bottom, inner.Top) : (inner.Bottom, inner.Top, inner.Left, inner.Right);
        }
    }

    private IEnumerable<BondStrip> Across(double width, int runs)
    {
        var (from, _, crossFrom, crossTo) = Room;
        for (var i = 0; i < _across; i++)
        {
            var middle = from + ((i + 1) * Gap(_across)) + ((i + 0.5) * _tapeMm);
            for (var run = 0; run < runs; run++)
            {
                var start = middle + ((run - (runs / 2.0)) * width);
                yield return IsAlongAthwart
                    ? new(new(start, crossFrom, start + width, crossTo), IsAthwart: false, IsRim: false)
                    : new(new(crossFrom, start, crossTo, start + width), IsAthwart: true, IsRim: false);
            }
        }
    }

    private int Count()
    {
        var (from, to, crossFrom, crossTo) = Room;
        var usual = Math.Max(0, (int)Math.Ceiling((to - from - MostGap.Millimeters) / (MostGap.Millimeters + _tapeMm)));
        return _job.Conditions.Bonding.TapeLength is not { } length ? usual
            : Math.Clamp((int)Math.Floor(((length - RimLength).Millimeters / (crossTo - crossFrom)) + 1e-9), 0, (int)((to - from) / (2 * _tapeMm)));
    }

    private double Gap(int count)
    {
        var (from, to, _, _) = Room;
        return (to - from - (count * _tapeMm)) / (count + 1);
    }

    private static Length Sum(IEnumerable<BondStrip> strips) => Length.FromMillimeters(strips.Sum(strip => strip.Length.Millimeters));

    private Length InsetFor(Length dead)
    {
        var beside = dead.Millimeters - _tapeMm;
        return beside >= 0 ? UnitMath.Min(Inset, Length.FromMillimeters(beside)) : Inset;
    }
}
