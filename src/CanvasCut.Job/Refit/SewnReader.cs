using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Job;

/// <summary>Takes the sewn half from results.json again, and reports everything in it that cannot be.</summary>
/// <remarks>What was reported is given a harmless value, so that reading can go on; nothing is made of it.</remarks>
/// <param name="root">The field in which it stands.</param>
/// <param name="report">Takes a field and what it should be.</param>
internal sealed class SewnReader(string root, Action<string, string> report)
{
    /// <summary>No boat is so large; what is beyond is damage.</summary>
    private const double MostMm = 100_000;

    public SewnHalf Read(SewnPart sewn)
    {
        var (carrier, chafe) = (sewn.Carrier, sewn.Chafe);
        var zipper = Zipper(sewn.Zipper);
        var pocket = Pocket(sewn.Pocket);
        return new(
            new(
                new(Any("carrier.station_mm", carrier.StationMm), Any("carrier.offset_mm", carrier.OffsetMm)),
                Positive("carrier.athwart_mm", carrier.AthwartMm),
                Positive("carrier.fore_aft_mm", carrier.ForeAftMm),
                Panel(sewn.Panel)),
            new(
                zipper.Spec,
                pocket.Spec,
                Strip(sewn.WeatherStrip),
                new(NotNegative("chafe.width_beyond_tube_mm", chafe.WidthBeyondTubeMm), NotNegative("chafe.turn_under_mm", chafe.TurnUnderMm)),
                MountSpec.Zippers),
            zipper.Choice,
            pocket.Legs);
    }

    private SewnPanel Panel(SewnPanelPart panel) => new(
        panel.LongSide,
        Positive("panel.athwart_mm", panel.AthwartMm),
        Positive("panel.fore_aft_mm", panel.ForeAftMm),
        Positive("panel.thickness_mm", panel.ThicknessMm));

    private (ZipperSpec Spec, ZipperChoice Choice) Zipper(SewnZipperPart zipper)
    {
        var (setback, buy) = (NotNegative("zipper.setback_mm", zipper.SetbackMm), Positive("zipper.buy_mm", zipper.BuyMm));

        // Results of earlier versions do not tell where it starts: both ends had one setback.
        var start = zipper.StartSetbackMm is { } told ? NotNegative("zipper.start_setback_mm", told) : setback;
        var side = zipper.Start is { } from ? OneOf("zipper.start", from, Side.Port, Side.Starboard) : Side.Port;
        var gauge = new ZipperGauge(Positive("zipper.chain_mm", zipper.ChainMm), Positive("zipper.overall_width_mm", zipper.OverallWidthMm));
        return (
            new(gauge, zipper.Kind, setback, Positive("zipper.reveal_mm", zipper.RevealMm), [buy]) { Start = side, StartSetback = start },
            new(zipper.Kind, Positive("zipper.run_mm", zipper.RunMm), setback, buy, setback) { StartSetback = start });
    }

    private (PocketSpec Spec, ImmutableArray<Length> Legs) Pocket(SewnPocketPart pocket)
    {
        if (pocket.LegsMm.Length != Corner.All.Count)
        {
            report($"{root}.pocket.legs_mm", Say.Of($"should be a list of {Corner.All.Count}."));
        }

        ImmutableArray<Length> legs = [.. pocket.LegsMm.Index().Select(leg => Positive(FormattableString.Invariant($"pocket.legs_mm[{leg.Index + 1}]"), leg.Item))];
        return (
            new(
                null,
                NotNegative("pocket.ease_mm", pocket.EaseMm),
                Hem("pocket.mouth", pocket.Mouth),
                NotNegative("pocket.seam_allowance_mm", pocket.SeamAllowanceMm),
                pocket.OverZipper),
            legs);
    }

    private WeatherStripSpec Strip(SewnStripPart strip) => new(
        EdgesOf("weather_strip.edges", strip.Edges),
        NotNegative("weather_strip.overlap_mm", strip.OverlapMm),
        NotNegative("weather_strip.seam_allowance_mm", strip.SeamAllowanceMm),
        Hem("weather_strip.hem", strip.Hem),
        NotNegative("weather_strip.overhang_mm", strip.OverhangMm))
    {
        // Results of earlier versions do not tell it: the seam lay 6 mm beside what it covers, whatever its rows.
        SeamClearance = strip.SeamClearanceMm is { } clearance ? NotNegative("weather_strip.seam_clearance_mm", clearance) : null,

        // Earlier versions sewed every strip to the top.
        Held = strip.Held?.Kind ?? StripHold.Nothing,
        Pitch = strip.Held is { } row ? Positive("weather_strip.held.pitch_mm", row.PitchMm) : Length.Zero,
        Square = strip.Held is { } squares ? Positive("weather_strip.held.square_mm", squares.SquareMm) : Length.Zero,
        Rod = strip.Held is { } rod ? Positive("weather_strip.held.rod_mm", rod.RodMm) : Length.Zero,
        SewnTo = strip.OnCarrier is { } edges ? OnCarrier(EdgesOf("weather_strip.on_carrier", edges)) : Sides.All(StripGround.Top),
    };

    private ImmutableArray<Side> EdgesOf(string field, ImmutableArray<Side> edges) =>
        [.. edges.Index().Select(edge => OneOf(FormattableString.Invariant($"{field}[{edge.Index + 1}]"), edge.Item, Side.Forward, Side.Aft)).Distinct()];

    private static Sides<StripGround> OnCarrier(ImmutableArray<Side> edges) => Sides.Of(side => edges.Contains(side) ? StripGround.Carrier : StripGround.Top);

    private Hem Hem(string field, HemPart hem) => new(NotNegative($"{field}.turn_under_mm", hem.TurnUnderMm), NotNegative($"{field}.width_mm", hem.WidthMm));

    private Length Any(string field, double number) => Number(field, number, true, Say.Of("should be a length in millimetres."));

    private Length NotNegative(string field, double number) => Number(field, number, number >= 0, Say.Of("should be a length not below zero in millimetres."));

    private Length Positive(string field, double number) => Number(field, number, number > 0, Say.Of("should be a length above zero in millimetres."));

    private Length Number(string field, double number, bool suits, string message)
    {
        if (Math.Abs(number) < MostMm && suits)
        {
            return Length.FromMillimeters(number);
        }

        report($"{root}.{field}", message);
        return Length.FromMillimeters(1);
    }

    private Side OneOf(string field, Side side, Side one, Side other)
    {
        if (side != one && side != other)
        {
            report($"{root}.{field}", Say.Of($"should be \"{Words.Id(one)}\" or \"{Words.Id(other)}\"."));
            return one;
        }

        return side;
    }
}
