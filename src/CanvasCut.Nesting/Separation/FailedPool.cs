namespace CanvasCut.Nesting.Separation;

/// <summary>Arrangements in which some overlap was left, those with the least first.</summary>
internal sealed class FailedPool(ShapeTable table, Dice dice)
{
    private const int Most = 20;

    /// <summary>Only pieces at least so large, compared with the largest, are exchanged.</summary>
    private const double Large = 0.25;

    private readonly List<(double Total, Arrangement At)> _kept = [];

    /// <summary>Keeps an arrangement.</summary>
    public void Add(double total, Arrangement arrangement)
    {
        var rank = _kept.FindIndex(kept => kept.Total > total);
        _kept.Insert(rank < 0 ? _kept.Count : rank, (total, arrangement.Copy()));
        if (_kept.Count > Most)
        {
            _kept.RemoveAt(Most);
        }
    }

    /// <summary>Puts one of the kept, good ones more often, in place of another, with two large pieces exchanged.</summary>
    public void Draw(Arrangement into)
    {
        var part = dice.Part() * dice.Part();
        into.CopyFrom(_kept[(int)(part * _kept.Count)].At);
        var largest = Enumerable.Range(0, into.Count).Max(piece => SizeOf(into, piece));
        List<int> large = [.. Enumerable.Range(0, into.Count).Where(piece => SizeOf(into, piece) >= Large * largest)];
        var one = large[dice.Below(large.Count)];
        List<int> others = [.. large.Where(piece => table.Pieces[piece] != table.Pieces[one])];
        if (others.Count > 0)
        {
            Exchange(into, one, others[dice.Below(others.Count)]);
        }
        else
        {
            Exchange(into, one, dice.Below(into.Count));
        }
    }

    private double SizeOf(Arrangement at, int piece) => table.Shapes[at.Shape[piece]].HullAreaMm2;

    private void Exchange(Arrangement at, int one, int other)
    {
        var (first, second) = (Center(at, one), Center(at, other));
        PutAround(at, one, second);
        PutAround(at, other, first);
    }

    private static (double X, double Y) Center(Arrangement at, int piece) =>
        ((at.Left[piece] + at.Right[piece]) / 2, (at.Bottom[piece] + at.Top[piece]) / 2);

    private void PutAround(Arrangement at, int piece, (double X, double Y) center)
    {
        var middle = table.Shapes[at.Shape[piece]].Bounds.Center;
        var place = at.Kept(at.Shape[piece], center.X - middle.X, center.Y - middle.Y);
        at.Put(piece, at.Shape[piece], place.X, place.Y);
    }
}
