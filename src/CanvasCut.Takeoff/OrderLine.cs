namespace CanvasCut.Takeoff;

/// <summary>One thing to buy.</summary>
/// <param name="Item">What to ask for.</param>
/// <param name="Quantity">How much, as a number with a point.</param>
/// <param name="Unit">Of what the number counts: piece, m, yd.</param>
/// <param name="Also">The same in the other system, or which exactly; may be empty.</param>
/// <param name="For">What it is for.</param>
public sealed record OrderLine(string Item, string Quantity, string Unit, string Also, string For);
