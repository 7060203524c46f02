using System.Collections.Immutable;
using System.Text.Json;
using CanvasCut.Design;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Job;

/// <summary>Reads the sewn half of results.json again, and reports everything that is missing in it or cannot be.</summary>
/// <remarks>What was reported is given a harmless value, so that reading can go on; nothing is made of it.</remarks>
internal sealed class SewnReader(PlacedJson json, Action<string, string> report)
{
    private const string Root = "sewn";

    /// <summary>No boat is so large; what is beyond is damage.</summary>
    private const double MostMm = 100_000;

    public SewnHalf Read()
    {
        var zipper = Zipper();
        var pocket = Pocket();
        return new(
            new(new(Any("carrier.station_mm"), Any("carrier.offset_mm")), Positive("carrier.athwart_mm"), Positive("carrier.fore_aft_mm"), Panel()),
            new(zipper.Spec, pocket.Spec, Strip(), new(NotNegative("chafe.width_beyond_tube_mm"), NotNegative("chafe.turn_under_mm")), MountSpec.Zippers),
            zipper.Choice,
            pocket.Legs);
    }

    private SewnPanel Panel() => new(
        Word("panel.long_side", "athwart", "fore-aft") == 0 ? LongSide.Athwart : LongSide.ForeAft,
        Positive("panel.athwart_mm"),
        Positive("panel.fore_aft_mm"),
        Positive("panel.thickness_mm"));

    private (ZipperSpec Spec, ZipperChoice Choice) Zipper()
    {
        var kind = Word("zipper.kind", "separating", "continuous") == 0 ? ZipperKind.Separating : ZipperKind.Continuous;
        var (setback, buy) = (NotNegative("zipper.setback_mm"), Positive("zipper.buy_mm"));

        // Results of earlier versions do not tell where it starts: both ends had one setback.
        var start = At($"{Root}.zipper.start_setback_mm") is null ? setback : NotNegative("zipper.start_setback_mm");
        var side = At($"{Root}.zipper.start") is null || Word("zipper.start", "port", "starboard") == 0 ? Side.Port : Side.Starboard;
        return (
            new(new(Positive("zipper.chain_mm"), Positive("zipper.overall_width_mm")), kind, setback, Positive("zipper.reveal_mm"), [buy]) { Start = side, StartSetback = start },
            new(kind, Positive("zipper.run_mm"), setback, buy, setback) { StartSetback = start });
    }

    private (PocketSpec Spec, ImmutableArray<Length> Legs) Pocket()
    {
        ImmutableArray<Length> legs = [.. Items("pocket.legs_mm", Corner.All.Count).Select(item => Number(item, number => number > 0, "a length above zero"))];
        var spec = new PocketSpec(
            null, NotNegative("pocket.ease_mm"), Hem("pocket.mouth"), NotNegative("pocket.seam_allowance_mm"), Word("pocket.over_zipper", "false", "true") == 1);
        return (spec, legs);
    }

    private WeatherStripSpec Strip() => new(
        [.. EndsIn("weather_strip.edges")],
        NotNegative("weather_strip.overlap_mm"),
        NotNegative("weather_strip.seam_allowance_mm"),
        Hem("weather_strip.hem"),
        NotNegative("weather_strip.overhang_mm"))
    {
        // Results of earlier versions do not tell it: the seam lay 6 mm beside what it covers, whatever its rows.
        SeamClearance = At($"{Root}.weather_strip.seam_clearance_mm") is null ? null : NotNegative("weather_strip.seam_clearance_mm"),

        // Earlier versions sewed every strip to the top.
        SewnTo = At($"{Root}.weather_strip.on_carrier") is null ? Sides.All(StripGround.Top) : OnCarrier([.. EndsIn("weather_strip.on_carrier")]),
    };

    private IEnumerable<Side> EndsIn(string path) => Items(path, null).Select(item => Word(item, "forward", "aft") == 0 ? Side.Forward : Side.Aft).Distinct();

    private static Sides<StripGround> OnCarrier(ImmutableArray<Side> edges) => Sides.Of(side => edges.Contains(side) ? StripGround.Carrier : StripGround.Top);

    private Hem Hem(string path) => new(NotNegative($"{path}.turn_under_mm"), NotNegative($"{path}.width_mm"));

    private Length Any(string path) => Number($"{Root}.{path}", _ => true, "a length");

    private Length NotNegative(string path) => Number($"{Root}.{path}", number => number >= 0, "a length not below zero");

    private Length Positive(string path) => Number($"{Root}.{path}", number => number > 0, "a length above zero");

    private Length Number(string path, Func<double, bool> suits, string wanted)
    {
        if (At(path) is { ValueKind: JsonValueKind.Number } value && value.TryGetDouble(out var number) && Math.Abs(number) < MostMm && suits(number))
        {
            return Length.FromMillimeters(number);
        }

        report(path, $"should be {wanted} in millimetres.");
        return Length.FromMillimeters(1);
    }

    private int Word(string path, params string[] words)
    {
        var full = path.StartsWith(Root, StringComparison.Ordinal) ? path : $"{Root}.{path}";
        var text = At(full) switch
        {
            { ValueKind: JsonValueKind.String } word => word.GetString(),
            { ValueKind: JsonValueKind.True } => "true",
            { ValueKind: JsonValueKind.False } => "false",
            _ => null,
        };
        var index = Array.IndexOf(words, text);
        if (index < 0)
        {
            report(full, $"should be {string.Join(" or ", words.Select(word => word is "true" or "false" ? word : $"\"{word}\""))}.");
        }

        return Math.Max(index, 0);
    }

    private IEnumerable<string> Items(string path, int? count)
    {
        var full = $"{Root}.{path}";
        var there = At(full) is { ValueKind: JsonValueKind.Array } list ? list.GetArrayLength() : -1;
        if (there < 0 || (count ?? there) != there)
        {
            report(full, count is null ? "should be a list." : FormattableString.Invariant($"should be a list of {count}."));
            return [];
        }

        return Enumerable.Range(1, there).Select(i => FormattableString.Invariant($"{full}[{i}]"));
    }

    private JsonElement? At(string path)
    {
        JsonElement? here = json.Root;
        foreach (var step in path.Split('.', '['))
        {
            here = here switch
            {
                { ValueKind: JsonValueKind.Object } table when table.TryGetProperty(step, out var value) => value,
                { ValueKind: JsonValueKind.Array } list when step.EndsWith(']') => list[int.Parse(step[..^1], System.Globalization.CultureInfo.InvariantCulture) - 1],
                _ => null,
            };
        }

        return here;
    }
}
