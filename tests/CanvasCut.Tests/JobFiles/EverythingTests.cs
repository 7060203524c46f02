using CanvasCut.Design;
using CanvasCut.JobFiles;
using UnitsNet;

namespace CanvasCut.Tests.JobFiles;

/// <summary>Each field of everything.toml arrives where the model wants it.</summary>
public sealed class EverythingTests
{
    private static readonly CarrierJob Job = Sample.Job(Sample.Everything);

    [Fact]
    public void A_file_with_every_field_takes_no_default() => Assert.Empty(Job.Defaults);

    [Fact]
    public void The_head_is_read() => Assert.Equal(("Everything given", PrintUnits.Imperial), (Job.Name, Job.Units));

    [Fact]
    public void The_top_is_read()
    {
        Assert.Equal((2184.4, 1993.9), (Job.Top.Length.Millimeters, Job.Top.Width.Millimeters));
        Assert.Equal(new TopEdges(Mm(30), Mm(100)), Job.Top.Edges);
        var keepOut = Assert.Single(Job.Top.KeepOuts);
        Assert.Equal(
            ("backstay", (Mm(1900), Mm(2300)), (Mm(-50), Mm(50)), Mm(76.2)),
            (keepOut.Name, keepOut.Station, keepOut.Offset, keepOut.Clearance));
    }

    [Fact]
    public void The_bows_are_read()
    {
        Assert.Equal([50.8, 1100, 2150, 2180], Job.Top.Bows.Select(bow => bow.Station.Millimeters));
        Assert.Equal([22.225, 100, 25, 25], Job.Top.Bows.Select(bow => bow.Diameter.Millimeters));
        Assert.Equal([-20, 40, 0, 1], Job.Top.Bows.Select(bow => bow.Height!.Value.Millimeters));
        Assert.Equal([1900, 1970, 1900], Job.Top.Bows.Take(3).Select(bow => bow.Across!.ChordMm));
        Assert.Equal(1993, Job.Top.Bows[1].Across!.GirthMm, tolerance: 1e-6);
        Assert.Equal(135, Job.Top.Bows[2].Across!.RiseMm);
        Assert.Equal([12, 0, 0, 0], Job.Top.Bows.Select(bow => bow.SagAft.Millimeters));
    }

    [Fact]
    public void The_halves_of_a_bow_are_read()
    {
        var halves = Job.Top.Bows[3].Halves!;

        Assert.Equal((130, 140), (halves.Port.RiseMm, halves.Starboard.RiseMm));
        Assert.Equal(1920, halves.Port.GirthMm, tolerance: 1e-6);
        Assert.Equal(1940, halves.Starboard.GirthMm, tolerance: 1e-6);
    }

    [Fact]
    public void The_panel_is_read()
    {
        var fittings = new PanelFittings(
            new(Mm(20), Mm(21), Mm(22), Mm(23)),
            new(Mm(200), Mm(30), Mm(140), Mm(90), Mm(16)),
            new(Mm(-5), Mm(60), Mm(14)));

        Assert.Equal(
            new SolarPanel(
                new(Mm(1110), Mm(540), Mm(3), Mm(8), Mass.FromPounds(5), new(Mm(400), Mm(30))),
                new(Mm(500), BendAxis.Length, true, Speed.FromMetersPerSecond(20), new(Angle.FromDegrees(30), Mm(1050)), HasAdhesive: true, AdhesivePull: Pressure.FromKilopascals(1.5)),
                LongSide.ForeAft,
                fittings),
            Job.Panel with { Label = null });
    }

    [Fact]
    public void The_label_is_read()
    {
        var label = Job.Panel.Label!;
        Assert.Equal(
            [100, 22.6, 18.9, 5.6, 5.3],
            new[] { (double)label.Power.Watts, label.OpenVoltage.Volts, label.PeakVoltage.Volts, label.ShortCurrent.Amperes, label.PeakCurrent.Amperes }.Select(number => Math.Round(number, 9)));
        Assert.Equal(
            [-0.30, -0.38, 0.05, -0.38, 3],
            new[] { label.OpenVoltagePerKelvin, label.PeakVoltagePerKelvin, label.ShortCurrentPerKelvin, label.PowerPerKelvin, label.Tolerance }.Select(part => Math.Round(part!.Value.Percent, 9)));
        Assert.Equal((36, 2, 15.0, 600.0), (label.CellsInSeries, label.ShadeGroups, label.LargestSeriesFuse!.Value.Amperes, label.LargestSystemVoltage!.Value.Volts));
    }

    [Fact]
    public void The_wiring_is_read()
    {
        var electric = JobFile.Read(Sample.Everything, "job.toml").Value!.Electric!;
        Assert.Equal((Celsius(-12), RatingSeries.Iec), (electric.ColdestAir!.Value, electric.Around.Fuses));
        Assert.Equal(new WiringAround(RatingSeries.Iec, ConnectorState.OneFamily, Mm(900), IsTwisted: true), electric.Around);
        Assert.Equal(
            new BankSpec(
                ElectricPotential.FromVolts(24),
                BankKind.LithiumIronPhosphate,
                new(ElectricPotential.FromVolts(28.4), ElectricPotential.FromVolts(27), ElectricPotential.FromVolts(24)),
                new(ElectricCharge.FromAmpereHours(200), Times(0.8)),
                new(ElectricCurrent.FromAmperes(700), ElectricCurrent.FromAmperes(4000)),
                Pole.Minus),
            electric.Bank);
        Assert.Equal(new WireSpec(WireFamily.MetricPlain, Insulation.C90, true, 4, new(Celsius(55), Celsius(65), Times(0.02)), new(Celsius(45), Celsius(48), Times(0.008))), electric.Wires);
        var one = Assert.Single(electric.Strings);
        Assert.Equal(("tracker", MountingName.Only), (one.Controller, Assert.Single(one.Panels)));
    }

    /// <summary>10 Ah at 24 x 12.8 / 12 = 25.6 V are 256 Wh.</summary>
    [Fact]
    public void The_sun_and_the_loads_are_read()
    {
        var electric = JobFile.Read(Sample.Everything, "job.toml").Value!.Electric!;
        var sun = electric.Sun!;
        Assert.Equal((-18, SunHoursKind.Bright, 90), (sun.Latitude.Degrees, sun.HoursAre!.Value, sun.Heading!.Value.Degrees));
        Assert.Equal(new SunMonth(2, Duration.FromHours(7), Celsius(28)), Assert.Single(sun.Months));
        Assert.Equal(
            [8, 4, 3, 1, 2, 5, 20],
            new[] { sun.Albedo, sun.Losses.Soiling, sun.Losses.Mismatch, sun.Losses.Connections, sun.Losses.LightInduced, sun.Losses.Nameplate, sun.Losses.Shade }.Select(part => Math.Round(part.Percent, 9)));
        Assert.Equal([("fridge", 430.0), ("lights", 256.0)], electric.Loads.Select(load => (load.Name, Math.Round(load.Energy.WattHours, 6))));
    }

    [Fact]
    public void The_controller_is_read()
    {
        var controller = Assert.Single(JobFile.Read(Sample.Everything, "job.toml").Value!.Electric!.Controllers);
        static ElectricCurrent Amperes(double number) => ElectricCurrent.FromAmperes(number);
        Assert.Equal(
            new ControllerSpec(
                "tracker",
                ControllerKind.StepUp,
                new(ElectricPotential.FromVolts(50), Amperes(15)),
                new(Amperes(10), Times(0.96), HasSense: true),
                Pole.Minus,
                new(Mm(4000), Mm(1500), "4", "6"),
                new(
                    new(Amperes(16), ElectricPotential.FromVolts(80)) { BreaksBoth = true, IsPolarised = false },
                    new(Amperes(20), ElectricPotential.FromVolts(58)) { Interrupts = Amperes(5000), FromBank = Mm(120) },
                    new(Amperes(10), ElectricPotential.FromVolts(80)))),
            controller);
    }

    [Fact]
    public void The_carrier_is_read() =>
        Assert.Equal(
            new CarrierSpec(
                new(Mm(40 + 5), Mm(41 + 6), Mm(10 + 7), Mm(11 + 8)),
                new(Mm(10), Mm(20)),
                CornerKind.Square,
                new(EdgeFinish.Hem, EdgeFinish.Hem, EdgeFinish.Binding, EdgeFinish.Binding),
                new(Mm(1100), Mm(-35)),
                new(new(Mm(5), Mm(6), Mm(7), Mm(8)), Mm(90))),
            Job.Carrier);

    [Fact]
    public void The_fastenings_are_read()
    {
        var (zipper, strip) = (Job.Fastenings.Zipper, Job.Fastenings.WeatherStrip);
        Assert.Equal(
            (new ZipperGauge(Mm(8), Mm(40)), ZipperKind.Continuous, Mm(30), Mm(11), Mm(9)),
            (zipper.Gauge, zipper.Kind, zipper.Setback, zipper.Reveal, zipper.CapTurn));
        Assert.Equal([Mm(1000), Mm(2000)], zipper.Stock);
        Assert.Equal(new PocketSpec(Mm(500), Mm(12), new(Mm(9), Mm(15)), Mm(14), false), Job.Fastenings.Pocket);
        Assert.Equal([Side.Aft, Side.Forward], strip.Edges);
        Assert.Equal(new(StripGround.Top, StripGround.Carrier, StripGround.Top, StripGround.Carrier), strip.SewnTo);
        Assert.Equal((StripHold.Snaps, Mm(160), Mm(21), Mm(5)), (strip.Held, strip.Pitch, strip.Square, strip.Rod));
        Assert.Equal((Mm(14), Mm(15), new Hem(Mm(8), Mm(13)), Mm(20)), (strip.Overlap, strip.SeamAllowance, strip.Hem, strip.Overhang));
        Assert.Equal(new ChafeSpec(Mm(30), Mm(11)), Job.Fastenings.Chafe);
    }

    [Fact]
    public void What_holds_the_edges_is_read() =>
        Assert.Equal(
            new MountSpec(
                MountKind.Snaps,
                MountKind.Lacing,
                Mm(31),
                new(
                    new(Mm(32), new(Mm(90), Mm(33)), Mm(14), Force.FromNewtons(60)),
                    new(Mm(42), new(Mm(210), Mm(43)), Mm(21), Force.FromPoundsForce(20)),
                    new(Mm(28), new(Mm(110), Mm(44)), Mm(17), Force.FromNewtons(90)),
                    Mm(29),
                    new(Mm(45), Force.FromNewtons(5)),
                    new(Mm(8), Mm(13), Mm(95), Mm(7), Mm(900))),
                null,
                MountKind.Sleeve),
            Job.Fastenings.Mount);

    [Fact]
    public void The_workshop_and_the_limits_are_read()
    {
        Assert.Equal(
            new ClothSpec("canvas", new(Mm(1370), Mm(12), Mm(457.2)), new(WarpDirection.Athwart, RollTurns.Quarter, Mm(6), true), new(0.01, 0.005), FelledSeam.Semi),
            Job.Workshop.Cloth);
        Assert.Equal(new SewingSpec(Mm(5), "V138", 3), Job.Workshop.Sewing);
        Assert.Equal(new PaperSpec("roll 914 mm", Mm(914), Mm(5000), Mm(5), Mm(15), new(Mm(99.2), Mm(100.0125))), Job.Workshop.Paper);
        Assert.Equal(new DxfSpec(DxfUnit.Inch, HasArcs: true, IsOneFilePerPiece: true), Job.Workshop.Dxf);
        Assert.Equal(new PlotSpec(Mm(914), SingleStroke: true), Job.Workshop.Plot);
        Assert.Equal(new LimitSpec(2, Mm(11), Mm(12), Mm(4), new(0.03, Mm(7), Mm(8), 0.02, 0.01), Mm(3)) { BetweenCarriers = Mm(60), Between = new(Mm(16), Mm(51), Mm(61), Mm(41)) }, Job.Limits);
    }

    [Fact]
    public void The_grades_are_read()
    {
        var supplies = Job.Workshop.Supplies;
        Assert.Equal(
            ("light-polyester", "coil-10", "v138", "nm140"),
            (supplies.Cloth.Grade.Id, supplies.Zipper.Grade.Id, supplies.Sewing.Thread.Grade.Id, supplies.Sewing.Needle.Grade.Id));
        Assert.Equal(
            ("basting-6", "binding-25", "foam-25", "webbing-25"),
            (supplies.Tapes.Basting.Grade.Id, supplies.Tapes.Binding.Grade.Id, supplies.Tapes.Foam.Grade.Id, supplies.Tapes.Webbing.Grade.Id));
        Assert.Equal((0.1m, null), (Job.Workshop.Buying.Spare, Job.Workshop.Buying.Prices));
        Assert.Equal([1200, 1370, 1524], Job.Workshop.Buying.RollWidths.Select(width => width.Millimeters));
    }

    [Fact]
    public void The_plan_of_the_work_and_its_care_are_read()
    {
        Assert.Equal(new WorkSpec(Duration.FromMinutes(150), Duration.FromDays(4), BondOrder.SewFirst), Job.Work);
        Assert.Equal(new CareSpec(new DateOnly(2027, 4, 1), 30, HasHookAndLoop: true), Job.Care);
    }

    [Fact]
    public void The_conditions_are_read()
    {
        var (wind, strength) = (Job.Conditions.Wind, Job.Conditions.Strength);
        Assert.Equal(
            new WindSpec(Speed.FromKnots(30), new(Times(1.5), Times(2.5), Times(1.5), Times(4))),
            wind);
        Assert.Equal(
            new StrengthSpec(Force.FromPoundsForce(14), Force.FromNewtons(900), new(ZipperClass.E, Force.FromNewtons(400), Force.FromKilogramsForce(12))),
            strength);
        Assert.Equal(new HeatSpec(Celsius(35), Speed.FromKnots(5), Celsius(80)), Job.Conditions.Heat);
        Assert.Equal(Angle.FromDegrees(4), Job.Conditions.LeastSlope);
        Assert.Equal([false, false, true, false, true, false, false, false], Job.Conditions.TopState.Answers.Select(answer => answer!.Value));
    }

    [Fact]
    public void The_bonding_is_read()
    {
        var bonding = Job.Conditions.Bonding;
        Assert.Equal((BondSurface.RawCloth, Mm(19), Mm(7000)), (bonding.Onto, bonding.TapeWidth, bonding.TapeLength));
        Assert.Equal(new(Temperature.FromDegreesFahrenheit(70), RelativeHumidity.FromPercent(65), Celsius(20), Duration.FromHours(80)), bonding.Day);
        Assert.Equal(
            new BondingLimits(Celsius(12), Temperature.FromDegreesFahrenheit(100), Celsius(8), TemperatureDelta.FromDegreesFahrenheit(5), Duration.FromDays(4)),
            bonding.Limits);
    }

    private static Ratio Times(double number) => Ratio.FromDecimalFractions(number);

    private static Temperature Celsius(double number) => Temperature.FromDegreesCelsius(number);

    private static Length Mm(double mm) => Length.FromMillimeters(mm);
}
