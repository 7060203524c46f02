using CanvasCut.Language;
using static CanvasCut.JobFiles.FieldKind;
using static CanvasCut.JobFiles.FieldRange;

namespace CanvasCut.JobFiles;

/// <summary>The panel.</summary>
internal static class PanelFields
{
    private static readonly string Measure = Say.Later("from memory, 10 to 25 mm; measure yours");

    public static Field[] All { get; } =
    [
        new("panel.name", Text, Any, Presence.Optional),
        new("panel.mirrors", Text, Any, Presence.Optional),
        new("panel.on", Text, Any, Presence.Optional),
        new Field("panel.beside", Word, Any, Presence.Optional).Among("starboard", "aft"),
        new Field("panel.gap", Length, Reach("5 mm", "300 mm"), Presence.Optional)
            .Or("20 mm", Say.Later("chosen for this program, so that the cloth between two panels can bend")),
        new("panel.length", Length, Size("0.2 m", "3 m"), Presence.Required),
        new("panel.width", Length, Size("0.15 m", "2 m"), Presence.Required),
        new Field("panel.long_side", Word, Any, Presence.Optional).Among("athwart", "fore-aft"),
        new Field("panel.thickness", Length, Size("0.5 mm", "30 mm"), Presence.Optional)
            .Or("2.5 mm", Say.Later("typical laminate 2 to 3 mm: from memory, measure yours")),
        new("panel.mass", Mass, Size("0.2 kg", "25 kg"), Presence.Optional),
        new Field("panel.corner_radius", Length, Reach("0 mm", "150 mm"), Presence.Optional).Or("0 mm", Source.NoneAssumed),
        .. SideNames.All.Select(side => new Field($"panel.dead_border.{side}", Length, Reach("0 mm", "100 mm"), Presence.Optional).Or("10 mm", Measure)),
        new("panel.min_bend_radius", Length, Size("50 mm", "20 m"), Presence.Optional),
        new("panel.max_bend.angle", Angle, Size("5 deg", "180 deg"), Presence.RequiredInTable),
        new("panel.max_bend.over", Length, Size("0.2 m", "3 m"), Presence.RequiredInTable),
        new("panel.droop.overhang", Length, Size("100 mm", "1.5 m"), Presence.RequiredInTable),
        new("panel.droop.drop", Length, Size("1 mm", "400 mm"), Presence.RequiredInTable),
        new Field("panel.bends", Word, Any, Presence.Optional).Among("either", "length", "width").Or("either", Source.NoneAssumed),
        new Field("panel.hard_points", Word, Any, Presence.Optional).Among("allowed", "not-allowed").Or("not-allowed", Say.Later("the careful choice")),
        new Field("panel.adhesive", Flag, Any, Presence.Optional).Or("false", Source.NoneAssumed),
        new("panel.adhesive_pull", Pressure, Size("0.1 kPa", "100 kPa"), Presence.Optional),
        new("panel.max_wind", Speed, Size("5 kn", "120 kn"), Presence.Optional),
        new("panel.junction_box.from_port", Length, Reach("0 mm", "3 m"), Presence.RequiredInTable),
        new("panel.junction_box.from_forward", Length, Reach("0 mm", "3 m"), Presence.RequiredInTable),
        new("panel.junction_box.athwart", Length, Size("10 mm", "400 mm"), Presence.RequiredInTable),
        new("panel.junction_box.fore_aft", Length, Size("10 mm", "400 mm"), Presence.RequiredInTable),
        new("panel.junction_box.height", Length, Signed("-60 mm", "60 mm"), Presence.RequiredInTable),
        new("panel.cable_exit.from_port", Length, Signed("-0.3 m", "3 m"), Presence.RequiredInTable),
        new("panel.cable_exit.from_forward", Length, Signed("-0.3 m", "3 m"), Presence.RequiredInTable),
        new("panel.cable_exit.diameter", Length, Size("4 mm", "80 mm"), Presence.RequiredInTable),
    ];
}
