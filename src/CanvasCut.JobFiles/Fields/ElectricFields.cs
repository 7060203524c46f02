using CanvasCut.Language;
using static CanvasCut.JobFiles.FieldKind;
using static CanvasCut.JobFiles.FieldRange;

namespace CanvasCut.JobFiles;

/// <summary>How the panels are wired. Without the table nothing electric is looked at.</summary>
internal static class ElectricFields
{
    /// <summary>The table.</summary>
    public const string Table = "electric";

    private static readonly string Cloth = Say.Later("under panels on hot cloth: common practice, no source");
    private static readonly string Engine = Say.Later("engine space, 33 CFR 183.425; common practice elsewhere");

    public static Field[] All { get; } =
    [
        new($"{Table}.coldest_air", Temperature, Signed("-40 C", "25 C"), Presence.Optional),
        new Field($"{Table}.connectors", Word, Any, Presence.Optional).Among("one-family", "mixed"),
        new($"{Table}.compass", Length, Reach("0 mm", "10 m"), Presence.Optional),
        new Field($"{Table}.twisted", Flag, Any, Presence.Optional).Or("false", Source.NoneAssumed),
        new Field($"{Table}.fuses", Word, Any, Presence.Optional).Among("nec", "iec", "blade").Or("nec", Say.Later("NEC 240.6, the sizes on sale in North America")),
        .. Bank("electric.bank"),
        .. Wires("electric.wires"),
        .. SunFields.All,
        .. Controller("electric.controller[]"),
        new("electric.string[].controller", Text, Any, Presence.Optional),
        new("electric.string[].panels", NameList, Any, Presence.RequiredInTable),
    ];

    /// <summary>Whether a default belongs to the job: nothing electric does without the table.</summary>
    public static bool Concerns(string field, JobValues values) => KnownFields.TableOf(field) != Table
        || (values.IsWritten(Table) && (!field.StartsWith($"{SunFields.Table}.", StringComparison.Ordinal) || values.IsWritten(SunFields.Table)));

    private static Field[] Bank(string table) =>
    [
        new Field($"{table}.nominal", Word, Any, Presence.RequiredInTable).Among("12 V", "24 V", "48 V"),
        new Field($"{table}.kind", Word, Any, Presence.RequiredInTable).Among("flooded", "agm", "gel", "lithium-iron-phosphate"),
        new($"{table}.absorption", Voltage, Size("13 V", "60 V"), Presence.Optional),
        new($"{table}.float", Voltage, Size("12.8 V", "58 V"), Presence.Optional),
        new($"{table}.lowest", Voltage, Size("9 V", "54 V"), Presence.Optional),
        new($"{table}.capacity", Charge, Size("20 Ah", "2000 Ah"), Presence.Optional),
        new($"{table}.usable", Share, Size("10 %", "100 %"), Presence.Optional),
        new($"{table}.cranking", Current, Size("100 A", "6000 A"), Presence.Optional),
        new($"{table}.short_current", Current, Size("100 A", "50000 A"), Presence.Optional),
        new Field($"{table}.earthed", Word, Any, Presence.Optional).Among("none", "minus", "plus"),
    ];

    private static Field[] Wires(string table) =>
    [
        new Field($"{table}.family", Word, Any, Presence.Optional).Among("awg", "sae", "mm2-tinned", "mm2-plain"),
        new Field($"{table}.insulation", Word, Any, Presence.Optional).Among("60 C", "75 C", "80 C", "90 C", "105 C").Or("105 C", Say.Later("tinned boat cable; common practice, no source")),
        new Field($"{table}.sheathed", Flag, Any, Presence.Optional).Or("false", Source.NoneAssumed),
        new Field($"{table}.together", Count, Size("2", "40"), Presence.Optional).Or("2", Say.Later("the pair alone; count yours")),
        new Field($"{table}.panel_air", Temperature, Signed("30 C", "70 C"), Presence.Optional).Or("60 C", Cloth),
        new Field($"{table}.panel_copper", Temperature, Signed("30 C", "105 C"), Presence.Optional).Or("70 C", Cloth),
        new Field($"{table}.panel_drop", Share, Size("0.5 %", "10 %"), Presence.Optional).Or("3 %", Say.Later("the 3 % class of ABYC E-11, seen second-hand")),
        new Field($"{table}.bank_air", Temperature, Signed("30 C", "60 C"), Presence.Optional).Or("50 C", Engine),
        new Field($"{table}.bank_copper", Temperature, Signed("30 C", "105 C"), Presence.Optional).Or("50 C", Source.Practice),
        new Field($"{table}.bank_drop", Share, Size("0.3 %", "3 %"), Presence.Optional).Or("1 %", Source.Practice),
    ];

    private static Field[] Controller(string table) =>
    [
        new($"{table}.name", Text, Any, Presence.RequiredInTable),
        new Field($"{table}.kind", Word, Any, Presence.RequiredInTable).Among("pulse-width", "step-down", "step-up"),
        new($"{table}.largest_voltage", Voltage, Size("12 V", "600 V"), Presence.Optional),
        new($"{table}.largest_current", Current, Size("2 A", "100 A"), Presence.Optional),
        new($"{table}.rated_output", Current, Size("2 A", "100 A"), Presence.Optional),
        new Field($"{table}.efficiency", Share, Size("80 %", "100 %"), Presence.Optional).Or("95 %", Say.Later("92 to 98 %, seen second-hand; its sheet tells")),
        new Field($"{table}.sense_wires", Flag, Any, Presence.Optional).Or("false", Source.NoneAssumed),
        new Field($"{table}.joins", Word, Any, Presence.Optional).Among("minus", "plus", "none"),
        new($"{table}.panel_run", Length, Reach("0 mm", "30 m"), Presence.Optional),
        new($"{table}.bank_run", Length, Reach("0 mm", "20 m"), Presence.Optional),
        new($"{table}.panel_wire", Text, Any, Presence.Optional),
        new($"{table}.bank_wire", Text, Any, Presence.Optional),
        .. Device($"{table}.breaker"),
        new Field($"{table}.breaker.poles", Word, Any, Presence.Optional).Among("one", "both"),
        new Field($"{table}.breaker.one_way", Flag, Any, Presence.Optional),
        .. Device($"{table}.bank_fuse"),
        new($"{table}.bank_fuse.interrupts", Current, Size("100 A", "50000 A"), Presence.Optional),
        new($"{table}.bank_fuse.from_bank", Length, Reach("0 mm", "5 m"), Presence.Optional),
        .. Device($"{table}.string_fuse"),
    ];

    private static Field[] Device(string table) =>
    [
        new($"{table}.rating", Current, Size("1 A", "300 A"), Presence.RequiredInTable),
        new($"{table}.voltage", Voltage, Size("12 V", "1500 V"), Presence.Optional),
    ];
}
