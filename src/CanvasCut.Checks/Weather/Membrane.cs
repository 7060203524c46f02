using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>Cloth held along two edges and lifted between them: a shallow membrane (Roark, cables and membranes).</summary>
/// <param name="Span">From one held edge to the other.</param>
/// <param name="Stretching">How much of that is cloth alone, with the top's own cloth beyond; where the panel is bonded on, nothing stretches.</param>
/// <param name="Slack">How much longer it lies there than the span, unloaded.</param>
/// <param name="Stiffness">The tension that would stretch it to twice its length, were it to stay elastic.</param>
/// <remarks>
/// It hangs upward as a parabola of rise y: tension T = w·L²/8y, and the arc is longer than the span by 8y²/3L. That is what the
/// slack and the stretch T·c/EA give it, so T³·c/EA + T²·slack = w²·L³/24. The rise is small against the span, so that T is
/// the same all along.
/// </remarks>
public sealed record Membrane(Length Span, Length Stretching, Length Slack, ForcePerLength Stiffness)
{
    /// <summary>The pull in the plane of the cloth, on each unit of the edge.</summary>
    public ForcePerLength Pull(Pressure lift)
    {
        var load = lift.Pascals * lift.Pascals * Math.Pow(Span.Meters, 3) / 24;
        return ForcePerLength.FromNewtonsPerMeter(CubicPull.Of(Stretching.Meters / Stiffness.NewtonsPerMeter, Slack.Meters, load));
    }

    /// <summary>How far it rises in the middle.</summary>
    public Length Rise(Pressure lift) => Length.FromMeters(lift.Pascals * Span.Meters * Span.Meters / (8 * Pull(lift).NewtonsPerMeter));
}

/// <summary>The strip of cloth that ties the edge of a stiff panel to what holds it.</summary>
/// <param name="Width">From the panel to what holds it.</param>
/// <param name="Slack">How much longer it lies there than that, unloaded.</param>
/// <param name="Stretching">How much cloth it pulls at, with the top's own beyond what holds it.</param>
/// <param name="Stiffness">As for <see cref="Membrane"/>.</param>
/// <remarks>
/// It slants by θ, and T·θ bears what lifts the panel's edge; θ² = 2·(slack + T·c/EA)/width. It is half of Roark's cable with a load
/// in the middle: T³·2·c/(EA·width) + T²·2·slack/width = V².
/// </remarks>
public sealed record BorderTie(Length Width, Length Slack, Length Stretching, ForcePerLength Stiffness)
{
    /// <summary>The pull in the plane of the cloth, on each unit of the edge.</summary>
    public ForcePerLength Pull(ForcePerLength upright) => ForcePerLength.FromNewtonsPerMeter(
        CubicPull.Of(2 * (Stretching / Width) / Stiffness.NewtonsPerMeter, 2 * (Slack / Width), upright.NewtonsPerMeter * upright.NewtonsPerMeter));
}
