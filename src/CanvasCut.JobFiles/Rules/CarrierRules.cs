using CanvasCut.Language;
using UnitsNet;
using static CanvasCut.JobFiles.RuleLog;

namespace CanvasCut.JobFiles;

/// <summary>The carrier's hem and place, and all hems' turn-unders.</summary>
internal static class CarrierRules
{
    private const double MostOfCarrier = 0.25;
    private static readonly string[] Hems = ["carrier.hem", "pocket.mouth", "weather_strip.hem"];

    public static void Check(JobValues values, RuleLog rules)
    {
        var (athwart, foreAft) = MountedSize.SmallestCarrier(values);
        var smaller = athwart < foreAft ? athwart : foreAft;
        rules.When(
            values.Length("carrier.hem.width") >= smaller * MostOfCarrier,
            ProblemCode.HemTooWide,
            "carrier.hem.width",
            Say.Of($"is a quarter of the carrier or more, which is {In(smaller)} at its smallest."));
        foreach (var hem in Hems)
        {
            rules.When(
                values.Length($"{hem}.turn_under") > values.Length($"{hem}.width"),
                ProblemCode.HemTooWide,
                $"{hem}.turn_under",
                Say.Of($"is wider than the hem, {In(values.Length($"{hem}.width"))}, and would stick out of it."));
        }

        CheckPosition(values, rules);
    }

    private static void CheckPosition(JobValues values, RuleLog rules)
    {
        var length = values.Length("top.length");
        rules.When(values.Length("carrier.position.station") > length, ProblemCode.OffTop, "carrier.position.station", Say.Of($"lies aft of the top, which is {In(length)} long."));
        if (values.Length("carrier.position.offset") is { } offset)
        {
            CheckOffset(values, rules, offset);
        }
    }

    private static void CheckOffset(JobValues values, RuleLog rules, Length offset)
    {
        if (TopShapeReader.OutlineOf(values) is { IsRectangle: false } outline && values.Length("carrier.position.station") is { } station)
        {
            var halves = outline.HalvesAt(station);
            rules.When(
                offset > halves.Starboard || -offset > halves.Port,
                ProblemCode.OffTop,
                "carrier.position.offset",
                Say.Of($"lies beside the top, which reaches {In(halves.Port)} to port and {In(halves.Starboard)} to starboard at that station."));
            return;
        }

        var half = values.Length("top.width") / 2;
        rules.When(offset > half || offset < -half, ProblemCode.OffTop, "carrier.position.offset", Say.Of($"lies beside the top, which reaches {In(half)} to each side."));
    }
}
