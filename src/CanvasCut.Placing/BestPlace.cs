using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;

namespace CanvasCut.Placing;

/// <summary>Finds the place with the largest smallest spare distance; see <see cref="FitChoice"/>.</summary>
internal static class BestPlace
{
    /// <summary>Two spares nearer than this are equal; a millionth of a millimetre hides only round-off.</summary>
    private const double EqualMm = 1e-6;

    /// <summary>The best place for the carrier's middle.</summary>
    /// <param name="job">The job.</param>
    /// <param name="shape">What is mounted, its carrier's middle at the origin.</param>
    public static TopPlace Of(CarrierJob job, MountedShape shape) => Of(Plan.Of(job.Top), Clearances.RulesOf(job, shape));

    /// <summary>The best place within a box by rules made with the carrier's middle at the origin.</summary>
    public static TopPlace Of(Box whole, ImmutableArray<DistanceRule> rules)
    {
        var rows = GridFrom(whole.Bottom, whole.Top)
            .Select(y => (At: y, Spare: Smallest(rules.Where(rule => !rule.From.DependsOnX), new(0, y))))
            .ToList();
        var columns = GridFrom(whole.Left, whole.Right)
            .Select(x => (At: x, Spare: Smallest(rules.Where(rule => !rule.From.DependsOnY), new(x, 0))))
            .ToList();
        DistanceRule[] others = [.. rules.Where(rule => rule.From is { DependsOnX: true, DependsOnY: true })];
        var best = (Point: whole.Center, Spare: double.NegativeInfinity);
        foreach (var point in rows.SelectMany(row => columns.Select(column => (
            Point: new Point(column.At, row.At),
            Spare: Math.Min(row.Spare, column.Spare)))))
        {
            if (point.Spare < best.Spare - EqualMm)
            {
                continue;
            }

            var spare = Math.Min(point.Spare, Smallest(others, point.Point - new Point(0, 0)));
            if (spare > best.Spare + EqualMm || (spare >= best.Spare - EqualMm && IsNearer(point.Point, best.Point, whole.Center)))
            {
                best = (point.Point, Math.Max(spare, best.Spare));
            }
        }

        return Plan.PlaceOf(best.Point);
    }

    private static IEnumerable<double> GridFrom(double low, double high)
    {
        var (first, last) = ((int)Math.Ceiling(low / FitChoice.GridMm), (int)Math.Floor(high / FitChoice.GridMm));
        return Enumerable.Range(first, last - first + 1).Select(i => i * FitChoice.GridMm);
    }

    private static double Smallest(IEnumerable<DistanceRule> rules, Step step) => rules.Aggregate(double.PositiveInfinity, (least, rule) => Math.Min(least, rule.SpareMm(step)));

    /// <summary>The order among equal places: nearer the centreline, nearer the top's middle, forward, port.</summary>
    private static bool IsNearer(Point one, Point other, Point middle)
    {
        var first = (Math.Abs(one.X), Math.Abs(one.Y - middle.Y), -one.Y, one.X);
        var second = (Math.Abs(other.X), Math.Abs(other.Y - middle.Y), -other.Y, other.X);
        return first.CompareTo(second) < 0;
    }
}
