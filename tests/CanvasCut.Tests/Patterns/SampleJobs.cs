using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Tests.Patterns;

/// <summary>Jobs made in code, all measures in millimetres; invented, for tests alone.</summary>
internal static class SampleJobs
{
    public static Length Mm(double value) => Length.FromMillimeters(value);

    public static Ratio Times(double number) => Ratio.FromDecimalFractions(number);

    public static Temperature Celsius(double number) => Temperature.FromDegreesCelsius(number);

    public static CarrierSpec Carrier { get; } = new(
        new(Mm(12.7), Mm(12.7), Mm(0), Mm(0)), new(Mm(12.7), Mm(25.4)), CornerKind.Mitred, Sides.All(EdgeFinish.Hem), null, new(Sides.All(Mm(0)), Mm(100)));

    public static ZipperSpec Zipper { get; } = new(
        new(Mm(10), Mm(38.1)), ZipperKind.Separating, Mm(25.4), Mm(9.5), [Mm(609.6), Mm(914.4), Mm(1219.2), Mm(1524)])
    {
        StartSetback = Mm(25.4),
    };

    public static PocketSpec Pocket { get; } = new(null, Mm(12.35), new(Mm(12.7), Mm(12.7)), Mm(12.7), OverZipper: true);

    public static WeatherStripSpec Strip { get; } = new([Side.Forward], Mm(15.9), Mm(12.7), new(Mm(12.7), Mm(12.7)), Mm(25.4));

    public static MountSpec Mount { get; } = new(
        MountKind.Zipper,
        MountKind.Zipper,
        Mm(25.4),
        new(
            new(Mm(25.4), new(Mm(101.6), Mm(63.5)), Mm(15), null),
            new(Mm(38.1), new(Mm(203.2), Mm(76.2)), Mm(20), null),
            new(Mm(25.4), new(Mm(101.6), Mm(114.3)), Mm(16), null),
            Mm(25.4),
            new(Mm(38.1), Force.FromPoundsForce(1)),
            new(Mm(9.525), Mm(12.7), Mm(101.6), Mm(6.35), null)));

    public static ClothSpec Cloth { get; } = new(
        "test cloth",
        new(Mm(1524), Mm(12.7), Mm(100)),
        new(WarpDirection.ForeAft, RollTurns.Half, Mm(5), OneWay: false),
        new(0, 0),
        FelledSeam.Full);

    public static Conditions Conditions { get; } = new(
        new(Speed.FromKnots(35), new(Times(1.4), Times(2), Times(1.4), Times(3))),
        new(Force.FromPoundsForce(5.8), Force.FromPoundsForce(100), new(ZipperClass.C, null, null)),
        new(
            BondSurface.SewnTape,
            Mm(25.4),
            null,
            new(null, null, null, null),
            new(Celsius(15), Celsius(38), Celsius(10), TemperatureDelta.FromDegreesCelsius(3), Duration.FromHours(72))),
        new(Celsius(30), Speed.FromMetersPerSecond(1), Celsius(85)),
        Angle.FromDegrees(5),
        TopState.Unknown);
    /// <summary>The program's own grades.</summary>
    public static JobSupplies Supplies { get; } = JobFiles.Sample.Job(JobFiles.Sample.Least).Workshop.Supplies;

    /// <summary>A 1100 by 550 panel on a 1600 by 1800 top with two bows.</summary>
    public static CarrierJob Plain { get; } = new(
        "Plain",
        PrintUnits.Both,
        Top(1600, 1800, [BowAt(60), BowAt(1540)]),
        Panel(1100, 550),
        Carrier,
        new(Zipper, Pocket, Strip, new(Mm(38.1), Mm(12.7)), Mount),
        new(Cloth, new(Mm(4.5), "thread", 2), new("A4", Mm(210), Mm(297), Mm(10), Mm(10)), new(DxfUnit.Millimetre, HasArcs: false, IsOneFilePerPiece: false), new(null, SingleStroke: false), Supplies, new(0, null, [Mm(1168.4), Mm(1524)])),
        new(1.5, Mm(10), Mm(10), Mm(3), new(0.025, Mm(5), Mm(6), 0.01, 0.005), Mm(4)),
        Conditions,
        new(Duration.FromHours(4), Duration.FromHours(72), BondOrder.BondFirst),
        new(null, null, HasHookAndLoop: false),
        []);

    public static TopCloth Top(double length, double width, ImmutableArray<Bow> bows, params ImmutableArray<KeepOut> keepOuts) =>
        new(Mm(length), Mm(width), new(Mm(25), Mm(0)), bows, keepOuts);

    public static Bow BowAt(double station, double chord = 1750, double crown = 90) =>
        new(Mm(station), Mm(25.4), BowHalves.Even(CircularArc.FromChordAndRise(chord, crown)), null, Mm(0));

    public static SolarPanel Panel(double length, double width, double dead = 15, LongSide? longSide = LongSide.Athwart) => new(
        new(Mm(length), Mm(width), Mm(2.5), Mm(10), null),
        new(Mm(600), BendAxis.Either, AllowsHardPoints: false, null),
        longSide,
        new(Sides.All(Mm(dead)), null, null));

    public static CarrierJob With(this CarrierJob job, PocketSpec? pocket = null, ZipperSpec? zipper = null, WeatherStripSpec? strip = null) => job with
    {
        Fastenings = job.Fastenings with
        {
            Pocket = pocket ?? job.Fastenings.Pocket,
            Zipper = zipper ?? job.Fastenings.Zipper,
            WeatherStrip = strip ?? job.Fastenings.WeatherStrip,
        },
    };

    public static CarrierJob Held(this CarrierJob job, MountKind forward, MountKind aft) => job with
    {
        Fastenings = job.Fastenings with { Mount = job.Fastenings.Mount with { Forward = forward, Aft = aft } },
    };

    public static CarrierJob HeldAtSides(this CarrierJob job, MountKind? port, MountKind? starboard) => job with
    {
        Fastenings = job.Fastenings with { Mount = job.Fastenings.Mount with { Port = port, Starboard = starboard } },
    };

    public static CarrierJob On(this CarrierJob job, ClothSpec cloth) => job with { Workshop = job.Workshop with { Cloth = cloth } };
}
