using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Sheets;

/// <summary>What is on a top already, and the swing of the boom over it.</summary>
internal sealed class FixturePicture(TopCloth top, View view)
{
    /// <summary>Outlines of what is on the top, as far as the top reaches.</summary>
    public IEnumerable<Figure> Lines() =>
        top.Fixtures.SelectMany((fixture, i) => BareTopPicture.Shown(PartKey.Fixture(i + 1), Plan.OutlinesOf(fixture).SelectMany(Drawn)));

    /// <summary>What the boom shades; its tint lies below all else.</summary>
    public IEnumerable<Figure> Shade() => top.Boom is { } boom && Plan.OnTop(top, Plan.SwingOf(boom)) is { } over
        ? BareTopPicture.Shown(PartKey.Boom, new Tint(view.Of(over), 0.06), view.Line(LineRole.Fold, over))
        : [];

    /// <summary>Their names, and the point on paper that each tells of.</summary>
    public IEnumerable<(string Name, Point At)> Named() =>
    [
        .. top.Fixtures.Select(fixture => (fixture.Name, view.Of(MiddleOf(fixture)))),
        .. top.Boom is { } boom && Plan.OnTop(top, Plan.SwingOf(boom)) is { } over ? new[] { (Say.Of("swing of the boom, shaded"), view.Of(new Point(over.Bounds.Center.X, over.Bounds.Bottom + (over.Bounds.HeightMm * 0.1)))) } : [],
    ];

    private static Point MiddleOf(TopFixture fixture) =>
        fixture.LineWidth is null ? Plan.OutlinesOf(fixture).First().Bounds.Center : Plan.Of(fixture.Places[0]).Toward(Plan.Of(fixture.Places[1]), 0.8);

    /// <summary>A convex area is cut off at the edge of the top; another is drawn as it was given.</summary>
    private IEnumerable<Figure> Drawn(Outline outline)
    {
        var shown = ConvexDivision.Of(outline).Length > 1 ? outline : Plan.OnTop(top, outline);
        return shown is null ? [] : [new Tint(view.Of(shown), 0.12), view.Line(LineRole.Mark, shown)];
    }
}
