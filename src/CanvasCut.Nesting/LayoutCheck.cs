using System.Collections.Immutable;
using System.Globalization;
using CanvasCut.Geometry;

namespace CanvasCut.Nesting;

/// <summary>Checks a layout with NetTopologySuite, which shares no formula with the searches.</summary>
public static class LayoutCheck
{
    /// <summary>The area that two pieces may share by round-off.</summary>
    public const double OverlapMm2 = 1e-6;

    /// <summary>How far a piece may lie too near to another, or outside the strip, by round-off.</summary>
    public const double DistanceMm = 1e-6;

    /// <summary>Every fault in plain words; none when the layout can be cut.</summary>
    public static ImmutableArray<string> Faults(NestingLayout layout) =>
        [.. CopyFaults(layout), .. TurnFaults(layout), .. StripFaults(layout), .. ZoneFaults(layout), .. RepeatFaults(layout), .. PairFaults(layout)];

    /// <summary>The layout itself when it has no fault.</summary>
    /// <exception cref="InvalidOperationException">It has one.</exception>
    internal static NestingLayout Faultless(NestingLayout layout) =>
        Faults(layout) is [] ? layout : throw new InvalidOperationException(string.Join(" ", Faults(layout)));

    private static IEnumerable<string> CopyFaults(NestingLayout layout)
    {
        for (var item = 0; item < layout.Task.Items.Length; item++)
        {
            var wanted = Enumerable.Range(0, layout.Task.Items[item].Demand);
            var copies = layout.Placements.Where(p => p.Item == item).Select(p => p.Copy).Order();
            if (!wanted.SequenceEqual(copies))
            {
                yield return $"The copies of {layout.Task.Items[item].Name} are not each placed once.";
            }
        }
    }

    private static IEnumerable<string> TurnFaults(NestingLayout layout) =>
        layout.Placements.Where(p => !layout.Task.Items[p.Item].Poses.Contains(p.Pose))
            .Select(p => $"{NameOf(layout, p)} is {(p.Pose.IsMirrored ? "mirrored and " : "")}turned by {Text(p.Pose.Degrees)} degrees, which is not allowed.");

    private static IEnumerable<string> StripFaults(NestingLayout layout)
    {
        var strip = new Box(0, 0, double.PositiveInfinity, layout.Task.StripWidthMm).Grown(DistanceMm);
        return Enumerable.Range(0, layout.Placements.Length)
            .Where(i => !strip.Holds(layout.PlacedOutline(i).Bounds))
            .Select(i => $"{NameOf(layout, layout.Placements[i])} lies outside the strip.");
    }

    private static IEnumerable<string> ZoneFaults(NestingLayout layout) =>
        from i in Enumerable.Range(0, layout.Placements.Length)
        from zone in layout.Task.Barred
        let near = layout.PlacedOutline(i).Bounds.Shared(zone)
        where !near.IsEmpty && near is { WidthMm: > 0, HeightMm: > 0 }
        where Witness.OverlapMm2(layout.PlacedOutline(i), Outline.Of(Around(near, zone))) > OverlapMm2
        select $"{NameOf(layout, layout.Placements[i])} lies in a barred zone.";

    /// <summary>As much of a zone as matters, so that one without end has a size.</summary>
    private static Box Around(Box near, Box zone) => near.Grown(1).Shared(zone);

    private static IEnumerable<string> RepeatFaults(NestingLayout layout) =>
        Enumerable.Range(0, layout.Task.RepeatMm > 0 ? layout.Placements.Length : 0)
            .Where(i => Math.Abs(Math.IEEERemainder(layout.PlacedOutline(i).Bounds.Left, layout.Task.RepeatMm)) > DistanceMm)
            .Select(i => $"{NameOf(layout, layout.Placements[i])} starts off the repeat.");

    private static IEnumerable<string> PairFaults(NestingLayout layout)
    {
        for (var i = 0; i < layout.Placements.Length; i++)
        {
            for (var j = 0; j < i; j++)
            {
                if (PairFault(layout, j, i) is { } fault)
                {
                    yield return $"{NameOf(layout, layout.Placements[j])} and {NameOf(layout, layout.Placements[i])} {fault}";
                }
            }
        }
    }

    private static string? PairFault(NestingLayout layout, int first, int second)
    {
        var (one, other) = (layout.PlacedOutline(first), layout.PlacedOutline(second));
        if (one.Bounds.Grown(layout.Task.GapMm).Shared(other.Bounds).IsEmpty)
        {
            return null;
        }

        var apartMm = Witness.DistanceMm(one, other);
        if (apartMm <= 0 && Witness.OverlapMm2(one, other) is var sharedMm2 and > OverlapMm2)
        {
            return $"overlap by {Text(sharedMm2)} mm2.";
        }

        return apartMm < layout.Task.GapMm - DistanceMm ? $"lie only {Text(apartMm)} mm apart." : null;
    }

    private static string NameOf(NestingLayout layout, NestingPlacement placement) =>
        $"{layout.Task.Items[placement.Item].Name} (copy {Text(placement.Copy + 1)})";

    private static string Text(double number) => number.ToString("0.######", CultureInfo.InvariantCulture);
}
