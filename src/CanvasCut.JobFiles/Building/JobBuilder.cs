using System.Collections.Immutable;
using CanvasCut.Design;

namespace CanvasCut.JobFiles;

/// <summary>Makes the job of values that have all been found right.</summary>
internal static class JobBuilder
{
    public static CarrierJob Build(JobValues values, SupplyChoice supplies, ImmutableArray<DefaultUsed> defaults)
    {
        var given = new GivenValues(values);
        return new(
            given.Text("name"),
            given.Word<PrintUnits>("prints"),
            TopBuilder.Build(given),
            PanelBuilder.Build(given),
            Carrier(given),
            FasteningsBuilder.Build(given),
            WorkshopBuilder.Build(given, supplies),
            Limits(given),
            defaults);
    }

    private static CarrierSpec Carrier(GivenValues given) => new(
        given.Sides("carrier.border"),
        given.Hem("carrier.hem"),
        given.Word<CornerKind>("carrier.corner"),
        given.SideWords<EdgeFinish>("carrier.edges"),
        given.Values.Length("carrier.position.station") is { } station ? new(station, given.Length("carrier.position.offset")) : null);

    private static LimitSpec Limits(GivenValues given) => new(
        given.Quantity<double>("limits.bend_factor"),
        given.Length("limits.tube_clearance"),
        given.Length("limits.cell_margin"),
        given.Length("limits.shade_gap"),
        given.Length("limits.sewn_thickness"));
}
