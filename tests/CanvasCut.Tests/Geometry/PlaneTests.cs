using CanvasCut.Geometry;

namespace CanvasCut.Tests.Geometry;

public sealed class PlaneTests
{
    private static readonly Gen<Point> AnyPoint = Gen.Select(Gen.Double[-500, 500], Gen.Double[-500, 500]).Select((x, y) => new Point(Math.Round(x, 6), Math.Round(y, 6)));

    private static readonly Gen<Outline> Convex = AnyPoint.Array[0, 12].Select(points => ConvexHull.Of([new(-40, -50), new(60, -30), new(0, 45), .. points]));

    private static readonly Gen<HalfPlane> AnyLine = Gen.Select(AnyPoint, AnyPoint).Where((on, to) => on.DistanceMm(to) > 1).Select((on, to) => new HalfPlane(on, to - on));

    /// <summary>The two parts on either side of a line make up the whole: areas and overlap by NetTopologySuite.</summary>
    [Fact]
    public void A_line_cuts_an_outline_in_two() =>
        Gen.Select(Convex, AnyLine).Sample((outline, line) =>
        {
            var parts = new[] { line.Cut(outline), (line with { Along = -line.Along }).Cut(outline) }.OfType<Outline>().ToList();

            Assert.Equal(Witness.ToPolygon(outline).Area, parts.Sum(part => Witness.ToPolygon(part).Area), 1e-5);
            Assert.True(parts.Count < 2 || Witness.OverlapMm2(parts[0], parts[1]) < 1e-5);
            Assert.All(parts, part => Assert.True(Witness.OutsideMm2(part, outline) < 1e-5));
        });

    /// <summary>What two outlines share has the area that NetTopologySuite finds, and lies in both.</summary>
    [Fact]
    public void Outlines_share_what_lies_in_both() =>
        Gen.Select(Convex, Convex, AnyPoint).Sample((outline, other, place) =>
        {
            var moved = other.MovedBy(place - new Point(0, 0));
            var shared = outline.Shared(moved);

            Assert.Equal(Witness.OverlapMm2(outline, moved), shared?.AreaMm2 ?? 0, 1e-4);
            Assert.True(shared is null || Witness.OutsideMm2(shared, moved) < 1e-4);
        });

    /// <summary>The part of a line inside an outline is as long as NetTopologySuite's.</summary>
    [Fact]
    public void A_line_is_kept_where_it_lies_inside() =>
        Gen.Select(Convex, AnyPoint.Array[2, 6]).Sample((outline, points) =>
        {
            var ours = outline.Inside([.. points]).Sum(part => part.Zip(part.Skip(1)).Sum(pair => pair.First.DistanceMm(pair.Second)));
            var line = new NetTopologySuite.Geometries.LineString([.. points.Select(point => new NetTopologySuite.Geometries.Coordinate(point.X, point.Y))]);

            // Each piece on its own: a line that runs over itself would be counted once.
            var theirs = Enumerable.Range(1, points.Length - 1).Sum(i => new NetTopologySuite.Geometries.LineString([line.Coordinates[i - 1], line.Coordinates[i]])
                .Intersection(Witness.ToPolygon(outline)).Length);
            Assert.Equal(theirs, ours, 1e-6);
        });

    [Fact]
    public void A_chord_runs_from_edge_to_edge() =>
        Gen.Select(Convex, AnyLine).Sample((outline, line) =>
        {
            if (outline.Chord(line) is { } chord)
            {
                var boundary = Witness.ToPolygon(outline).Boundary;
                Assert.True(boundary.Distance(new NetTopologySuite.Geometries.Point(chord.From.X, chord.From.Y)) < 1e-6);
                Assert.True(boundary.Distance(new NetTopologySuite.Geometries.Point(chord.To.X, chord.To.Y)) < 1e-6);
                Assert.Equal(0, line.InsideMm(chord.From), 1e-6);
            }
        });

    /// <summary>The area of a box with rounded corners is that of the box less (4 − π)·r²; the points cost at most 0.01 mm of arc.</summary>
    [Fact]
    public void A_rounded_box_has_the_area_of_the_formula() =>
        Gen.Select(Gen.Double[50, 900], Gen.Double[50, 900], Gen.Double[0, 1]).Sample((width, height, part) =>
        {
            var radius = part * Math.Min(width, height) / 2;
            var outline = RoundedBox.Of(new(0, 0, width, height), radius);

            Assert.Equal((width * height) - ((4 - Math.PI) * radius * radius), outline.AreaMm2, (2 * Math.PI * radius * RoundedBox.SagittaMm) + 1e-6);
            Assert.Equal((width, height), (Math.Round(outline.Bounds.WidthMm, 9), Math.Round(outline.Bounds.HeightMm, 9)), new Near());
            Assert.True(Witness.IsValid(outline));
        });

    [Fact]
    public void Corners_given_clockwise_are_turned_round()
    {
        var outline = new Outline([new(0, 0), new(0, 10), new(20, 10), new(20, 0)]);

        Assert.True((outline[1] - outline[0]).Cross(outline[2] - outline[1]) > 0);
        Assert.Equal((200, 60), (outline.AreaMm2, outline.PerimeterMm));
    }

    [Fact]
    public void An_outline_without_area_or_with_a_corner_nowhere_is_refused()
    {
        Assert.Throws<ArgumentException>(() => new Outline([new(0, 0), new(10, 0)]));
        Assert.Throws<ArgumentException>(() => new Outline([new(0, 0), new(10, 0), new(20, 0)]));
        Assert.Throws<ArgumentException>(() => new Outline([new(0, 0), new(double.NaN, 0), new(20, 5)]));
    }

    [Fact]
    public void Four_quarter_turns_lead_back_exactly() =>
        Gen.Select(AnyPoint, Gen.Int[-8, 8]).Sample((point, quarters) =>
            Turn.Quarters(Turn.Quarters(point, quarters), -quarters) == point && Turn.Quarters(point, 4) == point);

    [Fact]
    public void A_step_prints_without_end() => Assert.Equal("(1.5, -2)", new Step(1.5, -2).ToString());

    private sealed class Near : IEqualityComparer<(double Width, double Height)>
    {
        public bool Equals((double Width, double Height) x, (double Width, double Height) y) =>
            Math.Abs(x.Width - y.Width) < 1e-6 && Math.Abs(x.Height - y.Height) < 1e-6;

        public int GetHashCode((double Width, double Height) obj) => 0;
    }
}
