using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>Makes the panel.</summary>
internal static class PanelBuilder
{
    private const string Box = "panel.junction_box";
    private const string Exit = "panel.cable_exit";

    public static SolarPanel Build(GivenValues given) => new(
        Body(given),
        Limits(given),
        given.Values.Text("panel.long_side") is { } word ? GivenValues.WordOf<LongSide>(word) : null,
        new(given.Sides("panel.dead_border"), JunctionBox(given), CableExit(given)))
    {
        Label = LabelBuilder.Build(given),
    };

    private static PanelBody Body(GivenValues given) => new(
        given.Length("panel.length"),
        given.Length("panel.width"),
        given.Length("panel.thickness"),
        given.Length("panel.corner_radius"),
        given.Values.Quantity<Mass>("panel.mass"),
        given.Values.IsWritten("panel.droop") ? new(given.Length("panel.droop.overhang"), given.Length("panel.droop.drop")) : null);

    private static PanelLimits Limits(GivenValues given) => new(
        given.Values.Length("panel.min_bend_radius"),
        given.Word<BendAxis>("panel.bends"),
        given.Text("panel.hard_points") == "allowed",
        given.Values.Quantity<Speed>("panel.max_wind"),
        given.Values.IsWritten("panel.max_bend") ? new(given.Quantity<Angle>("panel.max_bend.angle"), given.Length("panel.max_bend.over")) : null,
        given.Quantity<bool>("panel.adhesive"),
        given.Values.Quantity<Pressure>("panel.adhesive_pull"));

    private static JunctionBox? JunctionBox(GivenValues given) => given.Values.IsWritten(Box)
        ? new(
            given.Length($"{Box}.from_port"),
            given.Length($"{Box}.from_forward"),
            given.Length($"{Box}.athwart"),
            given.Length($"{Box}.fore_aft"),
            given.Length($"{Box}.height"))
        : null;

    private static CableExit? CableExit(GivenValues given) => given.Values.IsWritten(Exit)
        ? new(given.Length($"{Exit}.from_port"), given.Length($"{Exit}.from_forward"), given.Length($"{Exit}.diameter"))
        : null;
}
