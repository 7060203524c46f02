using CanvasCut.Language;
using static CanvasCut.JobFiles.FieldKind;
using static CanvasCut.JobFiles.FieldRange;

namespace CanvasCut.JobFiles;

/// <summary>The carrier and what holds it.</summary>
internal static class CarrierFields
{
    private static readonly string Army = Say.Later("US Army FM 10-16, hem of canvas");

    public static Field[] All { get; } =
    [
        .. SideNames.All.Select(side => new Field($"carrier.border.{side}", Length, Reach("0 mm", "300 mm"), Presence.Optional)
            .Or("1 in", Say.Later("as wide as the usual hem, which then lies beside the panel and not under it; common practice, no source"))),
        .. SideNames.All.Select(side => new Field($"carrier.keep_room.{side}", Length, Reach("0 mm", "150 mm"), Presence.Optional).Or("0 mm", Source.NoneAssumed)),
        new Field("carrier.widest_border", Length, Reach("10 mm", "300 mm"), Presence.Optional).Or("100 mm", Source.RuleOfThumb),
        .. Hem("carrier.hem", "1 in", Army),
        new Field("carrier.corner", Word, Any, Presence.Optional).Among("mitred", "square").Or("mitred", Source.Practice),
        .. SideNames.All.Select(side => new Field($"carrier.edges.{side}", Word, Any, Presence.Optional)
            .Among("hem", "binding").Or("hem", Source.Practice)),
        new("carrier.position.station", Length, Reach("0 mm", "6 m"), Presence.RequiredInTable),
        new("carrier.position.offset", Length, Signed("-3 m", "3 m"), Presence.RequiredInTable),

        new Field("zipper.grade", Text, Any, Presence.Optional).Or("tooth-10", Source.Practice),
        new Field("zipper.chain", Length, Size("3 mm", "25 mm"), Presence.Optional).Or("10 mm", Say.Later("nominal, from memory")),
        new Field("zipper.overall_width", Length, Size("15 mm", "80 mm"), Presence.Optional)
            .Or("1 1/2 in", Say.Later("Marine Fabricator, \"Fabricating an enclosure\", 2010")),
        new Field("zipper.kind", Word, Any, Presence.Optional).Among("separating", "continuous").Or("separating", Source.Practice),
        new Field("zipper.setback", Length, Reach("0 mm", "150 mm"), Presence.Optional).Or("1 in", Source.Practice),
        new Field("zipper.start", Word, Any, Presence.Optional).Among("port", "starboard").Or("port", Source.Practice),
        new("zipper.start_setback", Length, Reach("0 mm", "400 mm"), Presence.Optional),
        new Field("zipper.reveal", Length, Size("2 mm", "30 mm"), Presence.Optional).Or("3/8 in", Source.Practice),
        new Field("zipper.stock", LengthList, Size("0.1 m", "6 m"), Presence.Optional)
            .Or("24 in, 30 in, 36 in, 48 in, 54 in, 60 in, 72 in, 84 in, 96 in, 120 in", Say.Later("24 to over 96 in: Marine Fabricator, \"Zipper basics\", 2019; steps from memory, ask the shop")),
        new Field("zipper.cap_turn", Length, Reach("0 mm", "15 mm"), Presence.Optional).Or("0 mm", Source.Practice),

        new("pocket.leg", Length, Size("30 mm", "400 mm"), Presence.Optional),
        new("pocket.ease", Length, Reach("0 mm", "60 mm"), Presence.Optional),
        .. Hem("pocket.mouth", "1/2 in", Source.Practice),
        Allowance("pocket.seam_allowance"),
        new Field("pocket.over_zipper", Flag, Any, Presence.Optional).Or("true", Source.Practice),

        new Field("weather_strip.edges", WordList, Any, Presence.Optional).Among(SideNames.All).Or("forward", Source.Practice),
        .. SideNames.All.Select(side => new Field($"{SewnTo}{side}", Word, Any, Presence.Optional).Among("top", "carrier").Or("top", Source.Practice)),
        new Field("weather_strip.overlap", Length, Reach("3 mm", "100 mm"), Presence.Optional)
            .Or("5/8 in", Say.Later("covers the teeth by 1 in: a camper-canvas forum's rule, single source")),
        Allowance("weather_strip.seam_allowance"),
        .. Hem("weather_strip.hem", "1/2 in", Source.Practice),
        new Field("weather_strip.overhang", Length, Reach("0 mm", "200 mm"), Presence.Optional).Or("1 in", Source.Practice),
        new Field("weather_strip.held", Word, Any, Presence.Optional).Among("nothing", "hook-and-loop", "snaps", "rod").Or("nothing", Source.Practice),
        new Field("weather_strip.pitch", Length, Size("50 mm", "0.5 m"), Presence.Optional).Or("8 in", Source.Practice),
        new Field("weather_strip.square", Length, Size("12 mm", "50 mm"), Presence.Optional).Or("5/8 in", Source.Practice),
        new Field("weather_strip.rod", Length, Size("3 mm", "15 mm"), Presence.Optional).Or("1/4 in", Source.Practice),

        new Field("chafe.width_beyond_tube", Length, Size("5 mm", "200 mm"), Presence.Optional).Or("1 1/2 in", Source.Practice),
        new Field("chafe.turn_under", Length, Reach("0 mm", "40 mm"), Presence.Optional).Or("1/2 in", Say.Later("US Army TM 10-1670, patches")),
    ];

    /// <summary>
    /// Whether a default is worth telling: what a strip is sewn to only where there is one, and the sizes of what holds it only where it does.
    /// </summary>
    public static bool Concerns(string field, JobValues values) => field switch
    {
        "weather_strip.pitch" => Held(values) is "hook-and-loop" or "snaps",
        "weather_strip.square" => Held(values) == "hook-and-loop",
        "weather_strip.rod" => Held(values) == "rod",
        "weather_strip.held" => HasStrip(values),
        _ => !field.StartsWith(SewnTo, StringComparison.Ordinal) || (values.Words("weather_strip.edges") ?? []).Contains(field[SewnTo.Length..]),
    };

    /// <summary>What holds the free edges of the strips there are; null without any.</summary>
    public static string? Held(JobValues values) => HasStrip(values) ? values.Text("weather_strip.held") : null;

    private static bool HasStrip(JobValues values) => values.Words("weather_strip.edges") is { Length: > 0 };

    private const string SewnTo = "weather_strip.sewn_to.";

    private static Field[] Hem(string table, string width, string source) =>
    [
        new Field($"{table}.turn_under", Length, Reach("0 mm", "40 mm"), Presence.Optional).Or("1/2 in", source),
        new Field($"{table}.width", Length, Size("5 mm", "100 mm"), Presence.Optional).Or(width, source),
    ];

    private static Field Allowance(string name) =>
        new Field(name, Length, Size("3 mm", "50 mm"), Presence.Optional).Or("1/2 in", Source.Practice);
}
