using CanvasCut.Design;
using CanvasCut.JobFiles;
using UnitsNet;

namespace CanvasCut.Tests.Design;

/// <summary>The table of quantities: every row reads what it prints, and nothing that is read or printed is without a row.</summary>
public sealed class QuantityKindTests
{
    /// <summary>Half of the last digit of each printed unit, in the plain unit of its row, by the definitions: pound force 4.4482216152605 N, inch 25.4 mm, knot 1852/3600 m/s, pound 0.45359237 kg.</summary>
    private static readonly Dictionary<QuantityKind, double[]> HalfDigits = new()
    {
        [QuantityKinds.Length] = [0.05, 25.4 / 32],
        [QuantityKinds.Mass] = [0.005, 0.05 * 0.45359237],
        [QuantityKinds.Speed] = [0.05, 0.05 * 3600 / 1852],
        [QuantityKinds.Force] = [0.05, 0.05 * 4.4482216152605],
        [QuantityKinds.ForcePerLength] = [0.5, 0.005 * 4.4482216152605 / 0.0254],
        [QuantityKinds.Pressure] = [0.5, 0.0005 * 4.4482216152605 / 0.0254 / 0.0254],
        [QuantityKinds.Temperature] = [0.05, 0.5 / 1.8],
        [QuantityKinds.TemperatureStep] = [0.05, 0.05 / 1.8],
        [QuantityKinds.Humidity] = [0.5],
        [QuantityKinds.Angle] = [0.05],
        [QuantityKinds.Duration] = [0.05],
        [QuantityKinds.Share] = [0.05],
        [QuantityKinds.Number] = [0.005],
        [QuantityKinds.Voltage] = [0.005],
        [QuantityKinds.Current] = [0.05],
        [QuantityKinds.Power] = [0.05],
        [QuantityKinds.Charge] = [0.05],
        [QuantityKinds.Resistance] = [0.0005],
        [QuantityKinds.Energy] = [0.5],
        [QuantityKinds.Coefficient] = [0.005],
    };

    public static TheoryData<string> Examples { get; } = [.. QuantityKinds.All.Select(kind => kind.Example)];

    private static readonly Gen<double> AnyNumber = Gen.Double[-2000, 2000];

    [Fact]
    public void Every_row_is_tested_here() => Assert.Equal(QuantityKinds.All.ToHashSet(), HalfDigits.Keys.ToHashSet());

    [Theory]
    [MemberData(nameof(Examples))]
    public void What_is_printed_reads_back_within_its_digits(string example)
    {
        var kind = KindOf(example);
        var (plain, unit) = kind.Plain(kind.Parse(example)!);

        AnyNumber.Sample(
            number =>
            {
                var quantity = kind.Parse(FormattableString.Invariant($"{number:0.######} {unit}"))!;
                var texts = kind.Print(quantity, RoundTo.Nearest).TrimEnd(')').Split(" (");

                Assert.Equal(HalfDigits[kind].Length, texts.Length);
                Assert.All(
                    texts.Zip(HalfDigits[kind]),
                    each => Assert.Equal(kind.Plain(quantity).Number, kind.Plain(kind.Parse(each.First) ?? throw new InvalidOperationException(each.First)).Number, each.Second * (1 + 1e-6)));
            },
            iter: 2000);
        Assert.True(double.IsFinite(plain));
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void An_example_is_of_its_own_kind_and_has_a_name(string example)
    {
        var kind = KindOf(example);

        Assert.Same(kind, QuantityKind.Of(kind.Parse(example)!));
        Assert.NotEmpty(kind.Name);
    }

    /// <summary>Volt, ampere, watt, ampere-hour (3600 C) and ohm, and their usual multiples.</summary>
    [Theory]
    [InlineData("18.9 V", "18.9 V")]
    [InlineData("75 mV", "0.08 V")]
    [InlineData("5600 mA", "5.6 A")]
    [InlineData("0.12 kW", "120 W")]
    [InlineData("200 Ah", "200 Ah")]
    [InlineData("0.05 Ω", "0.05 ohm")]
    [InlineData("1.2 kWh", "1200 Wh")]
    public void Electrical_quantities_are_read_and_printed(string written, string printed)
    {
        var quantity = QuantityKinds.All.Select(kind => kind.Parse(written)).OfType<IQuantity>().Single();

        Assert.Equal(printed, QuantityWords.Of(quantity));
    }

    [Fact]
    public void An_ampere_hour_is_3600_coulombs() => Assert.Equal(3600, QuantityKinds.Charge.Read("1 Ah")!.Value.Coulombs, 1e-6);

    [Fact]
    public void A_quantity_without_a_row_is_refused_rather_than_printed_anyhow() =>
        Assert.Throws<ArgumentException>(() => QuantityWords.Of(Luminosity.FromWatts(1)));

    /// <summary>A kind of field without a row throws when it is asked; a usual range is written in units of its row.</summary>
    [Fact]
    public void Every_field_has_its_row_or_needs_none() => Assert.All(
        JobFields.All.Concat(SupplyFields.All).Where(field => field.Quantity is not null && field.Usual.Length > 0),
        field =>
        {
            double[] ends = [.. field.Usual.Split(" to ").Select(end => field.Quantity!.Plain(field.Quantity.Parse(end) ?? throw new InvalidOperationException($"{field.Name}: {end}")).Number)];

            Assert.Equal(2, ends.Length);
            Assert.True(ends[0] < ends[1], field.Name);
        });

    /// <summary>What is not in a table of quantities is a word, a text, a whole number, a factor, yes or no, a date or a paper: these fields, one of each.</summary>
    [Theory]
    [InlineData("name")]
    [InlineData("format")]
    [InlineData("panel.bends")]
    [InlineData("paper.size")]
    public void A_field_that_holds_no_quantity_has_no_row(string name) => Assert.Null(JobFields.All.Single(field => field.Name == name).Quantity);

    [Theory]
    [InlineData("panel.length")]
    [InlineData("panel.mass")]
    [InlineData("panel.max_wind")]
    [InlineData("panel.max_bend.angle")]
    [InlineData("cloth.shrink.warp")]
    public void A_field_that_holds_a_quantity_says_which(string name) => Assert.NotNull(JobFields.All.Single(field => field.Name == name).Quantity);

    private static QuantityKind KindOf(string example) => QuantityKinds.All.Single(kind => kind.Example == example);
}
