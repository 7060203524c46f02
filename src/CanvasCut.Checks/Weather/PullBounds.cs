using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>What a unit of an edge bears, upright and in the plane of the cloth together, for each way that panel and cloth may behave.</summary>
/// <param name="Stiff">The bonded panel is a stiff plate, and the border of cloth ties it to the edge.</param>
/// <param name="Limp">The bonded panel bends like cloth, and the whole is taut; null where the edge across is not held.</param>
/// <param name="Slack">The same, the cloth as slack as it may become; null as before.</param>
public sealed record PullBounds(ForcePerLength Stiff, ForcePerLength? Limp, ForcePerLength? Slack)
{
    /// <summary>The greatest of them, by which it is judged.</summary>
    public ForcePerLength Worst => new[] { Stiff, Limp ?? Stiff, Slack ?? Stiff }.MaxBy(pull => pull.NewtonsPerMeter);

    /// <summary>The same, gathered on less of the edge.</summary>
    public PullBounds Times(double times) => new(Stiff * times, Limp * times, Slack * times);
}
