using CanvasCut.Language;
using static CanvasCut.JobFiles.FieldKind;
using static CanvasCut.JobFiles.FieldRange;

namespace CanvasCut.JobFiles;

/// <summary>The sun where the boat lies, what is lost of it, and what is used every day.</summary>
internal static class SunFields
{
    /// <summary>The table.</summary>
    public const string Table = "electric.sun";

    public static Field[] All { get; } =
    [
        new($"{Table}.latitude", Angle, Signed("-66 deg", "66 deg"), Presence.RequiredInTable),
        new Field($"{Table}.hours_are", Word, Any, Presence.Optional).Among("peak", "bright"),
        new($"{Table}.heading", Angle, Reach("0 deg", "360 deg"), Presence.Optional),
        new Field($"{Table}.albedo", Share, Reach("0 %", "30 %"), Presence.Optional).Or("6 %", Say.Later("open water; common practice, no source")),
        Loss("soiling", "3 %", Say.Later("salt and dust, 0.05 to 0.3 % a day without rain (Mejia and Kleissl 2013); common practice for the sum")),
        Loss("mismatch", "2 %", Say.Later("NREL/TP-6A20-62641")),
        Loss("connections", "0.5 %", Say.Later("NREL/TP-6A20-62641")),
        Loss("light_induced", "1.5 %", Say.Later("NREL/TP-6A20-62641")),
        Loss("nameplate", "1 %", Say.Later("NREL/TP-6A20-62641; 5 % for a panel without a test report: common practice, no source")),
        new Field($"{Table}.shade", Share, Reach("0 %", "90 %"), Presence.Optional).Or("0 %", Source.NoneAssumed),
        new($"{Table}.month[].number", Count, Size("1", "12"), Presence.RequiredInTable),
        new($"{Table}.month[].hours", Duration, Reach("0 h", "16 h"), Presence.RequiredInTable),
        new($"{Table}.month[].air", Temperature, Signed("-10 C", "45 C"), Presence.Optional),
        new("electric.load[].name", Text, Any, Presence.RequiredInTable),
        new("electric.load[].energy", Energy, Size("1 Wh", "10 kWh"), Presence.Optional),
        new("electric.load[].charge", Charge, Size("0.1 Ah", "800 Ah"), Presence.Optional),
    ];

    private static Field Loss(string name, string text, string source) => new Field($"{Table}.{name}", Share, Reach("0 %", "30 %"), Presence.Optional).Or(text, source);
}
