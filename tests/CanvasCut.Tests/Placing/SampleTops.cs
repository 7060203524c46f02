using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Tests.Patterns;

namespace CanvasCut.Tests.Placing;

/// <summary>Tops with outlines of their own, made up for the tests.</summary>
internal static class SampleTops
{
    /// <summary>How far the top reaches to port and to starboard at a station, in millimetres.</summary>
    public static TopWidth At(double station, double port, double starboard, double hollow = 0) =>
        new(SampleJobs.Mm(station), SampleJobs.Mm(port), SampleJobs.Mm(starboard)) { HollowAft = SampleJobs.Mm(hollow) };

    /// <summary>The ends of an edge, so much further aft than its middle.</summary>
    public static EdgeEnds Ends(double port, double starboard, bool isRound = false) => new(SampleJobs.Mm(port), SampleJobs.Mm(starboard), isRound);

    /// <summary>Every corner rounded alike.</summary>
    public static TopCorners Rounded(double radius)
    {
        var corner = new TopCorner(SampleJobs.Mm(radius), IsCut: false);
        return new(corner, corner, corner, corner);
    }

    /// <summary>A top of a shape with a margin of 25 mm.</summary>
    public static TopCloth Of(TopShape shape, params ImmutableArray<Bow> bows) =>
        new(shape.Length, TopOutline.Of(shape)!, new(SampleJobs.Mm(25), SampleJobs.Mm(0))) { Bows = bows };

    /// <summary>Wider aft, hollow to both sides, skew aft and rounded forward; with corners of every kind.</summary>
    public static TopShape Crooked(double size) => new(SampleJobs.Mm(size), [At(0, size * 0.4, size * 0.4, size * 0.03), At(size * 0.6, size * 0.45, size * 0.5), At(size, size * 0.6, size * 0.55)])
    {
        Forward = Ends(size * 0.05, size * 0.05, isRound: true),
        Aft = Ends(-size * 0.04, size * 0.03),
        Corners = Rounded(size * 0.08) with { ForwardPort = new(SampleJobs.Mm(size * 0.06), IsCut: true), AftPort = TopCorner.Sharp },
    };
}
