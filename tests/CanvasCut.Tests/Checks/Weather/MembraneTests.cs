using CanvasCut.Checks;
using UnitsNet;

namespace CanvasCut.Tests.Checks.Weather;

/// <summary>
/// Cloth that bears by pulling, against R. Roark's flexible cables (Formulas for Stress and Strain, beams whose ends are held; from memory): under
/// w on each unit of a length l, T = (w²·l²·EA/24)^(1/3) and y = (3·w·l⁴/64·EA)^(1/3); under W in the middle T = ½·(W²·EA)^(1/3) and
/// y = ½·l·(W/EA)^(1/3). And against arcs measured by adding up short chords.
/// </summary>
public sealed class MembraneTests
{
    private static readonly Gen<(double Span, double Stretching, double Slack, double Stiffness, double Lift)> AnyCloth =
        Gen.Select(Gen.Double[0.2, 2.5], Gen.Double[0.02, 2], Gen.Double[0, 0.02], Gen.Double[10e3, 200e3], Gen.Double[20, 600]);

    /// <summary>
    /// A cable of 2 m and EA = 30 kN under 240 N/m: T = (240² × 2² × 30000 / 24)^(1/3) = (2.88e8)^(1/3) = 660.4 N and
    /// y = (3 × 240 × 2⁴ / (64 × 30000))^(1/3) = 0.006^(1/3) = 0.18171 m.
    /// </summary>
    [Fact]
    public void Taut_cloth_is_Roarks_cable_under_an_even_load()
    {
        var cloth = new Membrane(Metres(2), Metres(2), Length.Zero, Stiffness(30e3));

        Assert.Equal(660.39, cloth.Pull(Pressure.FromPascals(240)).NewtonsPerMeter, 0.01);
        Assert.Equal(0.18171, cloth.Rise(Pressure.FromPascals(240)).Meters, 1e-5);
    }

    /// <summary>
    /// A cable of 2 m and EA = 32 kN with 100 N in the middle: T = ½·(100² × 32000)^(1/3) = 341.995 N, y = ½ × 2 × (100/32000)^(1/3) = 0.14620 m. A tie is
    /// one half of it: 1 m wide, with 50 N at its end, and 50 / 341.995 is its slant, 0.14620 in 1 m.
    /// </summary>
    [Fact]
    public void A_tie_is_half_of_Roarks_cable_with_a_load_in_the_middle()
    {
        var pull = new BorderTie(Metres(1), Length.Zero, Metres(1), Stiffness(32e3)).Pull(ForcePerLength.FromNewtonsPerMeter(50));

        Assert.Equal(341.995, pull.NewtonsPerMeter, 0.001);
        Assert.Equal(0.14620, 50 / pull.NewtonsPerMeter, 1e-5);
    }

    /// <summary>
    /// The parabola y = 4·h·x·(L − x)/L² of the rise that is found is measured in chords: it is as long as span, slack and stretch together,
    /// as far as h is small against L (8·h²/3·L leaves out a part of about 2.4·(h/L)²).
    /// </summary>
    [Fact]
    public void The_arc_is_as_long_as_the_cloth() => AnyCloth.Sample(each =>
    {
        const int Chords = 20_000;
        var cloth = new Membrane(Metres(each.Span), Metres(each.Stretching), Metres(each.Slack), Stiffness(each.Stiffness));
        var (pull, rise) = (cloth.Pull(Pressure.FromPascals(each.Lift)).NewtonsPerMeter, cloth.Rise(Pressure.FromPascals(each.Lift)).Meters);
        double Y(int i) => 4 * rise * i * (Chords - i) / ((double)Chords * Chords);
        var arc = Enumerable.Range(0, Chords).Sum(i => double.Hypot(each.Span / Chords, Y(i + 1) - Y(i)));
        var longer = each.Slack + (pull * each.Stretching / each.Stiffness);

        Assert.Equal(each.Lift * each.Span * each.Span / 8, pull * rise, 1e-6 * pull * rise);
        Assert.InRange(arc - each.Span, longer * (1 - (3 * Math.Pow(rise / each.Span, 2))) - 1e-9, longer + 1e-9);
    });

    /// <summary>So slack cloth pulls less than taut cloth, and cloth that stretches less pulls more: both bounds of the judged load lie on the safe side.</summary>
    [Fact]
    public void Slack_and_stretch_ease_the_pull() => AnyCloth.Sample(each =>
    {
        var cloth = new Membrane(Metres(each.Span), Metres(each.Stretching), Metres(each.Slack), Stiffness(each.Stiffness));
        double Pull(Membrane membrane) => membrane.Pull(Pressure.FromPascals(each.Lift)).NewtonsPerMeter;

        Assert.True(Pull(cloth with { Slack = cloth.Slack + Metres(0.001) }) < Pull(cloth));
        Assert.True(Pull(cloth with { Stretching = cloth.Stretching * 1.1 }) < Pull(cloth));
    });

    private static Length Metres(double value) => Length.FromMeters(value);

    private static ForcePerLength Stiffness(double newtonsPerMetre) => ForcePerLength.FromNewtonsPerMeter(newtonsPerMetre);
}
