using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using static CanvasCut.JobFiles.RuleLog;

namespace CanvasCut.JobFiles;

/// <summary>What is on the top already: each has a shape, and some of it lies on the top.</summary>
internal static class FixtureRules
{
    private const double ApartMm = 0.5;

    public static void Check(JobValues values, RuleLog rules, TopOutline? outline)
    {
        foreach (var path in values.Tables("top.fixed"))
        {
            CheckCounts(values, rules, path);
            if (FixtureReader.PlacesOf(values, path) is { Length: > 1 } places)
            {
                CheckShape(rules, path, [.. places.Select(place => new Point(place.Offset.Millimeters, -place.Station.Millimeters))], values.IsWritten($"{path}.width"));
                CheckPlace(rules, path, places, outline);
            }
        }
    }

    private static void CheckCounts(JobValues values, RuleLog rules, string path)
    {
        var (stations, offsets) = (values.Lengths($"{path}.station")?.Length, values.Lengths($"{path}.offset")?.Length);
        rules.When(stations < 2, ProblemCode.FixturePlace, $"{path}.station", Say.Of("needs two lengths or more: opposite corners of a rectangle, the corners of an area, or the points of a line."));
        rules.When(stations is not null && offsets is not null && stations != offsets, ProblemCode.FixturePlace, $"{path}.offset", Say.Of($"has {offsets ?? 0} lengths and station has {stations ?? 0}; each place needs one of both, in the same order."));
    }

    private static void CheckShape(RuleLog rules, string path, ImmutableArray<Point> places, bool isLine)
    {
        var isOne = isLine ? places.Zip(places.Skip(1)).Any(pair => pair.First.DistanceMm(pair.Second) < ApartMm) : places.All(place => place.DistanceMm(places[0]) < ApartMm);
        rules.When(isOne, ProblemCode.FixturePlace, $"{path}.station", Say.Of("names the same place twice; give places that lie apart."));
        rules.When(
            !isOne && !isLine && places.Length > 2 && !IsArea(places),
            ProblemCode.FixturePlace,
            $"{path}.station",
            Say.Of("makes an area that crosses itself or has no size; list its corners in order round it, or give width if it is a line."));
    }

    private static bool IsArea(ImmutableArray<Point> places)
    {
        const double LeastMm2 = 1;
        var twice = places.Select((place, i) => (place - places[0]).Cross(places[(i + 1) % places.Length] - places[0])).Sum();
        return Math.Abs(twice) > LeastMm2 && Witness.IsValid(new(places));
    }

    private static void CheckPlace(RuleLog rules, string path, ImmutableArray<TopPlace> places, TopOutline? outline)
    {
        if (outline is null)
        {
            return;
        }

        var (whole, own) = (outline.Shape.Bounds, Box.Holding([.. places.Select(place => new Point(place.Offset.Millimeters, -place.Station.Millimeters))]));
        rules.When(
            own.Left > whole.Right || own.Right < whole.Left || own.Bottom > whole.Top || own.Top < whole.Bottom,
            ProblemCode.FixturePlace,
            $"{path}.station",
            Say.Of($"lies wholly beside the top, which reaches from {In(Mm(-whole.Top))} to {In(Mm(-whole.Bottom))} aft and from {In(Mm(whole.Left))} to {In(Mm(whole.Right))} across (port negative)."));
    }

    private static UnitsNet.Length Mm(double value) => UnitsNet.Length.FromMillimeters(value);
}
