using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>One thing that holds the panel down.</summary>
/// <param name="Code">The check.</param>
/// <param name="Subject">What holds, in plain words.</param>
/// <param name="Load">The load at the wind it was worked out for, and what may be put on it.</param>
/// <param name="HoldsTo">The wind at which the load is all that may be put on it.</param>
public sealed record WindHold(string Code, string Subject, Measured Load, Speed HoldsTo)
{
    /// <summary>Whether it is the panel's own adhesive back, whose figure is its maker's.</summary>
    public bool IsAdhesiveBack { get; init; }

    /// <summary>The edge that it holds; null for what is no edge's.</summary>
    public Side? Edge { get; init; }

    /// <summary>The load for each way that panel and cloth may behave; null for what bears no pull of the cloth.</summary>
    public LoadBounds? Bounds { get; init; }
}

/// <summary>The load on a part for each way that panel and cloth may behave; see <see cref="PullBounds"/>.</summary>
/// <param name="Stiff">With a stiff panel.</param>
/// <param name="Limp">With a limp panel and taut cloth; null where the edge across is not held.</param>
/// <param name="Slack">The same with slack cloth.</param>
public sealed record LoadBounds(IQuantity Stiff, IQuantity? Limp, IQuantity? Slack)
{
    internal static LoadBounds Of(PullBounds pulls, Func<ForcePerLength, IQuantity> on) => new(
        on(pulls.Stiff),
        pulls.Limp is { } limp ? on(limp) : null,
        pulls.Slack is { } slack ? on(slack) : null);
}
