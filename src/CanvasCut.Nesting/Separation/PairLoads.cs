using System.Runtime.Intrinsics;

namespace CanvasCut.Nesting.Separation;

/// <summary>For each two pieces how deep they overlap, and how much the search minds.</summary>
/// <remarks>
/// What is minded grows where overlap persists, so that the search leaves a dead end: C. Voudouris, E. Tsang, "Guided
/// local search", European Journal of Operational Research 113 (1999); for nesting J. Egeblad, B. Nielsen,
/// A. Odgaard, "Fast neighborhood search for two- and three-dimensional nesting problems", the same 183 (2007).
/// </remarks>
internal sealed class PairLoads
{
    private const double LeastGrowth = 1.2;
    private const double MostGrowth = 2;
    private const double Decay = 0.95;

    /// <summary>So many pairs are worked on at once; the arrays are filled up to that.</summary>
    private const int Lanes = 4;

    private readonly ShapeTable _table;
    private readonly int _all;
    private readonly double[] _size;

    public PairLoads(ShapeTable table, Arrangement arrangement)
    {
        (_table, _all) = (table, arrangement.All);
        var room = ((_all * _all) + Lanes - 1) / Lanes * Lanes;
        (Load, Depth, _size) = (new double[room], new double[room], new double[room]);
        for (var one = 0; one < _all; one++)
        {
            for (var other = 0; other < _all; other++)
            {
                var (first, second) = (ShapeOf(one), ShapeOf(other));
                _size[(one * _all) + other] = Math.Sqrt(Math.Sqrt(first.HullAreaMm2 * second.HullAreaMm2));
            }
        }
    }

    /// <summary>By piece and piece, how much a millimetre of depth is minded.</summary>
    public double[] Load { get; }

    /// <summary>By piece and piece, how deep they overlap.</summary>
    public double[] Depth { get; }

    /// <summary>All overlap together, large pieces minded more, but whatever was minded before.</summary>
    public double Total { get; private set; }

    /// <summary>Forgets what was minded.</summary>
    public void Reset() => _size.CopyTo(Load, 0);

    /// <summary>Measures all pieces.</summary>
    public void MeasureAll(Arrangement arrangement)
    {
        for (var piece = 0; piece < arrangement.Count; piece++)
        {
            Measure(arrangement, piece);
        }
    }

    /// <summary>Measures a piece that was moved.</summary>
    public void Measure(Arrangement arrangement, int piece)
    {
        for (var other = 0; other < _all; other++)
        {
            var depth = other == piece ? 0 : DepthOf(arrangement, piece, other);
            Depth[(piece * _all) + other] = Depth[(other * _all) + piece] = depth;
        }
    }

    /// <summary>Adds up all overlap.</summary>
    public double Sum(int count)
    {
        Total = 0;
        for (var one = 0; one < count; one++)
        {
            for (var other = one + 1; other < _all; other++)
            {
                Total += Depth[(one * _all) + other] * _size[(one * _all) + other];
            }
        }

        return Total;
    }

    /// <summary>How much a piece's overlaps are minded.</summary>
    public double Of(int piece)
    {
        var sum = 0.0;
        for (var i = piece * _all; i < (piece + 1) * _all; i++)
        {
            sum += Load[i] * Depth[i];
        }

        return sum;
    }

    /// <summary>Minds overlap that is still there more, in proportion, and all else a little less.</summary>
    public void Grow()
    {
        var most = Vector256<double>.Zero;
        for (var i = 0; i < Depth.Length; i += Lanes)
        {
            most = Vector256.Max(most, Vector256.Create(Depth, i) * Vector256.Create(_size, i));
        }

        var worst = Vector256.Create(Math.Max(Math.Max(most[0], most[1]), Math.Max(most[2], most[3])));
        for (var i = 0; i < Depth.Length; i += Lanes)
        {
            var (depth, size, load) = (Vector256.Create(Depth, i), Vector256.Create(_size, i), Vector256.Create(Load, i));
            var grown = load * (Vector256.Create(LeastGrowth) + (depth * size / worst * (MostGrowth - LeastGrowth)));
            var isDeep = Vector256.GreaterThan(depth, Vector256<double>.Zero);
            Vector256.ConditionalSelect(isDeep, grown, Vector256.Max(size, load * Decay)).CopyTo(Load, i);
        }
    }

    private SearchShape ShapeOf(int piece) => piece < _table.Pieces.Length
        ? _table.Shapes[_table.Choices[_table.Pieces[piece]][0]]
        : _table.Shapes[_table.FirstZone + piece - _table.Pieces.Length];

    private double DepthOf(Arrangement at, int piece, int other)
    {
        var gap = _table.Task.GapMm;
        var isNear = at.Left[other] < at.Right[piece] + gap && at.Right[other] > at.Left[piece] - gap &&
            at.Bottom[other] < at.Top[piece] + gap && at.Top[other] > at.Bottom[piece] - gap;
        return isNear ? _table.Forbidden(at.Shape[other], at.Shape[piece]).DepthMm(at.X[piece] - at.X[other], at.Y[piece] - at.Y[other]) : 0;
    }
}
