using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Sheets;

/// <summary>The top with tubes, keep-outs and all that is mounted.</summary>
internal sealed class TopPicture(PatternSet patterns, View view, PrintUnits units)
{
    private const double TextMm = 2.5;

    private readonly TopCloth _top = patterns.Job.Top;
    private readonly MountedShape _mounted = patterns.Mounted;
    private readonly PartKeys _keys = new(patterns.Job);

    public IEnumerable<Figure> Figures()
    {
        ImmutableArray<Figure> drawn =
        [
            .. Tubes(),
            .. KeepOuts(),
            view.Line(LineRole.Cut, Plan.Of(_top)),
            .. Edges(Plan.Of(_top), PartKey.TopEdge),
            view.Line(LineRole.Fold, Plan.UsableOf(_top)),
            .. Centreline(),
            .. Mounted(),
            .. TubeEdges(),
        ];
        return [.. drawn, .. Names.Of(Named(), new(view.Of(Outline.Of(Plan.Of(_top))), drawn.Where(figure => figure is not Tint)), TextMm), .. Sizes()];
    }

    private IEnumerable<Figure> Tubes() => _top.Bows.SelectMany((bow, i) => Shown(PartKey.Bow(i + 1), new Figure[]
    {
        new Tint(view.Of(Outline.Of(Plan.BandOf(_top, bow))), 0.25),
        new Lettering(Say.Of($"bow {i + 1}"), view.Of(new Point(_top.Width.Millimeters / 2, -bow.Station.Millimeters)) + new Step(1.5, -TextMm / 2), TextMm),
    }));

    /// <summary>The tubes' edges again, over everything, to show where one runs under the panel.</summary>
    private IEnumerable<Figure> TubeEdges() => _top.Bows.Select(bow => Plan.BandOf(_top, bow)).SelectMany((band, i) => Shown(PartKey.Bow(i + 1), new Figure[]
    {
        view.Line(LineRole.Note, new(band.Left, band.Bottom), new(band.Right, band.Bottom)),
        view.Line(LineRole.Note, new(band.Left, band.Top), new(band.Right, band.Top)),
    }));

    private IEnumerable<Figure> KeepOuts() => _top.KeepOuts.SelectMany((keepOut, i) =>
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
        var whole = Plan.Of(_top);
        yield return view.Line(LineRole.Grain, new(0, whole.Bottom), new(0, whole.Top));
        var top = view.Of(new Point(0, whole.Top));
        foreach (var figure in Arrows.Between(LineRole.Note, top + new Step(0, 2), top + new Step(0, 12), isTwoHeaded: false))
        {
            yield return figure;
        }

        yield return new Lettering(Say.Of("FORWARD"), top + new Step(3, 5), 3, IsBold: true);
    }

    private IEnumerable<Figure> Mounted()
    {
        var (cells, fastened) = (_mounted.CellBox, _mounted.Fastened);
        return
        [
            .. Shown(_keys.Cells, new Tint(view.Of(Outline.Of(cells)), 0.18)),
            .. CarrierEdges(),
            .. Shown(_keys.Panel, view.Line(LineRole.Mark, RoundedBox.Of(_mounted.PanelBox, patterns.Job.Panel.Body.CornerRadius.Millimeters))),
            .. Shown(_keys.Cells, view.Line(LineRole.Note, cells)),
            .. fastened.Zippers.SelectMany(zipper => Shown(_keys.Fastening(zipper.Side), view.Line(LineRole.Mark, zipper.Band), view.Line(LineRole.Stitch, zipper.Line.From, zipper.Line.To))),
            .. fastened.Flaps.SelectMany(flap => Shown(_keys.Fastening(flap.Side), FlapPicture.Of(flap, view))),
            .. fastened.Pockets.SelectMany(pocket => Shown(_keys.Pocket(pocket.Corner), view.Line(LineRole.Grain, pocket.Outline))),
            .. fastened.Strips.SelectMany(strip => Shown(_keys.Strip(strip.Side), view.Line(LineRole.Fold, strip.Finished))),
            .. _mounted.JunctionBox is { } box ? Shown(_keys.JunctionBox, new Tint(view.Of(Outline.Of(box)), 0.45), view.Line(LineRole.Mark, box)) : [],
            .. _mounted.CableExit is { } exit ? Shown(_keys.CableExit, Stroke.Closed(LineRole.Mark, RoundedBox.Circle(view.Of(exit), 1.2))) : [],
        ];
    }

    /// <summary>The carrier as one, and its edges each by itself.</summary>
    private IEnumerable<Figure> CarrierEdges() =>
        [.. Shown(_keys.Carrier, view.Line(LineRole.Cut, _mounted.CarrierBox)), .. Edges(_mounted.CarrierBox, _keys.CarrierEdge)];

    /// <summary>An edge at a time, so that each can be pointed out.</summary>
    private IEnumerable<Figure> Edges(Box box, Func<Side, PartKey> key) =>
    [
        .. Shown(key(Side.Forward), view.Line(LineRole.Cut, new(box.Left, box.Top), new(box.Right, box.Top))),
        .. Shown(key(Side.Aft), view.Line(LineRole.Cut, new(box.Left, box.Bottom), new(box.Right, box.Bottom))),
        .. Shown(key(Side.Port), view.Line(LineRole.Cut, new(box.Left, box.Bottom), new(box.Left, box.Top))),
        .. Shown(key(Side.Starboard), view.Line(LineRole.Cut, new(box.Right, box.Bottom), new(box.Right, box.Top))),
    ];

    private static IEnumerable<Figure> Shown(PartKey key, params IEnumerable<Figure> figures) => Drawing.Figures.Showing(key.Id, figures);

    /// <summary>What is named, and the point on paper that its name tells of.</summary>
    private IEnumerable<(string Name, Point At)> Named()
    {
        var mounted = _mounted.Fastened;
        if (_mounted.JunctionBox is { } box)
        {
            yield return (Say.Of("junction box"), view.Of(box.Center));
        }

        if (_mounted.CableExit is { } exit)
        {
            yield return (Say.Of("cable exit"), view.Of(exit));
        }

        foreach (var zipper in mounted.Zippers)
        {
            yield return (Say.Of($"{Words.Of(zipper.Side)} zipper"), view.Of(zipper.Line.From.Toward(zipper.Line.To, 0.3)));
        }

        foreach (var flap in mounted.Flaps)
        {
            yield return (flap.Name, view.Of(flap.Line.From.Toward(flap.Line.To, 0.3)));
        }

        foreach (var strip in mounted.Strips)
        {
            yield return (mounted.Strips.Length > 1 ? Say.Of($"{Words.Of(strip.Side)} weather strip") : Say.Of("weather strip"), view.Of(new Point(strip.Finished.Left + (strip.Finished.WidthMm * 0.7), strip.SeamY)));
        }

        yield return (Say.Of("corner pocket"), view.Of(mounted.Pockets[^1].Outline.Bounds.Center));
        foreach (var keepOut in _top.KeepOuts)
        {
            yield return (keepOut.Name, view.Of(Plan.Of(keepOut).Center));
        }

        yield return (Say.Of("panel, cells grey"), view.Of(_mounted.CellBox.Center));
    }

    private IEnumerable<Figure> Sizes()
    {
        var (whole, carrier) = (view.Of(Plan.Of(_top)), view.Of(_mounted.CarrierBox));
        return
        [
            .. Dimension.Level(whole.Left, whole.Right, whole.Bottom - 12, Say.Of($"top {Text(_top.Width)}")),
            .. Dimension.Upright(whole.Bottom, whole.Top, whole.Left - 12, Say.Of($"top {Text(_top.Length)}")),
            .. Dimension.Level(carrier.Left, carrier.Right, whole.Bottom - 6, Say.Of($"carrier {Text(Length.FromMillimeters(_mounted.CarrierBox.WidthMm))}")),
            .. Dimension.Upright(carrier.Bottom, carrier.Top, whole.Left - 5, Say.Of($"carrier {Text(Length.FromMillimeters(_mounted.CarrierBox.HeightMm))}")),
        ];
    }

    private string Text(Length length) => LengthText.Of(length, units);
}
