using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Sheets;

/// <summary>The top in space with its tubes and the mounted carrier; what is hidden is dashed, or left out where it only shows the shape.</summary>
internal sealed class ShapePicture
{
    private const double TextMm = 2.5;
    private const int LinesAcrossABay = 2;
    private const int LinesAlongAHalf = 4;

    /// <summary>Cloth so short beyond a bow takes no lines.</summary>
    private const double ShortBayMm = 250;

    private readonly PatternSet _patterns;
    private readonly TopInSpace _space;
    private readonly HidingFacets _hiding;
    private readonly Box _top;

    public ShapePicture(PatternSet patterns, TopSurface surface)
    {
        _patterns = patterns;
        _space = new(patterns.Job.Top, surface);
        _hiding = new(_space.Facets());
        _top = Plan.Of(patterns.Job.Top);
    }

    /// <summary>The box around the cloth and the tubes in the drawing's plane, at their true size.</summary>
    public Box Bounds() => Box.Holding(
        _space.Line(Plan.OutlineOf(_patterns.Job.Top)).Concat(_space.Tubes.SelectMany(tube => tube.Ends.Concat(tube.Edges)).SelectMany(line => line)).Select(Isometric.Of));

    /// <summary>The picture on paper.</summary>
    /// <param name="view">Where the drawing's plane lies on paper.</param>
    /// <param name="frame">Where names may stand.</param>
    public IEnumerable<Figure> Figures(View view, Box frame)
    {
        ImmutableArray<Figure> drawn =
        [
            .. Cells(view),
            .. ShapeLines().SelectMany(line => Seen(LineRole.Note, line, view)),
            .. Objects().SelectMany(line => Seen(line.Role, line.Points, view).Concat(Hidden(line.Points, view))),
            .. UnderTheCloth().SelectMany(line => Dashes.Of([.. line.Select(place => view.Of(Isometric.Of(place)))])),
            .. Forward(view),
        ];
        return [.. drawn, .. Names.Of(Named(view), new(Outline.Of(frame), drawn.Where(figure => figure is not Tint)), TextMm)];
    }

    private IEnumerable<(LineRole Role, ImmutableArray<SpacePoint> Points)> Objects()
    {
        var mounted = _patterns.Mounted;
        return
        [
            .. _space.Tubes.SelectMany(tube => tube.Edges.Concat(tube.Ends)).Select(line => (LineRole.Mark, line)),
            .. _patterns.Job.Top.KeepOuts.Select(keepOut => (LineRole.Mark, _space.Line(Outline.Of(Plan.Of(keepOut).Shared(_top))))),
            .. _patterns.Job.Top.Fixtures.SelectMany(fixture => Plan.OutlinesOf(fixture)).Select(Outlined).OfType<Outline>().SelectMany(EdgesBesideTheCarrier).Select(edge => (LineRole.Mark, edge)),
            (LineRole.Cut, _space.Line(Plan.OutlineOf(_patterns.Job.Top))),
            .. _space.Contours().Select(line => (LineRole.Cut, line)),
            .. mounted.Fastened.Edges.SelectMany(EdgeBesideTheCarrier).Select(line => (LineRole.Mark, line)),
            (LineRole.Cut, _space.Line(Outline.Of(mounted.CarrierBox))),
            .. _patterns.EachPanel.Select(each => (LineRole.Mark, _space.Line(RoundedBox.Of(each.Mounted.PanelBox, each.Job.Panel.Body.CornerRadius.Millimeters)))),
        ];
    }

    /// <summary>What is on the top already as far as the top reaches; an area that is not convex as it was given.</summary>
    private Outline? Outlined(Outline fixture) => ConvexDivision.Of(fixture).Length > 1 ? fixture : Plan.OnTop(_patterns.Job.Top, fixture);

    private IEnumerable<ImmutableArray<SpacePoint>> EdgesBesideTheCarrier(Outline outline) => Enumerable.Range(0, outline.Count)
        .SelectMany(i => BesideTheCarrier(outline[i], outline[i + 1]))
        .Select(part => _space.Line(part.From, part.To));

    /// <summary>The tubes that are no bows; they lie under the cloth all the way.</summary>
    private IEnumerable<ImmutableArray<SpacePoint>> UnderTheCloth() =>
        _patterns.Job.Top.Tubes.SelectMany(TubePicture.EdgesOf).Select(edge => _space.Line(edge.From, edge.To));

    /// <summary>Lines that only show the shape: the ridges over the bows, straight lines between them, and lines along.</summary>
    private IEnumerable<ImmutableArray<SpacePoint>> ShapeLines()
    {
        double[] stations = [0, .. _patterns.Job.Top.Bows.Select(bow => bow.Station.Millimeters), _patterns.Job.Top.Length.Millimeters];
        var across = stations.Zip(stations.Skip(1))
            .Select(bay => (From: bay.First, LengthMm: bay.Second - bay.First))
            .SelectMany(bay => Enumerable.Range(0, bay.LengthMm < ShortBayMm ? 1 : LinesAcrossABay + 1).Select(i => bay.From + (bay.LengthMm * i / (LinesAcrossABay + 1))))
            .Skip(1)
            .Select(station => _patterns.Job.Top.Outline.Across(-station));
        var along = Enumerable.Range(1 - LinesAlongAHalf, (2 * LinesAlongAHalf) - 1)
            .Select(i => _top.Right * i / LinesAlongAHalf)
            .Select(_patterns.Job.Top.Outline.Along)
            .OfType<(Point From, Point To)>()
            .Select(line => (From: line.To, To: line.From));
        return across.OfType<(Point From, Point To)>().Concat(along).SelectMany(line => BesideTheCarrier(line.From, line.To)).Select(part => _space.Line(part.From, part.To));
    }

    /// <summary>The part of a zipper, or of what stands for one, that lies beside the carrier; the other lies under the carrier.</summary>
    private IEnumerable<ImmutableArray<SpacePoint>> EdgeBesideTheCarrier(EdgePlace place)
    {
        var (carrier, band) = (place.Frame.Turned(_patterns.Mounted.CarrierBox), place.AsEnd.Band);
        var (edge, outer) = place.Outward > 0 ? (carrier.Top, band.Top) : (carrier.Bottom, band.Bottom);
        Point[] corners = [new(band.Left, edge), new(band.Left, outer), new(band.Right, outer), new(band.Right, edge)];
        Point[] inPlan = [.. corners.Select(place.Frame.Back)];
        return inPlan.Zip(inPlan.Skip(1), _space.Line);
    }

    /// <summary>The parts of a straight line that the carrier does not cover.</summary>
    private IEnumerable<(Point From, Point To)> BesideTheCarrier(Point from, Point to)
    {
        const double LeastMm = 1;
        var under = Outline.Of(_patterns.Mounted.CarrierBox).Inside([from, to]);
        (Point From, Point To)[] parts = under is [var covered] ? [(from, covered[0]), (covered[^1], to)] : [(from, to)];
        return parts.Where(part => part.From.DistanceMm(part.To) > LeastMm);
    }

    /// <summary>The cells in grey, when all of them are seen.</summary>
    private IEnumerable<Figure> Cells(View view) => _patterns.Mounted.Cells.SelectMany(cells => Cells(cells, view));

    private IEnumerable<Figure> Cells(Box cells, View view)
    {
        var line = _space.Line(Outline.Of(cells));
        return line.Any(_hiding.Hides) ? [] : [new Tint(view.Of(new Outline(line.SkipLast(1).Select(Isometric.Of))), 0.18)];
    }

    private IEnumerable<Figure> Seen(LineRole role, ImmutableArray<SpacePoint> line, View view) =>
        _hiding.Runs(line).Where(run => !run.IsHidden).Select(run => new Stroke(role, OnPaper(run, view), IsClosed: false));

    private IEnumerable<Figure> Hidden(ImmutableArray<SpacePoint> line, View view) =>
        _hiding.Runs(line).Where(run => run.IsHidden).SelectMany(run => Dashes.Of(OnPaper(run, view)));

    private static ImmutableArray<Point> OnPaper(SightRun run, View view) => [.. run.Points.Select(place => view.Of(Isometric.Of(place)))];

    private IEnumerable<Figure> Forward(View view)
    {
        const double FromMm = 4;
        const double LengthMm = 12;
        var edge = view.Of(OnCloth(new(0, 0)));
        var along = (Isometric.Of(new(0, 1, 0)) - Isometric.Of(default)).Unit();
        return
        [
            .. Arrows.Between(LineRole.Note, edge + (along * FromMm), edge + (along * (FromMm + LengthMm)), isTwoHeaded: false),
            new Lettering(Say.Of("FORWARD"), edge + (along * (FromMm + LengthMm)) + new Step(2, 0), 3, IsBold: true),
        ];
    }

    private IEnumerable<(string Name, Point At)> Named(View view)
    {
        var mounted = _patterns.Mounted;
        foreach (var (i, tube) in _space.Tubes.Index())
        {
            yield return (Say.Of($"bow {i + 1}"), view.Of(Isometric.Of(tube.StarboardEnd)));
        }

        foreach (var panel in mounted.Panels)
        {
            yield return (panel.Name.IsOnly ? Say.Of("panel, cells grey") : Say.Of($"panel \"{panel.Name}\", cells grey"), view.Of(OnCloth(panel.Cells.Center)));
        }

        yield return (Say.Of("carrier"), view.Of(OnCloth(new(mounted.CarrierBox.Right, mounted.CarrierBox.Center.Y))));
        foreach (var keepOut in _patterns.Job.Top.KeepOuts)
        {
            yield return (keepOut.Name, view.Of(OnCloth(Plan.Of(keepOut).Shared(_top).Center)));
        }

        foreach (var tube in _patterns.Job.Top.Tubes)
        {
            yield return (tube.Name, view.Of(OnCloth(Plan.Of(tube.From).Toward(Plan.Of(tube.To), 0.15))));
        }

        foreach (var fixture in _patterns.Job.Top.Fixtures)
        {
            yield return (fixture.Name, view.Of(OnCloth(Plan.OutlinesOf(fixture).First() is var first && fixture.LineWidth is null ? first.Bounds.Center : first[0].Toward(first[1], 0.8))));
        }

        // A quarter from the aft edge there is hardly ever a bow.
        if (_patterns.Job.Top.Outline.Across(_top.Bottom * 0.75) is { } edges)
        {
            yield return (Say.Of("port edge"), view.Of(OnCloth(edges.From)));
            yield return (Say.Of("starboard edge"), view.Of(OnCloth(edges.To)));
        }
    }

    private Point OnCloth(Point plan) => Isometric.Of(_space.Surface.PointAt(Plan.PlaceOf(plan)));
}
