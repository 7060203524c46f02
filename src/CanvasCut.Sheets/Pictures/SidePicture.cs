using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Sheets;

/// <summary>The panel over the bows as seen from the side, along its middle, with the radius at each tube.</summary>
internal sealed class SidePicture
{
    private const double WidthMm = 180;
    private const double MarginMm = 8;
    private const double TextMm = 2.2;
    private const double TallestMm = 40;
    private const double AboveMm = 22;
    private const double BelowMm = 22;
    private const double NamesMm = 5.6;
    private const int StripPoints = 120;

    /// <summary>Heights are small against lengths; they are drawn so many times larger, the largest that the sheet takes.</summary>
    private static readonly double[] Exaggerations = [10, 5, 2, 1];

    private readonly PanelProfile _profile;
    private readonly PatternSet _patterns;
    private readonly PrintUnits _units;
    private readonly ImmutableArray<StripRest> _cloth;
    private readonly double _scale;
    private readonly double _lowestMm;

    private SidePicture(PatternSet patterns, PanelProfile profile, PrintUnits units)
    {
        (_patterns, _profile, _units) = (patterns, profile, units);
        _cloth = [.. Stations(patterns).Select(profile.ClothAt)];
        _scale = (WidthMm - (2 * MarginMm)) / (_cloth[^1].AtMm - _cloth[0].AtMm);
        var heights = _cloth.Select(place => place.HeightMm).Concat(StripLine().Select(point => point.HeightMm)).ToList();
        _lowestMm = heights.Min();
        Times = Exaggerations.FirstOrDefault(times => (heights.Max() - _lowestMm) * _scale * times <= TallestMm, 1);
        HeightMm = ((heights.Max() - _lowestMm) * _scale * Times) + AboveMm + BelowMm;
    }

    private double Times { get; }

    private double HeightMm { get; }

    /// <summary>The picture; null when the shape of the top is not known.</summary>
    public static Sheet? Of(PatternSet patterns, PrintUnits units)
    {
        if (patterns.Slack.Surface is not { } surface)
        {
            return null;
        }

        var picture = new SidePicture(patterns, PanelProfile.Of(patterns.Job, patterns.Mounted, surface)[1], units);
        return new("side", Say.Of("The panel over the bows"), WidthMm, picture.HeightMm, [.. picture.Figures()]);
    }

    private IEnumerable<Figure> Figures() =>
    [
        .. _patterns.Job.Top.Bows.Index().SelectMany(bow => Tube(bow.Index, bow.Item)),
        new Stroke(LineRole.Mark, [.. _cloth.Select(At)], IsClosed: false),
        .. Edges(),
        new Stroke(LineRole.Cut, [.. StripLine().Select(At)], IsClosed: false),
        .. _profile.Tubes.SelectMany(tube => Label(tube.At.Millimeters, Words(tube), HeightMm - 4)),
        .. Sharpest(),
        new Lettering(Say.Of("forward"), new(MarginMm, 1.4), TextMm),
        new Lettering(Say.Of("aft"), new(WidthMm - MarginMm, 1.4), TextMm, TextAnchor.Right),
        new Lettering(Times > 1 ? Say.Of($"heights drawn {Times:0} times as large as lengths") : Say.Of("heights and lengths at one scale"), new(WidthMm / 2, 1.4), TextMm, TextAnchor.Middle),
    ];

    /// <summary>From a little before the first of bows and fastenings to a little after the last.</summary>
    private static IEnumerable<double> Stations(PatternSet patterns)
    {
        const int Places = 160;
        var edges = patterns.Mounted.Fastened.Edges.Where(edge => edge.IsEnd).Select(edge => -edge.LineY).ToList();
        var bows = patterns.Job.Top.Bows.Select(bow => bow.Station.Millimeters).ToList();
        var (from, to) = (Math.Min(edges.Min(), bows.Min()) - 20, Math.Max(edges.Max(), bows.Max()) + 20);
        return Enumerable.Range(0, Places + 1).Select(i => from + ((to - from) * i / Places)).Concat(bows).Order();
    }

    private IEnumerable<StripRest> StripLine() => Enumerable.Range(0, StripPoints + 1)
        .Select(i => _profile.Strip.LengthMm * i / StripPoints)
        .Select(at => new StripRest(at, _profile.Strip.HeightAt(at)));

    private Point At(StripRest place) => new(
        MarginMm + ((place.AtMm - _cloth[0].AtMm) * _scale),
        BelowMm + ((place.HeightMm - _lowestMm) * _scale * Times));

    private IEnumerable<Figure> Tube(int index, Bow bow)
    {
        var top = At(_profile.ClothAt(bow.Station.Millimeters));
        var radius = Math.Max(bow.Diameter.Millimeters * _scale / 2, 1);
        var circle = RoundedBox.Circle(top - new Step(0, radius), radius);
        return
        [
            new Tint(circle, 0.3),
            Stroke.Closed(LineRole.Mark, circle),
            Stroke.Open(LineRole.Note, top - new Step(0, (2 * radius) + 0.6), new(top.X, NamesMm + TextMm + 0.8)),
            new Lettering(Say.Of($"bow {index + 1}"), new(top.X, NamesMm), TextMm, TextAnchor.Middle),
        ];
    }

    private IEnumerable<Figure> Edges() => _patterns.Mounted.Fastened.Edges.Where(edge => edge.IsEnd).SelectMany(edge =>
    {
        var at = At(_profile.ClothAt(-edge.LineY));
        var isForward = edge.Side == Side.Forward;
        return new Figure[]
        {
            Stroke.Open(LineRole.Mark, at - new Step(0, 1.5), at + new Step(0, 1.5)),
            Stroke.Open(LineRole.Note, at - new Step(0, 1.5), at - new Step(0, 10.5)),
            new Lettering(Patterns.Words.Of(edge.Kind), at - new Step(isForward ? -1 : 1, 12.8), TextMm, isForward ? TextAnchor.Left : TextAnchor.Right),
        };
    });

    private string Words(TubeUnder tube) => tube.IsTouched
        ? RadiusText(tube.Radius)
        : Say.Of($"stands {LengthText.Of(tube.StandsOff, _units)} off");

    private IEnumerable<Figure> Sharpest()
    {
        var (radius, at) = _profile.Strip.Sharpest;
        var isOnTube = _profile.Tubes.Any(tube => tube.IsTouched && Math.Abs(tube.At.Millimeters - at) < 1e-6);
        return isOnTube || double.IsInfinity(radius) ? [] : Label(at, Say.Of($"{RadiusText(Length.FromMillimeters(radius))}, the sharpest"), HeightMm - 9);
    }

    private string RadiusText(Length? radius) => radius is { } known ? $"R {LengthText.Of(Length.FromMillimeters(Math.Round(known.Millimeters)), _units)}" : Say.Of("straight");

    /// <summary>Words over a place of the panel, with a line down to it.</summary>
    private IEnumerable<Figure> Label(double atMm, string text, double y)
    {
        var on = At(new(atMm, _profile.Strip.HeightAt(atMm)));
        return
        [
            Stroke.Open(LineRole.Note, on + new Step(0, 0.6), new(on.X, y - 1)),
            new Lettering(text, new(on.X, y), TextMm, TextAnchor.Middle),
        ];
    }
}
