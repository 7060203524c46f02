using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Patterns;

namespace CanvasCut.Sheets;

/// <summary>The tubes of a top that are no bows.</summary>
internal sealed class TubePicture(TopCloth top, View view)
{
    /// <summary>The cloth that lies on them.</summary>
    public IEnumerable<Figure> Tints() => Each(tube => Plan.OnTop(top, Plan.BandOf(tube)) is { } band ? [new Tint(view.Of(band), 0.25)] : []);

    /// <summary>Their edges.</summary>
    public IEnumerable<Figure> Edges() => Each(tube => EdgesOf(tube).Select(edge => view.Line(LineRole.Note, edge.From, edge.To)));

    /// <summary>Their names, and the point on paper that each tells of.</summary>
    public IEnumerable<(string Name, Point At)> Named() => top.Tubes.Select(tube => (tube.Name, view.Of(Plan.Of(tube.From).Toward(Plan.Of(tube.To), 0.15))));

    /// <summary>The two edges of a tube as far as the top reaches.</summary>
    public static IEnumerable<(Point From, Point To)> EdgesOf(TopTube tube)
    {
        var band = Plan.BandOf(tube);
        return [(band[0], band[1]), (band[3], band[2])];
    }

    private IEnumerable<Figure> Each(Func<TopTube, IEnumerable<Figure>> draw) =>
        top.Tubes.SelectMany((tube, i) => BareTopPicture.Shown(PartKey.Tube(i + 1), draw(tube)));
}
