using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Nesting;

/// <summary>
/// Pieces that cannot pass each other lie in a row along the strip; in the best order and the best turns the row is so long.
/// </summary>
/// <remarks>
/// For two pieces the least step from the left edge of the one to the left edge of the next follows from their no-fit
/// polygon (J. Bennell and J. Oliveira, European Journal of Operational Research 184, 2008), so triangles that lie into
/// each other count as they are. The best order is found by going through all sets of pieces: M. Held and R. Karp,
/// "A dynamic programming approach to sequencing problems", SIAM Journal 10 (1962). Pieces with dents, and those of many poses, are left out.
/// </remarks>
internal sealed class RowBound
{
    /// <summary>The work doubles with every piece more.</summary>
    private const int MostPieces = 10;

    /// <summary>Every pose is held against every other.</summary>
    private const int MostPoses = 8;

    private readonly NestingTask _task;
    private readonly Dictionary<(RowPiece First, RowPiece Next), double> _stepsMm = [];

    private RowBound(NestingTask task) => _task = task;

    /// <summary>How long the row is; 0 when no two pieces are in each other's way.</summary>
    public static double LengthMm(NestingTask task) => new RowBound(task).LengthMm();

    private double LengthMm()
    {
        var row = Row();
        return row.Count < 2 ? 0 : Shortest(row);
    }

    /// <summary>The tallest pieces of which each is in the way of each; every one in all its turns.</summary>
    private List<ImmutableArray<RowPiece>> Row()
    {
        var row = new List<ImmutableArray<RowPiece>>();
        var tallestFirst = _task.Items.Index()
            .Where(each => each.Item.Poses.Length <= MostPoses && ConvexParts.IsConvex(each.Item.Shape))
            .Select(each => (each.Item.Demand, Turns: RowPiece.Of(_task, each.Index)))
            .OrderByDescending(each => each.Turns.Min(piece => piece.Shape.Bounds.HeightMm));
        foreach (var (demand, turns) in tallestFirst)
        {
            for (var copy = 0; copy < demand && row.Count < MostPieces && row.All(other => Blocks(other, turns)); copy++)
            {
                row.Add(turns);
            }
        }

        return row;
    }

    private bool Blocks(ImmutableArray<RowPiece> some, ImmutableArray<RowPiece> others) =>
        some.All(one => others.All(other => StepMm(one, other) > 0 && StepMm(other, one) > 0));

    private double Shortest(List<ImmutableArray<RowPiece>> row)
    {
        var all = (1 << row.Count) - 1;
        var best = new Dictionary<(int Set, int Last, int Turn), double>();
        for (var last = 0; last < row.Count; last++)
        {
            for (var turn = 0; turn < row[last].Length; turn++)
            {
                best[(1 << last, last, turn)] = 0;
            }
        }

        for (var set = 1; set < all; set++)
        {
            foreach (var ((_, last, turn), reachedMm) in Ending(best, row, set))
            {
                for (var next = 0; next < row.Count; next++)
                {
                    for (var nextTurn = 0; (set & (1 << next)) == 0 && nextTurn < row[next].Length; nextTurn++)
                    {
                        var key = (set | (1 << next), next, nextTurn);
                        best[key] = Math.Min(best.GetValueOrDefault(key, double.PositiveInfinity), reachedMm + StepMm(row[last][turn], row[next][nextTurn]));
                    }
                }
            }
        }

        return Ending(best, row, all).Min(end => end.Value + row[end.Key.Last][end.Key.Turn].Shape.Bounds.WidthMm);
    }

    private static List<KeyValuePair<(int Set, int Last, int Turn), double>> Ending(
        Dictionary<(int Set, int Last, int Turn), double> best, List<ImmutableArray<RowPiece>> row, int set) =>
    [
        .. from last in Enumerable.Range(0, row.Count)
           from turn in Enumerable.Range(0, row[last].Length)
           let key = (set, last, turn)
           where best.ContainsKey(key)
           select KeyValuePair.Create(key, best[key]),
    ];

    private double StepMm(RowPiece first, RowPiece next)
    {
        if (!_stepsMm.TryGetValue((first, next), out var stepMm))
        {
            stepMm = LeastStepMm(first.Shape, next.Shape);
            _stepsMm.Add((first, next), stepMm);
        }

        return stepMm;
    }

    /// <summary>
    /// Whichever heights the two take in the strip. The far side of a convex zone is farthest in its middle, so the
    /// least lies at one of the two farthest heights.
    /// </summary>
    private double LeastStepMm(Outline first, Outline next)
    {
        var zone = ConvexParts.Of(MinkowskiSum.OfConvex(first, next.Turned(2)), 2 * _task.GapMm)[0];
        var lowest = first.Bounds.HeightMm - _task.StripWidthMm - BoundTurns.SlackMm;
        var highest = _task.StripWidthMm - next.Bounds.HeightMm + BoundTurns.SlackMm;
        return Math.Min(FreeFromMm(zone, lowest), FreeFromMm(zone, highest));
    }

    /// <summary>The least place not left of 0 that lies outside the zone at a height.</summary>
    private static double FreeFromMm(Outline zone, double height)
    {
        var (left, right) = (double.PositiveInfinity, double.NegativeInfinity);
        for (var i = 0; i < zone.Count; i++)
        {
            var (from, to) = (zone[i], zone[i + 1]);
            if (Math.Min(from.Y, to.Y) <= height && Math.Max(from.Y, to.Y) >= height && from.Y != to.Y)
            {
                var x = from.Toward(to, (height - from.Y) / (to.Y - from.Y)).X;
                (left, right) = (Math.Min(left, x), Math.Max(right, x));
            }
        }

        return left < -BoundTurns.SlackMm && right > BoundTurns.SlackMm ? right : 0;
    }

    /// <summary>A piece in one of its turns, its lower left corner at the origin.</summary>
    private sealed record RowPiece(int Item, int Quarters, Outline Shape)
    {
        public static ImmutableArray<RowPiece> Of(NestingTask task, int item) =>
        [
            .. BoundTurns.Of(task.Items[item], task.StripWidthMm).Select(pose => pose.Of(task.Items[item].Shape))
                .Select((shape, turn) => new RowPiece(item, turn, shape.MovedBy(new Point(0, 0) - shape.Bounds.LowerLeft))),
        ];

        public bool Equals(RowPiece? other) => other is not null && (Item, Quarters) == (other.Item, other.Quarters);

        public override int GetHashCode() => HashCode.Combine(Item, Quarters);
    }
}
