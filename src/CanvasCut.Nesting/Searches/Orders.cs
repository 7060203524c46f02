using System.Collections.Immutable;

namespace CanvasCut.Nesting;

/// <summary>Orders in which to place the pieces of a task.</summary>
internal static class Orders
{
    /// <summary>The largest piece first, by several measures of size, with turns free, lying and standing.</summary>
    public static IEnumerable<ImmutableArray<PieceChoice>> LargestFirst(PieceCatalog catalog)
    {
        Func<TurnedPiece, double>[] sizes =
        [
            piece => piece.Hull.AreaMm2,
            piece => piece.Hull.Bounds.WidthMm,
            piece => piece.Hull.Bounds.HeightMm,
            piece => Math.Max(piece.Hull.Bounds.WidthMm, piece.Hull.Bounds.HeightMm),
        ];
        Func<ImmutableArray<TurnedPiece>, int>[] turns =
        [
            _ => PieceChoice.AnyTurn,
            turned => turned.IndexOf(turned.MaxBy(piece => piece.Hull.Bounds.WidthMm)!),
            turned => turned.IndexOf(turned.MinBy(piece => piece.Hull.Bounds.WidthMm)!),
        ];
        return turns.SelectMany(turn => sizes.Select(size => Sorted(catalog, turn, size))).DistinctBy(Text);
    }

    /// <summary>How many orders <see cref="Every"/> gives, some of them alike; infinite when beyond a double.</summary>
    public static double CountOfEvery(PieceCatalog catalog)
    {
        var items = Copies(catalog).ToList();
        return Enumerable.Range(1, items.Count).Aggregate(1.0, (count, i) => count * i * catalog.Turns[items[i - 1]].Length);
    }

    /// <summary>Every order with every choice of turns.</summary>
    public static IEnumerable<ImmutableArray<PieceChoice>> Every(PieceCatalog catalog) => Arranged(catalog, [.. Copies(catalog)]).DistinctBy(Text);

    /// <summary>An order with two pieces exchanged, or one taken elsewhere, or one turned otherwise.</summary>
    public static ImmutableArray<PieceChoice> Varied(ImmutableArray<PieceChoice> order, PieceCatalog catalog, Dice dice)
    {
        var (i, j) = (dice.Below(order.Length), dice.Below(order.Length));
        if (order[i].Item == order[j].Item)
        {
            return order.SetItem(i, order[i] with { Turn = dice.Below(catalog.Turns[order[i].Item].Length + 1) - 1 });
        }

        return dice.Below(2) == 0
            ? order.SetItem(i, order[j]).SetItem(j, order[i])
            : order.RemoveAt(i).Insert(j, order[i]);
    }

    /// <summary>An order mixed up altogether.</summary>
    public static ImmutableArray<PieceChoice> Shuffled(ImmutableArray<PieceChoice> order, Dice dice)
    {
        var mixed = order.ToBuilder();
        for (var i = mixed.Count - 1; i > 0; i--)
        {
            var j = dice.Below(i + 1);
            (mixed[i], mixed[j]) = (mixed[j], mixed[i]);
        }

        return mixed.ToImmutable();
    }

    private static ImmutableArray<PieceChoice> Sorted(
        PieceCatalog catalog, Func<ImmutableArray<TurnedPiece>, int> turn, Func<TurnedPiece, double> size) =>
        [
            .. Copies(catalog)
                .Select(item => new PieceChoice(item, turn(catalog.Turns[item])))
                .OrderByDescending(choice => size(catalog.Turns[choice.Item][Math.Max(choice.Turn, 0)])),
        ];

    private static IEnumerable<int> Copies(PieceCatalog catalog) =>
        catalog.Task.Items.SelectMany((item, index) => Enumerable.Repeat(index, item.Demand));

    private static IEnumerable<ImmutableArray<PieceChoice>> Arranged(PieceCatalog catalog, ImmutableArray<int> items) =>
        items.IsEmpty
            ? [[]]
            : items.SelectMany((item, index) => Arranged(catalog, items.RemoveAt(index))
                .SelectMany(rest => catalog.Turns[item].Select((_, turn) => rest.Insert(0, new(item, turn)))));

    private static string Text(ImmutableArray<PieceChoice> order) => string.Join(' ', order);
}
