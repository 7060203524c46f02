using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Sheets;

/// <summary>The top with tubes and keep-outs, and nothing mounted.</summary>
internal sealed class BareTopPicture(TopCloth top, View view, PrintUnits units)
{
    /// <summary>The height of names.</summary>
    public const double TextMm = 2.5;

    private readonly TubePicture _tubes = new(top, view);
    private readonly FixturePicture _fixtures = new(top, view);

    /// <summary>How far below the top, and left of it, its own size stands.</summary>
    private const double SizeMm = 12;

    /// <summary>What the picture is and where its measures start.</summary>
    public static string HowToRead(TopCloth top, View view) => top.Outline.IsRectangle
        ? Say.Of($"The top from above, laid flat, scale {view.ScaleText}. Stations run aft from the forward edge, offsets from the centreline.")
        : Say.Of($"The top from above, laid flat, scale {view.ScaleText}. Stations run aft from the middle of the forward edge, offsets from the centreline.");

    /// <summary>The whole picture.</summary>
    public IEnumerable<Figure> Alone()
    {
        ImmutableArray<Figure> drawn = [.. Lines(), .. TubeEdges()];
        return [.. drawn, .. NamesOver(drawn, Named()), .. Sizes()];
    }

    /// <summary>What lies under all that is mounted.</summary>
    public IEnumerable<Figure> Lines() =>
    [
        .. _fixtures.Shade(),
        .. Tubes(),
        .. _tubes.Tints(),
        .. KeepOuts(),
        .. _fixtures.Lines(),
        view.Line(LineRole.Cut, Plan.OutlineOf(top)),
        .. top.Outline.IsRectangle ? Edges(Plan.Of(top), PartKey.TopEdge) : OwnEdges(),
        .. Plan.UsableOf(top) is { } usable ? new[] { view.Line(LineRole.Fold, usable) } : [],
        .. Centreline(),
    ];

    /// <summary>The tubes' edges again, over everything, to show where one runs under the panel.</summary>
    public IEnumerable<Figure> TubeEdges() => top.Bows.Select(bow => Plan.BandOf(top, bow)).SelectMany((band, i) =>
        Shown(PartKey.Bow(i + 1), new[] { band.Bottom, band.Top }.Select(y => AcrossAt(y, band)).OfType<(Point From, Point To)>().Select(line => view.Line(LineRole.Note, line.From, line.To)))).Concat(_tubes.Edges());

    /// <summary>What is named on the bare top, and the point on paper that its name tells of.</summary>
    public IEnumerable<(string Name, Point At)> Named() => top.KeepOuts.Select(keepOut => (keepOut.Name, view.Of(Plan.Of(keepOut).Center))).Concat(_tubes.Named()).Concat(_fixtures.Named());

    /// <summary>Names beside what they tell of.</summary>
    public IEnumerable<Figure> NamesOver(ImmutableArray<Figure> drawn, IEnumerable<(string Name, Point At)> named) =>
        Names.Of(named, new(view.Of(Plan.OutlineOf(top)), drawn.Where(figure => figure is not Tint)), TextMm);

    /// <summary>The size of the top.</summary>
    public IEnumerable<Figure> Sizes()
    {
        var whole = view.Of(Plan.Of(top));
        return
        [
            .. Dimension.Level(whole.Left, whole.Right, whole.Bottom - SizeMm, Say.Of($"top {LengthText.Of(top.Width, units)}")),
            .. Dimension.Upright(view.Of(new Point(0, -top.Length.Millimeters)).Y, view.Of(new Point(0, 0)).Y, whole.Left - SizeMm, Say.Of($"top {LengthText.Of(top.Length, units)}")),
        ];
    }

    /// <summary>The edges of a box one by one, so that each can be pointed out.</summary>
    public IEnumerable<Figure> Edges(Box box, Func<Side, PartKey> key) =>
    [
        .. Shown(key(Side.Forward), view.Line(LineRole.Cut, new(box.Left, box.Top), new(box.Right, box.Top))),
        .. Shown(key(Side.Aft), view.Line(LineRole.Cut, new(box.Left, box.Bottom), new(box.Right, box.Bottom))),
        .. Shown(key(Side.Port), view.Line(LineRole.Cut, new(box.Left, box.Bottom), new(box.Left, box.Top))),
        .. Shown(key(Side.Starboard), view.Line(LineRole.Cut, new(box.Right, box.Bottom), new(box.Right, box.Top))),
    ];

    /// <summary>The edges of the top that are not those of a box.</summary>
    private IEnumerable<Figure> OwnEdges() => new[] { Side.Forward, Side.Aft, Side.Port, Side.Starboard }.SelectMany(side =>
        Shown(PartKey.TopEdge(side), new Stroke(LineRole.Cut, [.. top.Outline.LineOf(side).Select(view.Of)], IsClosed: false)));

    /// <summary>Figures of which a program that reads the drawing is told what they show.</summary>
    public static IEnumerable<Figure> Shown(PartKey key, params IEnumerable<Figure> figures) => Figures.Showing(key.Id, figures);

    private (Point From, Point To)? AcrossAt(double y, Box band) => top.Outline.IsRectangle ? (new(band.Left, y), new(band.Right, y)) : top.Outline.Across(y);

    private IEnumerable<Figure> Tubes() => top.Bows.SelectMany((bow, i) => Shown(PartKey.Bow(i + 1),
    [
        .. Plan.OnTop(top, Plan.BandOf(top, bow)) is { } band ? new[] { new Tint(view.Of(band), 0.25) } : [],
        new Lettering(Say.Of($"bow {i + 1}"), view.Of(new Point(top.Outline.HalvesAt(bow.Station).Starboard.Millimeters, -bow.Station.Millimeters)) + new Step(1.5, -TextMm / 2), TextMm),
    ]));

    private IEnumerable<Figure> KeepOuts() => top.KeepOuts.SelectMany((keepOut, i) =>
    {
        var box = Plan.Of(keepOut);
        return Shown(PartKey.KeepOut(i + 1), new Figure[]
        {
            new Tint(view.Of(Outline.Of(box)), 0.12),
            view.Line(LineRole.Mark, box),
            view.Line(LineRole.Note, box.LowerLeft, new(box.Right, box.Top)),
            view.Line(LineRole.Note, new(box.Left, box.Top), new(box.Right, box.Bottom)),
        });
    });

    private IEnumerable<Figure> Centreline()
    {
        yield return view.Line(LineRole.Grain, new(0, -top.Length.Millimeters), new(0, 0));
        var forward = view.Of(new Point(0, Plan.Of(top).Top));
        foreach (var figure in Arrows.Between(LineRole.Note, forward + new Step(0, 2), forward + new Step(0, 12), isTwoHeaded: false))
        {
            yield return figure;
        }

        yield return new Lettering(Say.Of("FORWARD"), forward + new Step(3, 5), 3, IsBold: true);
    }
}
