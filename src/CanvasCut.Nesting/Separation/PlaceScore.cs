using System.Numerics;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace CanvasCut.Nesting.Separation;

/// <summary>Tells how bad a place is for a piece.</summary>
internal sealed class PlaceScore(ShapeTable table, Arrangement at, PairLoads loads)
{
    /// <summary>How many places were tried.</summary>
    public long Steps { get; private set; }

    /// <summary>The overlaps of a piece at a place, as they are minded; anything above a limit when they are more than that.</summary>
    public double Of(int piece, int shape, double x, double y, double limit)
    {
        Steps++;
        var (bounds, gap) = (table.Shapes[shape].Bounds, table.Task.GapMm);
        var left = Vector512.Create(bounds.Left + x - gap);
        var right = Vector512.Create(bounds.Right + x + gap);
        var bottom = Vector512.Create(bounds.Bottom + y - gap);
        var top = Vector512.Create(bounds.Top + y + gap);
        ref var lefts = ref MemoryMarshal.GetArrayDataReference(at.Left);
        ref var rights = ref MemoryMarshal.GetArrayDataReference(at.Right);
        ref var bottoms = ref MemoryMarshal.GetArrayDataReference(at.Bottom);
        ref var tops = ref MemoryMarshal.GetArrayDataReference(at.Top);
        var sum = 0.0;
        for (var first = 0; first < at.Left.Length && sum <= limit; first += Arrangement.Lanes)
        {
            var i = (nuint)first;
            var isNear = Vector512.LessThan(Vector512.LoadUnsafe(ref lefts, i), right) & Vector512.GreaterThan(Vector512.LoadUnsafe(ref rights, i), left) &
                Vector512.LessThan(Vector512.LoadUnsafe(ref bottoms, i), top) & Vector512.GreaterThan(Vector512.LoadUnsafe(ref tops, i), bottom);
            for (var near = Vector512.ExtractMostSignificantBits(isNear); near != 0; near &= near - 1)
            {
                var other = first + BitOperations.TrailingZeroCount(near);
                sum += other == piece ? 0 : loads.Load[(piece * at.All) + other] * Depth(other, shape, x, y);
            }
        }

        return sum;
    }

    private double Depth(int other, int shape, double x, double y) =>
        table.Forbidden(at.Shape[other], shape).DepthMm(x - at.X[other], y - at.Y[other]);
}
