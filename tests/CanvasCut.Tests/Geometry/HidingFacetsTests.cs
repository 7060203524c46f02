using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Tests.Geometry;

/// <summary>What is hidden, against the equation of a cylinder along a line of sight.</summary>
public sealed class HidingFacetsTests
{
    private const double RadiusMm = 500;
    private const double LengthMm = 1000;

    /// <summary>Nearer than this the program does not look, and a triangle is not quite the cylinder.</summary>
    private const double DoubtMm = 6;

    private static readonly HidingFacets Arch = new(ArchFacets());

    /// <summary>In an isometric view the axes are equally long and 120° apart: ISO 5456-3, from memory.</summary>
    [Fact]
    public void The_axes_are_equally_long_and_a_third_of_a_turn_apart()
    {
        var axes = new[] { new SpacePoint(1, 0, 0), new SpacePoint(0, -1, 0), new SpacePoint(0, 0, 1) }.Select(end => Isometric.Of(end) - new Point(0, 0)).ToList();

        Assert.All(axes, axis => Assert.Equal(1, axis.LengthMm, 1e-12));
        Assert.All(axes.Zip(axes.Skip(1).Append(axes[0])), pair => Assert.Equal(-0.5, pair.First.Dot(pair.Second), 1e-12));
        Assert.Equal(Isometric.Of(new(10, 20, 30)), Isometric.Of(new SpacePoint(10, 20, 30) + (Isometric.TowardViewer * 500)), (one, other) => one.DistanceMm(other) < 1e-9);
    }

    /// <summary>x² + z² = R² with z above zero and y within the length, along p + s(1, −1, 1)/√3: a quadratic in s.</summary>
    [Fact]
    public void A_place_is_hidden_when_its_line_of_sight_meets_the_arch()
    {
        var counted = (Hidden: 0, Seen: 0);
        foreach (var place in Places())
        {
            var hits = Meetings(place).ToList();
            if (hits.Exists(hit => hit.IsDoubtful))
            {
                continue;
            }

            Assert.Equal(hits.Count > 0, Arch.Hides(place));
            counted = hits.Count > 0 ? (counted.Hidden + 1, counted.Seen) : (counted.Hidden, counted.Seen + 1);
        }

        Assert.True(counted is { Hidden: > 300, Seen: > 300 }, $"{counted}");
    }

    [Fact]
    public void A_line_changes_where_it_passes_behind_the_edge()
    {
        // Under the arch, parallel to it, the line comes out at the aft end; the last line of sight that is held up leaves
        // through the end's circle: x = s/√3, z = s/√3 on it gives s/√3 = R/√2, so y = s/√3 = 353.55 mm inside the end.
        var runs = Arch.Runs([new(0, 900, 0), new(0, -500, 0)]);

        Assert.Equal([true, false], runs.Select(run => run.IsHidden));
        Assert.Equal(RadiusMm / Math.Sqrt(2), runs[0].Points[^1].Y, 0.5);
        Assert.Equal(runs[0].Points[^1], runs[1].Points[0]);
    }

    private static IEnumerable<SpacePoint> Places() =>
        from x in Enumerable.Range(0, 17)
        from y in Enumerable.Range(0, 13)
        from z in Enumerable.Range(0, 13)
        select new SpacePoint(-731 + (x * 91.3), -317 + (y * 127.7), -403 + (z * 83.9));

    private static IEnumerable<(double AtMm, bool IsDoubtful)> Meetings(SpacePoint place)
    {
        var (b, c) = (place.X + place.Z, (place.X * place.X) + (place.Z * place.Z) - (RadiusMm * RadiusMm));
        var root = (b * b) - (2 * c);
        foreach (var t in root > 0 ? [(-b - Math.Sqrt(root)) / 2, (-b + Math.Sqrt(root)) / 2] : Array.Empty<double>())
        {
            var (y, z) = (place.Y - t, place.Z + t);
            var isNearAnEdge = Math.Min(Math.Abs(y), Math.Abs(y - LengthMm)) < DoubtMm || Math.Abs(z) < DoubtMm || root < 100 * DoubtMm;
            if (t > -DoubtMm && y > -DoubtMm && y < LengthMm + DoubtMm && z > -DoubtMm)
            {
                yield return (t, isNearAnEdge || Math.Abs(t) < DoubtMm);
            }
        }
    }

    private static IEnumerable<Facet> ArchFacets()
    {
        ImmutableArray<SpacePoint> Row(double y) => [.. Enumerable.Range(0, 181).Select(i => new SpacePoint(-RadiusMm * Math.Cos(i * Math.PI / 180), y, RadiusMm * Math.Sin(i * Math.PI / 180)))];
        var rows = Enumerable.Range(0, 11).Select(i => Row(LengthMm * i / 10)).ToList();
        return rows.Zip(rows.Skip(1)).SelectMany(pair => Facet.Between(pair.First, pair.Second));
    }
}
