using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Tests.Patterns;

public sealed class TopSurfaceTests
{
    private const double Inch = 25.4;
    private static readonly CircularArc Published = CircularArc.FromChordAndRise(72 * Inch, 3 * Inch);

    /// <summary>
    /// Chord 72 in, crown 3 in: R = c²/8s + s/2 (the sagitta rule, mathcentral.uregina.ca) = 217.5 in = 5.52 m, and
    /// girth = 2R·asin(c/2R) = 72.33 in. The ends of that girth lie a chord apart and a crown below the middle.
    /// </summary>
    [Fact]
    public void A_bow_has_the_published_girth_chord_crown_and_radius()
    {
        var surface = Known([At(100, 0, Published), At(1100, 0, Published)]);
        var half = 217.5 * Math.Asin(72 / (2 * 217.5)) * Inch;
        var (port, middle, starboard) = (Place(100, -half), Place(100, 0), Place(100, half));

        Assert.Equal(72.33, surface.GirthBetween(port, starboard).Inches, 0.005);
        Assert.Equal(2 * half, surface.GirthBetween(port, starboard).Millimeters, 1e-6);
        Assert.Equal(72, surface.DistanceBetween(port, starboard).Inches, 1e-9);
        Assert.Equal(3, (surface.PointAt(middle).Z - surface.PointAt(port).Z) / Inch, 1e-9);
        Assert.Equal(5.52, surface.ArcRadiusAt(Place(600, 200))!.Value.Meters, 0.005);
    }

    /// <summary>Two equal bows make a cylinder, which unrolls: a slanting line is the hypotenuse of the cloth.</summary>
    [Fact]
    public void A_slanting_line_on_a_cylinder_is_a_hypotenuse() =>
        Assert.Equal(
            double.Hypot(900, 1400),
            Known([At(100, 0, Published), At(1100, 0, Published)]).GirthBetween(Place(150, -700), Place(1050, 700)).Millimeters,
            1e-6);

    /// <summary>Spans of cloth 500 mm rising 300 mm: a 3-4-5 triangle, so 400 mm on the level, turned by twice asin(3/5).</summary>
    [Fact]
    public void A_ridge_is_a_three_four_five_triangle_on_both_sides()
    {
        var surface = Known([At(0, 0, Published), At(500, 300, Published), At(1000, 0, Published)]);
        var ridge = surface.Ridges[1];

        Assert.Equal(2 * Math.Asin(0.6), ridge.Turn.Radians, 1e-12);
        Assert.Equal((400, 400, 300), (Round(ridge.Spans!.Forward), Round(ridge.Spans.Aft), Round(ridge.Spans.Rise)));
        Assert.Equal(800, surface.DistanceBetween(Place(0, 0), Place(1000, 0)).Millimeters, 1e-9);
        Assert.Equal(-Math.Asin(0.6), surface.SlopeAt(Place(250, 0)).ForeAft.Radians, 1e-12);
        Assert.Equal(Math.Asin(0.6), surface.SlopeAt(Place(750, 0)).Steepest.Radians, 1e-12);
    }

    /// <summary>Girth 1570.796 mm hanging 500 mm is half a circle of radius 500 mm: its ends lie 1000 mm apart.</summary>
    [Fact]
    public void A_bay_hangs_by_its_sag()
    {
        var girth = 500 * Math.PI;
        var surface = Known([At(0, 0, Published, sag: 499.999999), At(girth, 0, Published)]);

        Assert.Equal(1000, surface.DistanceBetween(Place(0, 0), Place(girth, 0)).Millimeters, 0.1);
        Assert.Equal(500, surface.PointAt(Place(0, 0)).Z - surface.PointAt(Place(girth / 2, 0)).Z, 1e-3);
        Assert.Equal(girth, surface.GirthBetween(Place(0, 0), Place(girth, 0)).Millimeters, 1e-6);
    }

    [Fact]
    public void Halves_may_differ()
    {
        var (port, starboard) = (CircularArc.FromChordAndRise(1600, 60), CircularArc.FromChordAndRise(1600, 120));
        var surface = Known([new(Mm(100), Mm(25), new(port, starboard), Mm(0), Mm(0)), new(Mm(900), Mm(25), new(port, starboard), Mm(0), Mm(0))]);

        Assert.Equal(60, surface.PointAt(Place(100, 0)).Z - surface.PointAt(Place(100, -port.GirthMm / 2)).Z, 1e-9);
        Assert.Equal(120, surface.PointAt(Place(100, 0)).Z - surface.PointAt(Place(100, starboard.GirthMm / 2)).Z, 1e-9);
        Assert.Equal(starboard.RadiusMm, surface.ArcRadiusAt(Place(500, 300))!.Value.Millimeters, 1e-6);
    }

    [Fact]
    public void The_frame_bends_down_at_the_sides_with_its_corner_radius()
    {
        var top = new TopCloth(Mm(1200), Mm(1800), new(Mm(25), Mm(150)), [At(100, 0, Published), At(1100, 0, Published)], []);
        var surface = TopSurface.Of(top).Surface!;

        Assert.Equal([-750, 750], surface.Bends.Select(bend => bend.Millimeters));
        Assert.Equal(150, surface.ArcRadiusAt(Place(600, -800))!.Value.Millimeters, 1e-9);
        Assert.Equal(Published.RadiusMm, surface.ArcRadiusAt(Place(600, 700))!.Value.Millimeters, 1e-6);
    }

    /// <summary>The normal against differences of points, which share no formula with it.</summary>
    [Fact]
    public void The_normal_is_square_to_the_cloth_and_points_up() =>
        Gen.Select(Gen.Double[10, 990], Gen.Double[-850, 850]).Sample((station, offset) =>
        {
            var surface = Known([At(0, -20, Published, sag: 15), At(1000, 60, CircularArc.FromChordAndRise(1700, 160))]);
            var normal = surface.NormalAt(Place(station, offset));
            var along = surface.PointAt(Place(station + 1e-3, offset)) - surface.PointAt(Place(station - 1e-3, offset));
            var across = surface.PointAt(Place(station, offset + 1e-3)) - surface.PointAt(Place(station, offset - 1e-3));

            Assert.Equal(0, normal.Dot(along.Unit()), 1e-6);
            Assert.Equal(0, normal.Dot(across.Unit()), 1e-6);
            Assert.True(normal.Z > 0);
        });

    [Fact]
    public void What_is_missing_is_named()
    {
        Bow[] bows = [new(Mm(100), Mm(25), null, null, Mm(0)), At(900, 0, Published)];

        Assert.Equal(["top.bow[1].chord", "top.bow[1].crown", "top.bow[1].height"], TopSurface.Of(SampleJobs.Top(1000, 1800, [.. bows])).Missing);
        Assert.Equal(["top.bow"], TopSurface.Of(SampleJobs.Top(1000, 1800, [])).Missing);
    }

    [Fact]
    public void One_bow_needs_no_height_and_makes_no_ridge()
    {
        var surface = Known([new(Mm(100), Mm(25), BowHalves.Even(Published), null, Mm(0))]);

        Assert.Null(Assert.Single(surface.Ridges).Spans);
        Assert.Equal(0, surface.SlopeAt(Place(400, 0)).Steepest.Radians, 1e-12);
    }

    private static TopSurface Known(Bow[] bows) => TopSurface.Of(SampleJobs.Top(2000, 1850, [.. bows])).Surface!;

    private static Bow At(double station, double height, CircularArc arc, double sag = 0) => new(Mm(station), Mm(25), BowHalves.Even(arc), Mm(height), Mm(sag));

    private static TopPlace Place(double station, double offset) => new(Mm(station), Mm(offset));

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);

    private static double Round(Length length) => Math.Round(length.Millimeters, 6);
}
