using CanvasCut.Geometry;

namespace CanvasCut.Tests.Geometry;

public sealed class CircularArcTests
{
    /// <summary>
    /// Radii: the published examples of the sagitta rule r = c²/8s + s/2 (calculator.7search.cc: chord 10, rise 3 and
    /// chord 8, rise 2). Girths: the same arcs and a top-sized one by L = 2R·asin(c/2R), worked by hand.
    /// </summary>
    [Theory]
    [InlineData(10, 3, 5.6667, 12.2495, 5e-5)]
    [InlineData(8, 2, 5, 9.2730, 5e-5)]
    [InlineData(2000, 100, 5050, 2013.3068, 5e-5)]
    [InlineData(72, 3, 217.5, 72.33, 5e-3)]
    public void An_arc_has_the_published_radius_and_girth(double chord, double rise, double radius, double girth, double tolerance)
    {
        var arc = CircularArc.FromChordAndRise(chord, rise);

        Assert.Equal(radius, arc.RadiusMm, tolerance);
        Assert.Equal(girth, arc.GirthMm, tolerance);
    }

    [Fact]
    public void Any_two_of_chord_girth_and_rise_give_the_third() =>
        Gen.Select(Gen.Double[100, 4000], Gen.Double[0, 0.4]).Sample((chord, ratio) =>
        {
            var arc = CircularArc.FromChordAndRise(chord, chord * ratio);

            Assert.Equal(arc.RiseMm, CircularArc.FromGirthAndChord(arc.GirthMm, chord).RiseMm, 1e-2);
            Assert.Equal(chord, CircularArc.FromGirthAndRise(arc.GirthMm, arc.RiseMm).ChordMm, 1e-6);
        });

    [Fact]
    public void A_flat_bow_has_no_radius_and_its_chord_for_girth()
    {
        var flat = CircularArc.FromChordAndRise(1500, 0);

        Assert.Equal(double.PositiveInfinity, flat.RadiusMm);
        Assert.Equal(1500, flat.GirthMm);
    }
}
