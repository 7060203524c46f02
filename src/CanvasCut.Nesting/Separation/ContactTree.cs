using CanvasCut.Geometry;

namespace CanvasCut.Nesting.Separation;

/// <summary>Lays piece after piece where each touches others, and goes on with the best of what comes of it.</summary>
/// <remarks>
/// A beam search: at every level all children of the kept layouts are judged, and the best few are kept. It is repeated with twice
/// as many kept each time. P. Ow, T. Morton, "Filtered beam search in scheduling", International Journal of Production
/// Research 26 (1988).
/// </remarks>
internal sealed class ContactTree
{
    /// <summary>Into so many lanes the strip is divided to see how far it is filled.</summary>
    private const int Lanes = 48;

    private const int MostKept = 4096;

    private readonly ShapeTable _table;
    private readonly Arrangement _at;
    private readonly ContactPlaces _places;
    private readonly bool _isFrontGuided;
    private readonly int[] _firstPiece;
    private readonly double[] _front = new double[Lanes];

    /// <summary>Makes a tree.</summary>
    /// <param name="table">The pieces.</param>
    /// <param name="isFrontGuided">Whether waste counts only behind pieces, or as far as the farthest piece reaches.</param>
    public ContactTree(ShapeTable table, bool isFrontGuided)
    {
        (_table, _isFrontGuided) = (table, isFrontGuided);
        _at = new(table) { LengthMm = double.MaxValue };
        _places = new(table, _at);
        _firstPiece = [.. table.Choices.Select((_, item) => table.Pieces.IndexOf(item))];
    }

    /// <summary>The shortest arrangement of all pieces; null as long as there is none.</summary>
    public Arrangement? Best { get; private set; }

    /// <summary>How many places were tried.</summary>
    public long Steps => _places.Steps;

    /// <summary>Searches until the steps are spent or a length is reached.</summary>
    /// <param name="enoughMm">No shorter length is needed.</param>
    /// <param name="isSpent">Whether to end; asked after every layout that children were made of.</param>
    public void Grow(double enoughMm, Func<bool> isSpent)
    {
        for (var kept = 1; kept <= MostKept && !isSpent() && !(Best?.LengthMm <= enoughMm); kept *= 2)
        {
            List<Layout> level = [new(null, default, [.. _table.Task.Items.Select(item => item.Demand)], 0, 0, 0)];
            for (var depth = 0; depth < _table.Pieces.Length && level.Count > 0; depth++)
            {
                level = Next(level, kept, isSpent);
            }

            Keep(level);
        }
    }

    private List<Layout> Next(List<Layout> level, int kept, Func<bool> isSpent)
    {
        var children = new List<Layout>();
        foreach (var layout in level.TakeWhile((_, index) => index == 0 || !isSpent()))
        {
            Show(layout);
            children.AddRange(Children(layout));
        }

        return [.. children.OrderBy(child => child.Guide).DistinctBy(child => (Math.Round(child.Guide, 9), Math.Round(child.AreaMm2, 3))).Take(kept)];
    }

    private IEnumerable<Layout> Children(Layout layout)
    {
        for (var item = 0; item < layout.Left.Length; item++)
        {
            foreach (var shape in layout.Left[item] > 0 ? _table.Choices[item] : [])
            {
                var piece = _firstPiece[item] + _table.Task.Items[item].Demand - layout.Left[item];
                foreach (var place in _places.Of(piece, shape, layout.ReachMm))
                {
                    yield return Child(layout, item, (piece, shape, place));
                }
            }
        }
    }

    private Layout Child(Layout layout, int item, (int Piece, int Shape, Point At) laid)
    {
        _at.Put(laid.Piece, laid.Shape, laid.At.X, laid.At.Y);
        var left = layout.Left.ToArray();
        left[item]--;
        var (reachMm, areaMm2) = (Math.Max(layout.ReachMm, _at.Right[laid.Piece]), layout.AreaMm2 + _table.Task.Items[item].Shape.AreaMm2);
        var filledMm2 = _isFrontGuided ? FrontMm2() : reachMm * _table.Task.StripWidthMm;
        _at.Lift(laid.Piece);
        return new(layout, laid, left, reachMm, areaMm2, filledMm2 / areaMm2);
    }

    /// <summary>What lies between the strip's start and the right side of the farthest piece in each lane.</summary>
    private double FrontMm2()
    {
        Array.Clear(_front);
        var laneMm = _table.Task.StripWidthMm / Lanes;
        for (var piece = 0; piece < _at.Count; piece++)
        {
            for (var lane = 0; lane < Lanes; lane++)
            {
                var middle = (lane + 0.5) * laneMm;
                _front[lane] = middle > _at.Bottom[piece] && middle < _at.Top[piece] ? Math.Max(_front[lane], _at.Right[piece]) : _front[lane];
            }
        }

        return _front.Sum() * laneMm;
    }

    private void Show(Layout layout)
    {
        for (var piece = 0; piece < _at.Count; piece++)
        {
            _at.Lift(piece);
        }

        for (var each = layout; each.Before is not null; each = each.Before)
        {
            _at.Put(each.Laid.Piece, each.Laid.Shape, each.Laid.At.X, each.Laid.At.Y);
        }
    }

    private void Keep(List<Layout> level)
    {
        if (level.MinBy(layout => layout.ReachMm) is { } best && best.Left.All(left => left == 0) && !(Best?.LengthMm <= best.ReachMm))
        {
            Show(best);
            Best = _at.Copy();
            Best.LengthMm = best.ReachMm;
        }
    }

    /// <summary>Some pieces laid, the last one, what is left, and how good it is: the less the better.</summary>
    private sealed record Layout(Layout? Before, (int Piece, int Shape, Point At) Laid, int[] Left, double ReachMm, double AreaMm2, double Guide);
}
