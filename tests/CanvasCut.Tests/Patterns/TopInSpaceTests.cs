using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Tests.Patterns;

/// <summary>Cloth and tubes as bodies, against rays that are followed step by step, which share no formula with them.</summary>
public sealed class TopInSpaceTests
{
    private const double HalfWidth = 900;

    /// <summary>
    /// The ray climbs step by step. It has met the cloth when it was below it and is above it, or the other way round;
    /// the place of the cloth over or under a point is found by trying.
    /// </summary>
    [Fact]
    public void What_lies_under_the_cloth_is_hidden_where_a_ray_meets_the_cloth()
    {
        var top = Crowned();
        var surface = TopSurface.Of(top).Surface!;
        var hiding = new HidingFacets(new TopInSpace(top, surface).Facets());
        var found = new List<bool>();
        foreach (var (station, offset, depth) in
            from station in Enumerable.Range(0, 8)
            from offset in Enumerable.Range(0, 10)
            from depth in new[] { 60, 200, 450 }
            select (150 + (station * 117.0), -815 + (offset * 181.0), depth))
        {
            var place = surface.PointAt(Place(station, offset)) + new SpaceStep(0, 0, -depth);
            if (MeetsTheCloth(place, surface) is { } isMet)
            {
                Assert.Equal(isMet, hiding.Hides(place));
                found.Add(isMet);
            }
        }

        Assert.True(found.Count(isMet => isMet) > 50 && found.Count(isMet => !isMet) > 20, $"{found.Count(isMet => isMet)} of {found.Count}");
    }

    /// <summary>The side that bends down by more than 45° turns away from the viewer, where the slope is 45° to port.</summary>
    [Fact]
    public void The_cloth_turns_away_where_it_falls_to_port_by_forty_five_degrees()
    {
        var top = Bent();
        var (surface, contours) = (TopSurface.Of(top).Surface!, new TopInSpace(top, TopSurface.Of(top).Surface!).Contours());
        var bent = surface.PointAt(Place(500, -(750 + (150 * ((Math.PI / 4) - (750 / Flat.RadiusMm))))));

        Assert.InRange(Assert.Single(contours)[0].DistanceMm(bent with { Y = contours[0][0].Y }), 0, 0.51);
        Assert.Single(new HidingFacets(new TopInSpace(top, surface).Facets()).Runs(contours[0]), run => !run.IsHidden);
    }

    [Fact]
    public void The_far_edge_is_hidden_by_a_bend_and_the_near_one_is_seen()
    {
        var space = new TopInSpace(Bent(), TopSurface.Of(Bent()).Surface!);
        var hiding = new HidingFacets(space.Facets());

        Assert.All(hiding.Runs(space.Line(new(-HalfWidth, -100), new(-HalfWidth, -900))), run => Assert.True(run.IsHidden));
        Assert.All(hiding.Runs(space.Line(new(HalfWidth, -100), new(HalfWidth, -900))), run => Assert.False(run.IsHidden));
    }

    /// <summary>A tube of 25 mm is as far from its axis everywhere, and its edges lie that far apart.</summary>
    [Fact]
    public void A_tube_is_as_thick_as_it_is()
    {
        var tube = new TopInSpace(Crowned(), TopSurface.Of(Crowned()).Surface!).Tubes[0];

        Assert.All(tube.Edges[0].Zip(tube.Edges[1]), pair => Assert.Equal(25, pair.First.DistanceMm(pair.Second), 1e-9));
        Assert.All(tube.Ends[1], place => Assert.Equal(12.5, place.DistanceMm(tube.StarboardEnd), 1e-9));
    }

    /// <summary>Whether a ray meets the cloth; null when it only just does, or not.</summary>
    private static bool? MeetsTheCloth(SpacePoint from, TopSurface surface)
    {
        const double StepMm = 3;
        const double Doubt = 12;
        bool? wasUnder = null;
        for (var s = 0.0; s < 1600; s += StepMm)
        {
            var at = from + (Isometric.TowardViewer * s);
            var (edge, height) = Over(at, surface);
            if (Math.Abs(edge) < Doubt && Math.Abs(at.Z - height) < Doubt * 2)
            {
                return null;
            }

            bool? isUnder = edge > 0 ? at.Z < height : null;
            if (wasUnder is { } before && isUnder is { } now && before != now)
            {
                return true;
            }

            wasUnder = isUnder;
        }

        return false;
    }

    /// <summary>How far inside the cloth's edges a place lies as seen from above, and how high the cloth is there.</summary>
    private static (double EdgeMm, double HeightMm) Over(SpacePoint at, TopSurface surface)
    {
        var (station, offset) = (-at.Y, at.X);
        for (var i = 0; i < 12; i++)
        {
            var there = surface.PointAt(Place(station, offset));
            (station, offset) = (station - (at.Y - there.Y), offset + (at.X - there.X));
        }

        return (Math.Min(Math.Min(station, 1100 - station), HalfWidth - Math.Abs(offset)), surface.PointAt(Place(station, offset)).Z);
    }

    private static readonly CircularArc Flat = CircularArc.FromChordAndRise(1790, 60);

    private static TopCloth Crowned()
    {
        Bow At(double station, double height, double crown) => new(Mm(station), Mm(25), BowHalves.Even(CircularArc.FromChordAndRise(1700, crown)), Mm(height), Mm(20));
        return SampleJobs.Top(1100, 2 * HalfWidth, [At(60, 0, 180), At(550, 80, 220), At(1040, 10, 150)]);
    }

    private static TopCloth Bent()
    {
        Bow At(double station) => new(Mm(station), Mm(25), BowHalves.Even(Flat), Mm(0), Mm(0));
        return new(Mm(1000), Mm(2 * HalfWidth), new(Mm(25), Mm(150)), [At(50), At(950)], []);
    }

    private static TopPlace Place(double station, double offset) => new(Mm(station), Mm(offset));

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);
}
