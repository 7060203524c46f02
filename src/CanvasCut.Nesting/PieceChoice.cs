namespace CanvasCut.Nesting;

/// <summary>One piece in an order to place: which item, and which of its turns, or <see cref="AnyTurn"/>.</summary>
internal readonly record struct PieceChoice(int Item, int Turn)
{
    /// <summary>The turn that reaches least far where the piece comes to lie.</summary>
    public const int AnyTurn = -1;
}
