using static CanvasCut.JobFiles.FieldKind;
using static CanvasCut.JobFiles.FieldRange;

namespace CanvasCut.JobFiles;

/// <summary>What the panel's label says.</summary>
internal static class LabelFields
{
    /// <summary>The table.</summary>
    public const string Table = "panel.label";

    public static Field[] All { get; } =
    [
        new($"{Table}.power", Power, Size("5 W", "700 W"), Presence.RequiredInTable),
        new($"{Table}.open_voltage", Voltage, Size("5 V", "100 V"), Presence.RequiredInTable),
        new($"{Table}.peak_voltage", Voltage, Size("4 V", "90 V"), Presence.RequiredInTable),
        new($"{Table}.short_current", Current, Size("0.3 A", "25 A"), Presence.RequiredInTable),
        new($"{Table}.peak_current", Current, Size("0.3 A", "25 A"), Presence.RequiredInTable),
        new($"{Table}.open_voltage_per_kelvin", Coefficient, Any, Presence.Optional),
        new($"{Table}.peak_voltage_per_kelvin", Coefficient, Any, Presence.Optional),
        new($"{Table}.short_current_per_kelvin", Coefficient, Any, Presence.Optional),
        new($"{Table}.power_per_kelvin", Coefficient, Any, Presence.Optional),
        new($"{Table}.cells", Count, Size("8", "200"), Presence.Optional),
        new($"{Table}.shade_groups", Count, Reach("0", "40"), Presence.Optional),
        new($"{Table}.series_fuse", Current, Size("1 A", "40 A"), Presence.Optional),
        new($"{Table}.system_voltage", Voltage, Size("12 V", "1500 V"), Presence.Optional),
        new($"{Table}.tolerance", Share, Reach("0 %", "10 %"), Presence.Optional),
    ];
}
