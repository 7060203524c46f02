using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>The carrier that a sewn half was made for.</summary>
/// <param name="Middle">Where its middle lies on the top.</param>
/// <param name="Athwart">Its finished size across the boat; above zero.</param>
/// <param name="ForeAft">Its finished size along the boat; above zero.</param>
/// <param name="Panel">The panel it carried.</param>
public sealed record SewnCarrier(TopPlace Middle, Length Athwart, Length ForeAft, SewnPanel Panel);

/// <summary>The panel that was on it.</summary>
/// <param name="LongSide">Which way its long side lay.</param>
/// <param name="Athwart">Its size across the boat.</param>
/// <param name="ForeAft">Its size along the boat.</param>
/// <param name="Thickness">Without the junction box.</param>
public sealed record SewnPanel(LongSide LongSide, Length Athwart, Length ForeAft, Length Thickness);

/// <summary>What is sewn to the top and stays there when the carrier comes off: zipper halves, pockets, strips, patches.</summary>
/// <param name="Carrier">The carrier it was made for.</param>
/// <param name="Fastenings">What was sewn.</param>
/// <param name="Zipper">The lengths of each of the two zippers.</param>
/// <param name="Legs">The pockets' legs, in the order of <see cref="Corner.All"/>.</param>
/// <remarks>
/// A new carrier of the same finished size at the same place fits it, whatever panel lies on that carrier: the zippers'
/// halves mate, the corners reach the pockets. Only what covers the carrier's rim, pockets and strips, cares where the
/// cells are.
/// </remarks>
public sealed record SewnHalf(SewnCarrier Carrier, Fastenings Fastenings, ZipperChoice Zipper, ImmutableArray<Length> Legs)
{
    /// <summary>The sewn half of a job, at its place.</summary>
    /// <exception cref="ArgumentException">An edge is not held by a zipper, or a side is held; such a half is not refitted.</exception>
    public static SewnHalf Of(CarrierJob job, MountedShape mounted) => new(
        new(
            Plan.PlaceOf(mounted.CarrierBox.Center),
            Length.FromMillimeters(mounted.CarrierBox.WidthMm),
            Length.FromMillimeters(mounted.CarrierBox.HeightMm),
            PanelOf(job, mounted)),
        job.Fastenings with { WeatherStrip = MountedFastenings.ClearStrip(job) },
        mounted.Fastened.HasEndZippersOnly ? mounted.Fastened.Zippers[0].Choice : throw new ArgumentException("An edge is not held by a zipper.", nameof(mounted)),
        [.. mounted.Fastened.Pockets.Select(pocket => pocket.Leg)]);

    /// <summary>Everything that is mounted when a panel lies on a new carrier of the old one's size.</summary>
    /// <param name="panel">The panel the way it lies.</param>
    /// <param name="border">The canvas beyond it; with the panel's size it must add up to the carrier's.</param>
    public MountedShape With(MountedPanel panel, Sides<Length> border)
    {
        var carrier = Box.Around(new(0, 0), Carrier.Athwart.Millimeters, Carrier.ForeAft.Millimeters);
        var panelBox = MountedShape.Inside(carrier, border);
        var cells = MountedShape.Inside(panelBox, panel.Fittings.DeadBorder);
        return new MountedShape(panel, carrier, panelBox, cells, Fastened(carrier)).At(Carrier.Middle);
    }

    /// <summary>Where everything lay with the old panel, its cells and borders unknown: the panel in the carrier's middle.</summary>
    public MountedShape WithOldPanel()
    {
        var (old, none) = (Carrier.Panel, Sides.All(Length.Zero));
        var (across, along) = ((Carrier.Athwart - old.Athwart) / 2, (Carrier.ForeAft - old.ForeAft) / 2);
        return With(new(old.LongSide, old.Athwart, old.ForeAft, new(none, null, null)), new(along, along, across, across));
    }

    /// <summary>The job of a new panel on this half: its borders, its place and its fastenings are the sewn ones'.</summary>
    public CarrierJob JobOf(CarrierJob job, LongSide longSide, Sides<Length> border) => job with
    {
        Panel = SameWay(job.Panel, longSide),
        Carrier = job.Carrier with { Border = border, Position = Carrier.Middle, Room = job.Carrier.Room with { Kept = Sides.All(Length.Zero) } },
        Fastenings = Fastenings with { Zipper = Fastenings.Zipper with { Setback = Zipper.Setback, Stock = [Zipper.Buy], CapTurn = job.Fastenings.Zipper.CapTurn }, Mount = job.Fastenings.Mount.OnZippers() },
        Defaults = [.. job.Defaults.Where(used => !IsSewn(used.Field))],
    };

    /// <summary>What a pocket covers along the edges of the carrier.</summary>
    internal Length Covers(int corner) => Legs[corner] - PocketPlace.Outside(Fastenings, Corner.All[corner]);

    /// <summary>Whether a field of the job file says what is sewn already.</summary>
    internal static bool IsSewn(string field) => field is not "zipper.cap_turn"
        && (field.Split('.')[0] is "zipper" or "mount" or "pocket" or "weather_strip" or "chafe"
            || field.StartsWith("carrier.border", StringComparison.Ordinal)
            || field.StartsWith("carrier.keep_room", StringComparison.Ordinal));

    /// <summary>What the carrier was made for: of a row all of it, as thick as its thickest panel.</summary>
    private static SewnPanel PanelOf(CarrierJob job, MountedShape mounted) => job.Row is null
        ? new(mounted.Panel.LongSide, mounted.Panel.Athwart, mounted.Panel.ForeAft, job.Panel.Body.Thickness)
        : new(
            mounted.Panel.LongSide,
            Length.FromMillimeters(mounted.RowBox.WidthMm),
            Length.FromMillimeters(mounted.RowBox.HeightMm),
            job.Panels.Select(panel => panel.Panel.Body.Thickness).Aggregate(UnitMath.Max));

    private MountedFastenings Fastened(Box carrier) => MountedFastenings.Of(carrier, Fastenings, Zipper, Legs);

    /// <summary>The panel with its way settled and its fittings told for that way.</summary>
    private static SolarPanel SameWay(SolarPanel panel, LongSide longSide) =>
        panel with { LongSide = longSide, Fittings = MountedPanel.Of(panel, longSide).Fittings };
}
