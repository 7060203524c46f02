using System.Collections.Immutable;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>Makes the job of values that have all been found right.</summary>
internal static class JobBuilder
{
    public static CarrierJob Build(JobValues values, SupplyChoice supplies, ImmutableArray<DefaultUsed> defaults, PanelRow? row)
    {
        var given = new GivenValues(values);
        return Eased(given, new(
            given.Text("name"),
            given.Word<PrintUnits>("prints"),
            TopBuilder.Build(given),
            PanelBuilder.Build(given),
            Carrier(given),
            FasteningsBuilder.Build(given),
            WorkshopBuilder.Build(given, supplies),
            Limits(given),
            ConditionsBuilder.Build(given),
            Work(given),
            Care(given),
            defaults)
        {
            Row = row,
        });
    }

    /// <summary>The ease that was given; left out, it depends on rows, cloth and carrier.</summary>
    private static CarrierJob Eased(GivenValues given, CarrierJob job) => given.Values.Length("pocket.ease") is not null
        ? job
        : job with { Fastenings = job.Fastenings with { Pocket = job.Fastenings.Pocket with { Ease = PocketRoom.EaseFor(job) } } };

    private static CarrierSpec Carrier(GivenValues given)
    {
        var (border, kept) = (given.Sides("carrier.border"), given.Sides("carrier.keep_room"));
        return new(
            Sides.Of(side => border[side] + kept[side]),
            given.Hem("carrier.hem"),
            given.Word<CornerKind>("carrier.corner"),
            given.SideWords<EdgeFinish>("carrier.edges"),
            given.Values.Length("carrier.position.station") is { } station ? new(station, given.Length("carrier.position.offset")) : null,
            new(kept, given.Length("carrier.widest_border")));
    }

    private static LimitSpec Limits(GivenValues given) => new(
        given.Quantity<double>("limits.bend_factor"),
        given.Length("limits.tube_clearance"),
        given.Length("limits.cell_margin"),
        given.Length("limits.shade_gap"),
        new(
            given.Quantity<double>("limits.cloth_sag"),
            given.Length("limits.edge_gap"),
            given.Length("limits.zipper_pull"),
            given.Quantity<double>("limits.shrink"),
            given.Quantity<double>("limits.creep")),
        given.Length("limits.sewn_thickness"))
    {
        BetweenCarriers = given.Length("limits.between_carriers"),
        Between = new(given.Length("limits.between_pockets"), given.Length("limits.between_pulls"), given.Length("limits.between_hands"), given.Length("limits.between_cables")),
    };

    private static WorkSpec Work(GivenValues given) => new(
        given.Quantity<Duration>("work.hours_per_day"),
        given.Quantity<Duration>("work.cure"),
        given.Word<BondOrder>("work.order"));

    private static CareSpec Care(GivenValues given) => new(
        given.Values.Quantity<DateOnly>("care.fitted"),
        given.Values.Quantity<int>("care.thread_life_months"),
        given.Quantity<bool>("care.hook_and_loop"));
}
