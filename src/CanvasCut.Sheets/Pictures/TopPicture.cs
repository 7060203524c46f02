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
    private readonly TopCloth _top = patterns.Job.Top;
    private readonly BareTopPicture _bare = new(patterns.Job.Top, view, units);
    private readonly MountedShape _mounted = patterns.Mounted;
    private readonly PartKeys _keys = new(patterns.Job);

    /// <summary>The whole picture.</summary>
    /// <param name="others">What else is mounted on the top; of it only the panels are named, for the parts of one look like those of another.</param>
    public IEnumerable<Figure> Figures(ImmutableArray<PatternSet> others)
    {
        ImmutableArray<TopPicture> besides = [.. others.Select(other => new TopPicture(other, view, units))];
        ImmutableArray<Figure> drawn = [.. _bare.Lines(), .. Mounted(), .. besides.SelectMany(other => other.Mounted()), .. _bare.TubeEdges()];
        return [.. drawn, .. _bare.NamesOver(drawn, [.. Named(), .. besides.SelectMany(other => other.PanelsNamed())]), .. Sizes()];
    }

    private IEnumerable<Figure> Mounted()
    {
        var fastened = _mounted.Fastened;
        return
        [
            .. patterns.EachPanel.SelectMany(each => BareTopPicture.Shown(new PartKeys(each.Job).Cells, new Tint(view.Of(Outline.Of(each.Mounted.CellBox)), 0.18))),
            .. CarrierEdges(),
            .. patterns.EachPanel.SelectMany(PanelLines),
            .. fastened.Zippers.SelectMany(zipper => BareTopPicture.Shown(_keys.Fastening(zipper.Side), [view.Line(LineRole.Mark, zipper.Band), view.Line(LineRole.Stitch, zipper.Line.From, zipper.Line.To), .. ZipperPicture.Start(zipper, view)])),
            .. fastened.Flaps.SelectMany(flap => BareTopPicture.Shown(_keys.Fastening(flap.Side), FlapPicture.Of(flap, view))),
            .. fastened.Pockets.SelectMany(pocket => BareTopPicture.Shown(_keys.Pocket(pocket.Corner), view.Line(LineRole.Grain, pocket.Outline))),
            .. fastened.Strips.SelectMany(strip => BareTopPicture.Shown(_keys.Strip(strip.Side), [view.Line(LineRole.Fold, strip.Finished), .. StripPicture.HeldBy(strip, view)])),
            .. patterns.EachPanel.SelectMany(FittingLines),
        ];
    }

    private IEnumerable<Figure> PanelLines(PatternSet each)
    {
        var keys = new PartKeys(each.Job);
        return
        [
            .. BareTopPicture.Shown(keys.Panel, view.Line(LineRole.Mark, RoundedBox.Of(each.Mounted.PanelBox, each.Job.Panel.Body.CornerRadius.Millimeters))),
            .. BareTopPicture.Shown(keys.Cells, view.Line(LineRole.Note, each.Mounted.CellBox)),
        ];
    }

    private IEnumerable<Figure> FittingLines(PatternSet each)
    {
        var keys = new PartKeys(each.Job);
        return
        [
            .. each.Mounted.JunctionBox is { } box ? BareTopPicture.Shown(keys.JunctionBox, new Tint(view.Of(Outline.Of(box)), 0.45), view.Line(LineRole.Mark, box)) : [],
            .. each.Mounted.CableExit is { } exit ? BareTopPicture.Shown(keys.CableExit, Stroke.Closed(LineRole.Mark, RoundedBox.Circle(view.Of(exit), 1.2))) : [],
        ];
    }

    /// <summary>The carrier as one, and its edges each by itself.</summary>
    private IEnumerable<Figure> CarrierEdges() =>
        [.. BareTopPicture.Shown(_keys.Carrier, view.Line(LineRole.Cut, _mounted.CarrierBox)), .. _bare.Edges(_mounted.CarrierBox, _keys.CarrierEdge)];

    /// <summary>What is named, and the point on paper that its name tells of.</summary>
    private IEnumerable<(string Name, Point At)> Named()
    {
        var mounted = _mounted.Fastened;
        var panels = patterns.EachPanel;
        if (panels.Select(each => each.Mounted.JunctionBox).FirstOrDefault(each => each is not null) is { } box)
        {
            yield return (Say.Of("junction box"), view.Of(box.Center));
        }

        if (panels.Select(each => each.Mounted.CableExit).FirstOrDefault(each => each is not null) is { } exit)
        {
            yield return (Say.Of("cable exit"), view.Of(exit));
        }

        foreach (var zipper in mounted.Zippers)
        {
            yield return (Say.Of($"{Words.Of(zipper.Side)} zipper"), view.Of(zipper.Line.From.Toward(zipper.Line.To, 0.5)));
        }

        // The others start at the same side, and bear the same dark box.
        if (mounted.Zippers is [.., var last])
        {
            yield return (Say.Of("zippers start here"), view.Of(last.Start));
        }

        foreach (var flap in mounted.Flaps)
        {
            yield return (flap.Name, view.Of(flap.Line.From.Toward(flap.Line.To, 0.3)));
        }

        foreach (var strip in mounted.Strips)
        {
            yield return (mounted.Strips.Length > 1 ? strip.Name : Say.Of("weather strip"), view.Of(strip.Seam.From.Toward(strip.Seam.To, 0.7)));
        }

        yield return (Say.Of("corner pocket"), view.Of(mounted.Pockets[^1].Outline.Bounds.Center));
        foreach (var keepOut in _bare.Named())
        {
            yield return keepOut;
        }

        foreach (var panel in PanelsNamed())
        {
            yield return panel;
        }
    }

    private IEnumerable<(string Name, Point At)> PanelsNamed() => _mounted.Panels.Select(panel => (
        (panel.Name.IsOnly ? patterns.Job.Mounting : panel.Name) is { IsOnly: false } name ? Say.Of($"panel \"{name}\", cells grey") : Say.Of("panel, cells grey"),
        view.Of(panel.Cells.Center)));

    private IEnumerable<Figure> Sizes()
    {
        var (whole, carrier) = (view.Of(Plan.Of(_top)), view.Of(_mounted.CarrierBox));
        return
        [
            .. _bare.Sizes(),
            .. Dimension.Level(carrier.Left, carrier.Right, whole.Bottom - 6, Say.Of($"carrier {Text(Length.FromMillimeters(_mounted.CarrierBox.WidthMm))}")),
            .. Dimension.Upright(carrier.Bottom, carrier.Top, whole.Left - 5, Say.Of($"carrier {Text(Length.FromMillimeters(_mounted.CarrierBox.HeightMm))}")),
        ];
    }

    private string Text(Length length) => LengthText.Of(length, units);
}
