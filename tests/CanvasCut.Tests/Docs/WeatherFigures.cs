using CanvasCut.Drawing;
using CanvasCut.Geometry;

namespace CanvasCut.Tests.Docs;

/// <summary>Wind, bonding weather and slope.</summary>
internal static class WeatherFigures
{
    /// <summary>A carrier from the side, and who bears the uplift.</summary>
    public static Sheet Wind()
    {
        const double Level = 34;
        var (forward, aft) = (new Point(32, Level), new Point(138, Level));
        var panel = new Box(40, Level, 130, Level + 2);
        return new DocPage("wind-loads", "Where the wind pulls", new(170, 70))
            .Add(Stroke.Open(LineRole.Mark, new(8, Level), forward), Stroke.Open(LineRole.Mark, aft, new(162, Level)))
            .Add(Stroke.Open(LineRole.Cut, forward, aft), new Tint(Outline.Of(panel), 0.3), Stroke.Closed(LineRole.Mark, Outline.Of(panel)))
            .Add(Ring(forward), Ring(aft))
            .Add(Enumerable.Range(0, 6).SelectMany(i => Arrow(new(47.5 + (i * 15), Level + 5), new(0, 12))))
            .Add(Arrow(forward - new Step(0, 3), new(0, -8)).Concat(Arrow(aft - new Step(0, 3), new(0, -8))))
            .Text("uplift = q × wind.coefficient × area", new(85, 58), TextAnchor.Middle)
            .Callout("the top", new(16, Level), new(8, 46))
            .Callout("each zipper bears half, and the cloth's pull", forward - new Step(0, 11), new(24, 8))
            .Callout("the bond bears all of it", new(86, Level), new(94, 20))
            .ToSheet();
    }

    /// <summary>The two bounds from the side: the whole hangs in its edges, or only the border ties a board down.</summary>
    public static Sheet Pull()
    {
        const double Rise = 9;
        var (forward, aft) = (new Point(40, 62), new Point(130, 62));
        Point On(double part) => forward + new Step(90 * part, 4 * Rise * part * (1 - part));
        var arc = Enumerable.Range(0, 41).Select(i => On(i / 40.0));
        var (left, right) = (new Point(40, 16), new Point(130, 16));
        var board = new Box(52, 21, 118, 23);
        return new DocPage("cloth-pull", "How the cloth pulls", new(170, 92))
            .Add(Stroke.Open(LineRole.Fold, forward, aft), new Stroke(LineRole.Cut, [.. arc], IsClosed: false), Ring(forward), Ring(aft))
            .Add(Stroke.Open(LineRole.Mark, new(8, 62), forward), Stroke.Open(LineRole.Mark, aft, new(162, 62)))
            .Add(Enumerable.Range(1, 5).SelectMany(i => Arrow(On(i / 6.0) + new Step(0, 2), new(0, 8))))
            .Add(Arrow(forward, new Step(-14, -5.6)).Concat(Arrow(aft, new Step(14, -5.6))))
            .Across((40, 130), (53, 62), "L")
            .Text("the panel limp: all of it hangs", new(85, 85), TextAnchor.Middle)
            .Text("T", forward + new Step(-20, -8)).Text("T", aft + new Step(16, -8))
            .Upright((62, 62 + Rise), (85, 85), "y")
            .Add(Stroke.Open(LineRole.Mark, new(8, 16), left), Stroke.Open(LineRole.Mark, right, new(162, 16)), Ring(left), Ring(right))
            .Add(Stroke.Open(LineRole.Cut, left, new(52, 22)), Stroke.Open(LineRole.Cut, new(118, 22), right))
            .Add(new Tint(Outline.Of(board), 0.3), Stroke.Closed(LineRole.Mark, Outline.Of(board)))
            .Add(Enumerable.Range(0, 5).SelectMany(i => Arrow(new(59 + (i * 13), 25), new(0, 8))))
            .Across((40, 52), (7, 16), "b")
            .Text("the panel stiff: its border ties it down", new(85, 40), TextAnchor.Middle)
            .Callout("the top stretches too", new(146, 16), new(130, 28))
            .ToSheet();
    }

    /// <summary>Which surface temperatures will do, with the limits left out of the job file, and a dew point of 14 °C.</summary>
    public static Sheet Bonding()
    {
        const double Level = 30;
        double X(double celsius) => 14 + (celsius * 3.2);
        var page = new DocPage("bonding-window", "How warm the surface may be", new(170, 66))
            .Add(Stroke.Open(LineRole.Mark, new(X(0), Level), new(X(45), Level)))
            .Add(new Tint(Outline.Of(new Box(X(17), Level, X(38), Level + 8)), 0.2), Stroke.Closed(LineRole.Cut, Outline.Of(new Box(X(17), Level, X(38), Level + 8))))
            .Text("bond", new(X(27.5), Level + 2.6), TextAnchor.Middle)
            .Across((X(14), X(17)), (18, Level), "bonding.dew_margin, 3 °C");
        foreach (var celsius in new[] { 0, 10, 20, 30, 40 })
        {
            page.Add(Stroke.Open(LineRole.Mark, new(X(celsius), Level), new(X(celsius), Level - 2))).Text($"{celsius} °C", new(X(celsius), Level - 6), TextAnchor.Middle);
        }

        return page
            .Callout("bonding.hard_stop", new(X(10), Level), new(X(0), Level + 16))
            .Callout("dew point", new(X(14), Level), new(X(6), 6))
            .Callout("bonding.least_surface", new(X(15), Level), new(X(10), Level + 24))
            .Callout("bonding.most_surface", new(X(38), Level + 8), new(X(32), Level + 20))
            .ToSheet();
    }

    /// <summary>The top cut through across the boat: nearly level in the middle, steeper at the panel's corner.</summary>
    public static Sheet Slope()
    {
        var arc = CircularArc.FromChordAndRise(130, 22);
        var center = new Point(85, 50 - arc.RadiusMm);
        Point On(double angle) => center + (new Step(Math.Sin(angle), Math.Cos(angle)) * arc.RadiusMm);
        var (half, corner) = (Math.Asin(65 / arc.RadiusMm), 0.42);
        var cloth = Enumerable.Range(0, 41).Select(i => On(half * ((i / 20.0) - 1)));
        var panel = Enumerable.Range(0, 21).Select(i => On(corner * ((i / 10.0) - 1)) + new Step(0, 2));
        var (at, along) = (On(corner), new Step(Math.Cos(corner), -Math.Sin(corner)));
        return new DocPage("slope-corner", "Slope at the panel's corner", new(170, 66))
            .Add(new Stroke(LineRole.Mark, [.. cloth], IsClosed: false), new Stroke(LineRole.Cut, [.. panel], IsClosed: false))
            .Add(Stroke.Open(LineRole.Fold, at, at + new Step(28, 0)), Stroke.Open(LineRole.Fold, at, at + (along * 28)))
            .Text("slope", at + new Step(17, -4.4))
            .Callout("level", at + new Step(22, 0), new(at.X + 26, at.Y + 8))
            .Callout("panel", On(-0.25) + new Step(0, 2), new(34, 52))
            .Callout("water stays where it is nearly level", On(0) + new Step(0, 2), new(92, 60))
            .ToSheet();
    }

    private static Stroke Ring(Point at) => Stroke.Closed(LineRole.Mark, RoundedBox.Circle(at, 1.6));

    private static IEnumerable<Figure> Arrow(Point from, Step way)
    {
        var (tip, head) = (from + way, way.Unit() * 2.5);
        return
        [
            Stroke.Open(LineRole.Mark, from, tip),
            new Stroke(LineRole.Mark, [tip - head + (head.Left * 0.4), tip, tip - head - (head.Left * 0.4)], IsClosed: false),
        ];
    }
}
