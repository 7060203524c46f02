using CanvasCut.Design;
using CanvasCut.Electrics;
using UnitsNet;
using static CanvasCut.Tests.Electrics.Labels;

namespace CanvasCut.Tests.Electrics;

public sealed class WireTests
{
    private static readonly Temperature Room = Celsius(20);

    /// <summary>11 A, 6 m, 4 mm² tinned: 2 x 0.006 km x 11 A x 5.09 ohm = 0.67188 V, 1.1179 and 1.1965 times that warm (IEC 60228, IEC 60028).</summary>
    [Theory]
    [InlineData(20, 0.67188)]
    [InlineData(50, 0.75109)]
    [InlineData(70, 0.80390)]
    public void A_drop_is_as_worked_by_hand(double celsius, double volts) =>
        Assert.Equal(volts, VoltageDrop.Of(WireSize.Of(WireFamily.MetricTinned, "4"), Amperes(11), Length.FromMeters(6), Celsius(celsius)).Volts, 1e-5);

    /// <summary>The trade's reprint of ABYC E-11: 10.75 x 10 A x 21 ft / 0.36 V = 6270.83 circular mils, AWG 12 or SAE 10; and a published 12 V 3 % chart. Feet out and back.</summary>
    [Theory]
    [InlineData(WireFamily.Awg, 21, 10, "12")]
    [InlineData(WireFamily.Sae, 21, 10, "10")]
    [InlineData(WireFamily.Awg, 20, 25, "8")]
    [InlineData(WireFamily.Awg, 30, 10, "10")]
    [InlineData(WireFamily.Awg, 60, 50, "1/0")]
    [InlineData(WireFamily.Awg, 10, 5, "18")]
    public void The_size_by_drop_is_that_of_the_published_chart(WireFamily family, double feetOutAndBack, double amperes, string name) =>
        Assert.Equal(name, VoltageDrop.Thinnest(family, Amperes(amperes), Length.FromFeet(feetOutAndBack / 2), (Volts(0.36), Room))!.Name);

    /// <summary>A wire of just 6270.83 circular mils would lose 0.36 V over 21 ft at 10 A; AWG 12 has 6530.</summary>
    [Fact]
    public void A_drop_in_gauges_is_by_the_formula_of_the_trade() => Assert.Equal(
        0.36 * 6270.83 / 6529.9,
        VoltageDrop.Of(WireSize.Of(WireFamily.Awg, "12"), Amperes(10), Length.FromFeet(10.5), Room).Volts,
        1e-5);

    /// <summary>ASTM B258: AWG 12 is 6530 circular mils or 3.309 mm², AWG 10 10383 or 5.261; 4/0 is 107.22 mm².</summary>
    [Theory]
    [InlineData("12", 3.309)]
    [InlineData("10", 5.261)]
    [InlineData("1/0", 53.48)]
    [InlineData("4/0", 107.22)]
    public void Gauges_are_as_thick_as_published(string name, double area)
    {
        var found = WireSize.Of(WireFamily.Awg, name).Area.SquareMillimeters;

        Assert.InRange(found, area * 0.9995, area * 1.0005);
    }

    /// <summary>IEC 60228 class 5, ohm a kilometre at 20 C.</summary>
    [Theory]
    [InlineData(WireFamily.MetricTinned, "2.5", 8.21)]
    [InlineData(WireFamily.MetricTinned, "6", 3.39)]
    [InlineData(WireFamily.MetricTinned, "16", 1.24)]
    [InlineData(WireFamily.MetricPlain, "2.5", 7.98)]
    [InlineData(WireFamily.MetricPlain, "6", 3.30)]
    [InlineData(WireFamily.MetricPlain, "16", 1.21)]
    public void Metric_sizes_resist_as_published(WireFamily family, string name, double ohms) => Assert.Equal(ohms, WireSize.Of(family, name).ResistancePerKilometre.Ohms, 1e-12);

    /// <summary>What is left of the table's amperes in air of 50 and 60 C: NEC has 0.58, 0.75, 0.82 and 0.58, 0.71; 33 CFR 0.85 for 105 C wire in an engine space.</summary>
    [Theory]
    [InlineData(Insulation.C60, 50, 0.58)]
    [InlineData(Insulation.C75, 50, 0.75)]
    [InlineData(Insulation.C90, 50, 0.82)]
    [InlineData(Insulation.C105, 50, 0.85)]
    [InlineData(Insulation.C75, 60, 0.58)]
    [InlineData(Insulation.C90, 60, 0.71)]
    public void Hot_air_takes_as_much_as_published(Insulation insulation, double celsius, double factor)
    {
        var wire = WireSize.Of(WireFamily.Awg, "10");

        Assert.Equal(factor, CurrentOf(wire, new(insulation, Celsius(celsius), 1)) / CurrentOf(wire, new(insulation, Celsius(30), 1)), 0.01);
    }

    /// <summary>UL 1426 for AWG 12 at 105 C: 45 A alone, 31.5 A of three; 26.8 A of three in an engine space, where the law takes 0.85 and heat flow gives 0.856.</summary>
    [Fact]
    public void A_bundle_carries_as_much_as_published()
    {
        var wire = WireSize.Of(WireFamily.Awg, "12");

        Assert.Equal(45, CurrentOf(wire, new(Insulation.C105, Celsius(30), 1)), 0.05);
        Assert.Equal(31.5, CurrentOf(wire, new(Insulation.C105, Celsius(30), 3)), 0.05);
        Assert.InRange(CurrentOf(wire, new(Insulation.C105, Celsius(50), 3)), 26.8, 26.8 * 1.01);
        Assert.Equal(0, CurrentOf(wire, new(Insulation.C60, Celsius(60), 1)));
    }

    /// <summary>4 mm² lies between AWG 12 (3.309) and 10, and carries what 12 does; SAE 12 (2.956 mm²) what 14 does; 0.75 mm² is thinner than the table.</summary>
    [Fact]
    public void A_size_between_two_gauges_carries_what_the_thinner_does()
    {
        WirePlace place = new(Insulation.C105, Celsius(30), 1);

        Assert.Equal(45, CurrentOf(WireSize.Of(WireFamily.MetricTinned, "4"), place));
        Assert.Equal(35, CurrentOf(WireSize.Of(WireFamily.Sae, "12"), place));
        Assert.Equal(Missing.WireInTable, Ampacity.Of(WireSize.Of(WireFamily.MetricTinned, "0.75"), place).Because);
    }

    /// <summary>
    /// 17.5 A all day through two wires of 105 C at 60 C: 1.5 mm² carries as AWG 16 25 x 0.775 = 19.4 A. At most 0.5 V at 10.6 A over
    /// 6 m at 70 C: 2 x 0.006 x 10.6 x 1.1965 x R is 0.516 V for 6 mm² (3.39) and 0.297 V for 10 mm² (1.95). Hence 10, next 16 mm².
    /// </summary>
    [Fact]
    public void A_run_takes_the_thicker_of_heat_and_drop_and_names_the_next()
    {
        WireRun run = new(Length.FromMeters(6), Amperes(17.5), Amperes(10.6), Volts(0.5), Celsius(70));

        var choice = WireChoice.Of(run, WireFamily.MetricTinned, new(Insulation.C105, Celsius(60), 2), isSheathed: false);

        Assert.Equal(("1.5", "10", "10", "16"), (choice.ByAmpacity!.Name, choice.ByDrop!.Name, choice.Chosen!.Name, choice.NextThicker!.Name));
    }

    /// <summary>ISO 10133 and 33 CFR 183.425: half an ampere over half a metre would do with less.</summary>
    [Theory]
    [InlineData(WireFamily.MetricTinned, false, "1")]
    [InlineData(WireFamily.Awg, false, "16")]
    [InlineData(WireFamily.Awg, true, "18")]
    public void No_wire_is_thinner_than_allowed(WireFamily family, bool isSheathed, string name)
    {
        WireRun run = new(Length.FromMeters(0.5), Amperes(0.5), Amperes(0.5), Volts(0.5), Room);

        Assert.Equal(name, WireChoice.Of(run, family, new(Insulation.C105, Celsius(30), 2), isSheathed).Chosen!.Name);
    }

    [Fact]
    public void Where_no_size_does_none_is_chosen()
    {
        WireRun run = new(Length.FromMeters(50), Amperes(60), Amperes(60), Volts(0.1), Room);

        Assert.Null(WireChoice.Of(run, WireFamily.Awg, new(Insulation.C105, Celsius(30), 2), isSheathed: false).Chosen);
    }

    private static double CurrentOf(WireSize wire, WirePlace place) => Ampacity.Of(wire, place).Value!.Value.Amperes;
}
