using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Tests.Geometry;

/// <summary>
/// Beams against named table values, and against routes that share no formula with ours: influence coefficients of the
/// simple beam with every set of contacts tried, and the large-deflection curve stepped out point by point.
/// </summary>
public sealed class ElasticStripTests
{
    private const double Weight = 2e-9;
    private const double Span = 1000;

    /// <summary>Roark's Formulas for Stress and Strain, table 8.1, case 2e, simple ends: M = wl²/8 and y = 5wl⁴/384EI at the middle.</summary>
    [Fact]
    public void A_simple_beam_hangs_as_published()
    {
        var strip = ElasticStrip.Over(Span, [], Weight);

        Assert.Equal(Weight * Span * Span / 8, strip.CurvatureAt(Span / 2), 1e-15);
        Assert.Equal(-5 * Weight * Math.Pow(Span, 4) / 384, strip.HeightAt(Span / 2), 1e-9);
        Assert.Equal((8 / (Weight * Span * Span), Span / 2), strip.Sharpest);
    }

    /// <summary>
    /// Equal spans all loaded (AISC Steel Construction Manual, table 3-22c, continuous beams; the two-span case is Roark's
    /// propped beam mirrored): moments over the supports in wl², pushes in wl.
    /// </summary>
    [Theory]
    [InlineData(2, new[] { 1 / 8.0 }, new[] { 10 / 8.0 })]
    [InlineData(3, new[] { 1 / 10.0, 1 / 10.0 }, new[] { 1.1, 1.1 })]
    [InlineData(4, new[] { 3 / 28.0, 2 / 28.0, 3 / 28.0 }, new[] { 32 / 28.0, 26 / 28.0, 32 / 28.0 })]
    public void A_beam_over_equal_spans_bends_as_published(int spans, double[] moments, double[] pushes)
    {
        var rests = Enumerable.Range(1, spans - 1).Select(i => new StripRest(i * Span, 0)).ToImmutableArray();
        var contacts = ElasticStrip.Over(spans * Span, rests, Weight).Contacts;

        Assert.Equal(moments, contacts.Select(contact => Math.Round(-contact.CurvaturePerMm / (Weight * Span * Span), 12)).Select(value => value), Near);
        Assert.Equal(pushes, contacts.Select(contact => contact.PushPerMm2 / (Weight * Span)), Near);
    }

    /// <summary>The middle-loaded simple beam, Roark table 8.1, case 1e (d = PL³/48EI, M = PL/4): R = L²/12d; the circle over the same rise has L²/8d.</summary>
    [Theory]
    [InlineData(2000, 1000, 100, 10000 / 3.0)]
    [InlineData(2000, 800, 100, 3200)]
    [InlineData(1290, 645, 29, 1290 * 1290 / (12 * 29.0))]
    public void A_ridge_bends_to_the_published_radius(double length, double at, double rise, double radius)
    {
        var strip = ElasticStrip.Over(length, [new(at, rise)], 0);

        Assert.Equal(radius, Assert.Single(strip.Contacts).RadiusMm, 1e-8);
        Assert.Equal(radius, strip.Sharpest.RadiusMm, 1e-8);
    }

    [Fact]
    public void A_ridge_is_half_as_sharp_again_as_the_arc_of_the_same_rise()
    {
        var strip = ElasticStrip.Over(2000, [new(1000, 20)], 0);

        Assert.Equal(1.5, CircularArc.FromChordAndRise(2000, 20).RadiusMm / strip.Sharpest.RadiusMm, 0.015);
    }

    [Fact]
    public void A_strip_lifts_off_a_rest_that_is_too_low()
    {
        var strip = ElasticStrip.Over(2000, [new(500, -5), new(1000, 40), new(1500, 15)], 0);

        Assert.Equal(1, Assert.Single(strip.Contacts).Rest);
        Assert.True(strip.HeightAt(1500) > 15);
    }

    [Fact]
    public void A_heavy_strip_lies_on_the_floor_and_is_straight_there()
    {
        var floor = Enumerable.Range(1, 99).Select(i => new StripRest(i * 20, -10)).ToImmutableArray();
        var strip = ElasticStrip.Over(2000, floor, 1e-7);

        Assert.Equal(-10, strip.HeightAt(1000), 1e-6);
        Assert.True(Math.Abs(strip.CurvatureAt(1000)) < 1e-5);
        Assert.All(floor, rest => Assert.True(strip.HeightAt(rest.AtMm) >= rest.HeightMm - 1e-6));
    }

    /// <summary>Every set of contacts is tried, each solved with Roark's influence coefficients; the one that pushes everywhere and clears everything is the answer.</summary>
    [Fact]
    public void The_contacts_are_those_of_an_exhaustive_search_by_another_formula() =>
        Gen.Select(Gen.Int[-3000, 3000].Array[5], Gen.Int[0, 200]).Sample((hundredths, tenths) =>
        {
            // In hundredths and a part of one that differs: a rest within round-off of the strip may be called touched or not.
            var weight = tenths * 1e-10;
            var rests = hundredths.Select((height, i) => new StripRest(300 * (i + 1), (height / 100.0) + (0.0017 * Math.Sqrt(i + 2)))).ToImmutableArray();
            var strip = ElasticStrip.Over(1800, rests, weight);
            var (set, pushes) = InfluenceBeam.Search(1800, rests, weight);

            Assert.Equal(set, strip.Contacts.Select(contact => contact.Rest));
            foreach (var (contact, push) in strip.Contacts.Zip(pushes))
            {
                Assert.Equal(push, contact.PushPerMm2, 1e-4 * Math.Abs(push) + 1e-13);
                Assert.Equal(InfluenceBeam.CurvatureAt(1800, rests, (set, pushes), weight, contact.AtMm), contact.CurvaturePerMm, 1e-10);
            }
        });

    /// <summary>
    /// The large-deflection curve of a strip lifted in its middle, its ends free to slide, stepped out with a fourth-order
    /// rule. At a rise of a tenth of the length the beam is 3 % sharper, at a twentieth 1 %: on the safe side.
    /// </summary>
    [Theory]
    [InlineData(0.15, 0.99, 1.0)]
    [InlineData(0.30, 0.96, 0.98)]
    public void Large_bends_are_gentler_than_the_beam_says(double endSlope, double least, double most)
    {
        var (length, rise, curvature) = Elastica.MiddleLifted(endSlope);
        var strip = ElasticStrip.Over(length, [new(length / 2, rise)], 0);

        Assert.InRange(curvature * strip.Sharpest.RadiusMm, least, most);
    }

    [Fact]
    public void The_length_is_that_of_many_short_steps()
    {
        var strip = ElasticStrip.Over(1200, [new(500, 25), new(900, 10)], 5e-9);
        var heights = Enumerable.Range(0, 120001).Select(i => strip.HeightAt(i / 100.0)).ToList();
        var stepped = heights.Zip(heights.Skip(1)).Sum(pair => double.Hypot(0.01, pair.Second - pair.First));

        Assert.Equal(stepped - 1200, strip.ExtraLengthMm, 0.005);
    }

    [Fact]
    public void Rests_out_of_order_are_refused() =>
        Assert.Throws<ArgumentException>(() => ElasticStrip.Over(1000, [new(600, 0), new(400, 0)], 0));

    private static bool Near(double one, double other) => Math.Abs(one - other) < 1e-9;
}
