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

    public IEnumerable<Figure> Figures()
    {
        ImmutableArray<Figure> drawn = [.. _bare.Lines(), .. Mounted(), .. _bare.TubeEdges()];
        return [.. drawn, .. _bare.NamesOver(drawn, Named()), .. Sizes()];
    }

    private IEnumerable<Figure> Mounted()
    {
        yield return new Tint(view.Of(Outline.Of(_mounted.CellBox)), 0.18);
        yield return view.Line(LineRole.Cut, _mounted.CarrierBox);
        yield return view.Line(LineRole.Mark, RoundedBox.Of(_mounted.PanelBox, patterns.Job.Panel.Body.CornerRadius.Millimeters));
        yield return view.Line(LineRole.Note, _mounted.CellBox);
        foreach (var zipper in _mounted.Fastened.Zippers)
        {
            yield return view.Line(LineRole.Mark, zipper.Band);
            yield return view.Line(LineRole.Stitch, zipper.Line.From, zipper.Line.To);
        }

        foreach (var figure in _mounted.Fastened.Flaps.SelectMany(flap => FlapPicture.Of(flap, view)))
        {
            yield return figure;
        }

        foreach (var line in _mounted.Fastened.Pockets.Select(pocket => view.Line(LineRole.Grain, pocket.Outline))
            .Concat(_mounted.Fastened.Strips.Select(strip => view.Line(LineRole.Fold, strip.Finished))))
        {
            yield return line;
        }

        if (_mounted.JunctionBox is { } box)
        {
            yield return new Tint(view.Of(Outline.Of(box)), 0.45);
            yield return view.Line(LineRole.Mark, box);
        }

        if (_mounted.CableExit is { } exit)
        {
            yield return Stroke.Closed(LineRole.Mark, RoundedBox.Circle(view.Of(exit), 1.2));
        }
    }

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
        foreach (var keepOut in _bare.Named())
        {
            yield return keepOut;
        }

        yield return (Say.Of("panel, cells grey"), view.Of(_mounted.CellBox.Center));
    }

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
