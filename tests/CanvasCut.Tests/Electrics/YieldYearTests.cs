using CanvasCut.Design;
using CanvasCut.Electrics;
using UnitsNet;
using static CanvasCut.Tests.Electrics.Labels;

namespace CanvasCut.Tests.Electrics;

/// <summary>A year of the sample wiring.</summary>
public sealed class YieldYearTests
{
    private static readonly ElectricSpec Sunny = SampleWiring.Spec with
    {
        Sun = YieldTests.SunOf(18) with { Months = [new(1, Duration.FromHours(5), Celsius(26)), new(7, Duration.FromHours(6), null)] },
        Loads = [new("fridge", Energy.FromWattHours(430)), new("lights", Energy.FromWattHours(270))],
    };

    [Fact]
    public void Low_is_half_of_likely_and_no_day_is_above_the_clear_one()
    {
        var year = Of(Sunny);
        var (january, july) = (year.Months[0], year.Months[6]);

        Assert.Equal((5000.0, 6000.0), (january.Sun!.Value.WattHoursPerSquareMeter, july.Sun!.Value.WattHoursPerSquareMeter));
        Assert.Equal(january.Likely!.Value.WattHours / 2, january.Low!.Value.WattHours, 1e-9);
        Assert.All(year.Months, month => Assert.True(month.Likely is null || month.Likely < month.High));
        Assert.Null(year.Months[3].Likely);
        Assert.Equal(1, year.Weakest!.Month);
        Assert.True(year.Taken.Level);
    }

    /// <summary>
    /// January worked forward for panels that lie level: 200 W x 5 h x f x 0.9245 x 0.9476 x 0.95 with f what a level panel gets of level ground (0.95 to 1, the flat rays
    /// thrown back), 1 - 0.0038 (Tc - 25) at the cells of the usual light, losses 3, 2, 0.5, 1.5, 1 % and the wires' 0.7819/28.8186 and 0.1308/14.4.
    /// </summary>
    [Fact]
    public void A_month_is_label_times_hours_times_what_is_left()
    {
        var day = ClearDay.Of(Angle.FromDegrees(18), 15, PanelLie.Level, (null, Ratio.FromPercent(6)));
        Assert.InRange(day.OfLevel.DecimalFractions, 0.95, 1);

        // The usual light of a day of 5.0 kWh/m2 where a clear one has day.Level: in proportion.
        var usual = day.Usual.WattsPerSquareMeter * 5000 / day.Level.WattHoursPerSquareMeter;
        var free = (usual * Math.Exp(-3.56 - 0.0750)) + 26 + (usual / 1000 * 3);
        var blocked = (usual * Math.Exp(-2.81 - 0.0455)) + 26;
        var warm = 1 - (0.0038 * (((free + blocked) / 2) - 25));
        var wires = (1 - (0.7819 / 28.8186)) * (1 - (0.1308 / 14.4));
        var expected = 200 * 5 * day.OfLevel.DecimalFractions * warm * 0.97 * 0.98 * 0.995 * 0.985 * 0.99 * wires * 0.95;

        Assert.Equal(expected, Of(Sunny).Months[0].Likely!.Value.WattHours, 0.1);
    }

    /// <summary>A controller of 1 A on a 12 V bank gives at most 1 x 12.8 V x the day's length; at the equator 12 h: 153.6 Wh.</summary>
    [Fact]
    public void A_small_controller_clips()
    {
        var small = Sunny.With(each => each with { Output = each.Output with { Rated = Amperes(1) } }) with { Sun = Sunny.Sun! with { Latitude = Angle.Zero } };

        Assert.Equal(153.6, Of(small).Months[0].High.WattHours, 0.1);
    }

    /// <summary>A switch holds the panel at 12.8 V: 12.8 x 5.3 A of 100 W a panel, and heat costs nothing.</summary>
    [Fact]
    public void A_switch_gives_the_banks_voltage_times_the_current()
    {
        var spec = Sunny.With(each => each with { Kind = ControllerKind.PulseWidth }) with { Strings = [SampleWiring.StringOf("tracker", "port"), SampleWiring.StringOf("tracker", "starboard")] };
        var plan = SampleWiring.Plan(spec, Hundred);
        var day = ClearDay.Of(Angle.FromDegrees(18), 15, PanelLie.Level, (null, Ratio.FromPercent(6)));
        var lost = YieldYear.LostOf(plan.Controllers[0], spec.Sun!.Losses).DecimalFractions;

        Assert.Equal(2 * 12.8 * 5.3 * 5 * day.OfLevel.DecimalFractions * (1 - lost), YieldYear.Of(plan, SampleWiring.Heat).Year!.Months[0].Likely!.Value.WattHours, 0.1);
    }

    /// <summary>200 Ah x 12.8 V x 50 % = 1280 Wh, of 700 Wh a day 1.83 days.</summary>
    [Fact]
    public void The_bank_bridges_so_many_days() => Assert.Equal(1280.0 / 700, Of(Sunny).Autonomy!.Value.Days, 1e-6);

    /// <summary>Facing the equator in winter a panel tilted by 10 degrees gains, facing away it loses: 1.13 and 0.85 for 18 N in December; swinging 0.987 of the beam (derived in the specification; the sky's share softens all of it).</summary>
    [Fact]
    public void A_boat_that_lies_to_a_wind_gains_or_loses_what_one_that_swings_does_not()
    {
        PanelLie tilted = new(Angle.FromDegrees(10), Angle.Zero);
        double At(double? heading) => ClearDay.Of(Angle.FromDegrees(18), 355, tilted, (heading is { } known ? Angle.FromDegrees(known) : null, Ratio.FromPercent(6))).OfLevel
            / ClearDay.Of(Angle.FromDegrees(18), 355, PanelLie.Level, (null, Ratio.FromPercent(6))).OfLevel;

        Assert.Equal(1.13, At(180), 0.03);
        Assert.Equal(0.85, At(0), 0.03);
        Assert.Equal(0.987, At(null), 0.01);
    }

    [Fact]
    public void What_is_missing_is_told()
    {
        Assert.Equal(Missing.Sun, YieldYear.Of(SampleWiring.Plan(SampleWiring.Spec, Hundred), SampleWiring.Heat).Because);
        Assert.Equal(Missing.Bank, YieldYear.Of(SampleWiring.Plan(Sunny with { Bank = null }, Hundred), SampleWiring.Heat).Because);
        Assert.Equal(Missing.Label, YieldYear.Of(SampleWiring.Plan(Sunny, null), SampleWiring.Heat).Because);
    }

    private static YieldYear Of(ElectricSpec spec) => YieldYear.Of(SampleWiring.Plan(spec, Hundred), SampleWiring.Heat).Year!;
}
