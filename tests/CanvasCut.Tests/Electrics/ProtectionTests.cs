using CanvasCut.Design;
using CanvasCut.Electrics;
using UnitsNet;
using static CanvasCut.Tests.Electrics.Labels;

namespace CanvasCut.Tests.Electrics;

public sealed class ProtectionTests
{
    /// <summary>NEC 240.6.</summary>
    [Theory]
    [InlineData(8.75, 10)]
    [InlineData(17.19, 20)]
    [InlineData(25, 25)]
    [InlineData(26.25, 30)]
    [InlineData(200, 200)]
    public void The_next_size_on_sale_is_that_of_the_code(double least, double size) => Assert.Equal(size, Protection.Next(Amperes(least), RatingSeries.Nec)!.Value.Amperes);

    [Fact]
    public void Above_the_largest_there_is_none() => Assert.Null(Protection.Next(Amperes(201), RatingSeries.Nec));

    /// <summary>ABYC E-11 table V.A, as reprinted by the trade.</summary>
    [Theory]
    [InlineData(600, 1500)]
    [InlineData(650, 1500)]
    [InlineData(651, 3000)]
    [InlineData(1100, 3000)]
    [InlineData(1101, 5000)]
    public void The_interrupt_rating_goes_by_the_bank(double coldCranking, double amperes) => Assert.Equal(amperes, Protection.Interrupts(Amperes(coldCranking)).Main.Amperes);

    /// <summary>1.5625 x 5.6 = 8.75 A: a 10 A fuse, within the label's 15 A and not within 9 A.</summary>
    [Fact]
    public void A_string_fuse_lies_between_the_current_and_the_label()
    {
        var judged = Protection.Rating(ProtectedPlace.OfString(Hundred), RatingSeries.Nec);

        Assert.Equal((Finding.Holds, Amperes(10)), (judged.Finding, judged.Value));
        Assert.Equal(Finding.Fails, Protection.Rating(ProtectedPlace.OfString(Hundred with { LargestSeriesFuse = Amperes(9) }), RatingSeries.Nec).Finding);
        Assert.Equal(Missing.SeriesFuse, Protection.Rating(ProtectedPlace.OfString(Hundred with { LargestSeriesFuse = null }), RatingSeries.Nec).Because);
    }

    /// <summary>Two strings: 17.5 A, hence 20 A; a wire of 19 A would need to be thicker. A controller of 20 A: 25 A at the bank.</summary>
    [Fact]
    public void A_device_guards_its_wire_or_the_wire_is_too_thin()
    {
        Assert.Equal(Finding.Holds, Protection.Rating(ProtectedPlace.OfPanels(Amperes(11.2), Carries(45)), RatingSeries.Nec).Finding);
        Assert.Equal(Finding.Fails, Protection.Rating(ProtectedPlace.OfPanels(Amperes(11.2), Carries(19)), RatingSeries.Nec).Finding);
        Assert.Equal(Amperes(25), Protection.Rating(ProtectedPlace.OfBank(Amperes(20), Carries(45)), RatingSeries.Nec).Value);
        Assert.Equal(
            Missing.WireInTable,
            Protection.Rating(ProtectedPlace.OfBank(Amperes(20), new(null, Missing.WireInTable)), RatingSeries.Nec).Because);
    }

    /// <summary>Two panels in series are 49.946 V at -10 C: too much for a device of 32 V (ISO 8820-3), not for one of 58 V.</summary>
    [Fact]
    public void A_device_must_break_the_cold_voltage()
    {
        var cold = StringVoltage.Cold(Hundred, 2, Celsius(-10));

        Assert.Equal(Finding.Fails, Protection.Voltage(cold, Volts(32)).Finding);
        Assert.Equal(Finding.Holds, Protection.Voltage(cold, Volts(58)).Finding);
        Assert.Equal(Missing.DeviceVoltage, Protection.Voltage(cold, breaks: null).Because);
    }

    private static Known<ElectricCurrent> Carries(double amperes) => new(Amperes(amperes), Missing.Nothing);
}
