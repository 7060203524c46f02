namespace CanvasCut.Nesting;

/// <summary>What a search is told besides its task.</summary>
/// <param name="Budget">How long it may go on.</param>
/// <param name="Seed">Where its chance numbers start.</param>
/// <param name="Report">Told of every shorter layout, from any thread; null when nobody listens.</param>
/// <param name="Cancellation">Ends the search early; the best layout found until then is given.</param>
public sealed record NestingControl(
    NestingBudget Budget, int Seed = 1, Action<NestingProgress>? Report = null, CancellationToken Cancellation = default)
{
    /// <summary>A quick search with the same result every time.</summary>
    public static NestingControl Quick { get; } = new(NestingBudget.OfSteps(200_000));
}
