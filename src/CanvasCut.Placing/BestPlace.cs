using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;

namespace CanvasCut.Placing;

/// <summary>Finds the place with the largest smallest spare distance; see <see cref="FitChoice"/>.</summary>
/// <remarks>
/// Branch and bound: no distance changes by more than the mounting is moved, so the spare in the middle of an area of places says how large
/// it can be anywhere in it. The most promising area is quartered next; areas that cannot hold the best place are never looked into.
/// </remarks>
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
        var (field, equals) = (new SpareField(rules), new List<(Point Place, double Spare)>());
        var (open, best) = (new PriorityQueue<Area, double>(), double.NegativeInfinity);
        var (columns, rows) = (GridFrom(whole.Left, whole.Right), GridFrom(whole.Bottom, whole.Top));
        open.Enqueue(new(columns.First, rows.First, columns.Last, rows.Last), double.NegativeInfinity);
        while (open.TryDequeue(out var area, out var bound) && -bound >= best - EqualMm)
        {
            if (area.IsPlace)
            {
                var spare = field.At(area.X, area.Y, best - EqualMm);
                best = Math.Max(best, spare);
                equals.Add((new(area.X, area.Y), spare));
                continue;
            }

            for (var quarter = 0; quarter < Area.Quarters; quarter++)
            {
                if (area.Quarter(quarter) is { IsEmpty: false } part && field.Most((part.X, part.Y), (part.HalfX, part.HalfY), best - EqualMm) is var most && most >= best - EqualMm)
                {
                    open.Enqueue(part, -most);
                }
            }
        }

        return Plan.PlaceOf(equals.Where(each => each.Spare >= best - EqualMm).Select(each => each.Place).Aggregate((one, next) => IsNearer(next, one, whole.Center) ? next : one));
    }

    private static (int First, int Last) GridFrom(double low, double high) =>
        ((int)Math.Ceiling(low / FitChoice.GridMm), (int)Math.Floor(high / FitChoice.GridMm));

    /// <summary>The order among equal places: nearer the centreline, nearer the top's middle, forward, port.</summary>
    private static bool IsNearer(Point one, Point other, Point middle)
    {
        var first = (Math.Abs(one.X), Math.Abs(one.Y - middle.Y), -one.Y, one.X);
        var second = (Math.Abs(other.X), Math.Abs(other.Y - middle.Y), -other.Y, other.X);
        return first.CompareTo(second) < 0;
    }

    /// <summary>Places of the grid from corner to corner, both included.</summary>
    private readonly record struct Area(int Left, int Bottom, int Right, int Top)
    {
        public const int Quarters = 4;

        public bool IsEmpty => Right < Left || Top < Bottom;

        public bool IsPlace => Left == Right && Bottom == Top;

        public double X => (Left + Right) * (FitChoice.GridMm / 2);

        public double Y => (Bottom + Top) * (FitChoice.GridMm / 2);

        public double HalfX => (Right - Left) * (FitChoice.GridMm / 2);

        public double HalfY => (Top - Bottom) * (FitChoice.GridMm / 2);

        public Area Quarter(int number)
        {
            var (column, row) = ((int)Math.Floor((Left + Right) / 2.0), (int)Math.Floor((Bottom + Top) / 2.0));
            return new(number % 2 == 0 ? Left : column + 1, number < 2 ? Bottom : row + 1, number % 2 == 0 ? column : Right, number < 2 ? row : Top);
        }
    }
}
