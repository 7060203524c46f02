using CanvasCut.Measuring;

namespace CanvasCut.Tests.Measuring;

/// <summary>Thousands of sheets with known errors, the same in every run: how many slips are found, and how many named right.</summary>
public sealed class SlipSimulationTests
{
    private const int Sheets = 800;

    public static TheoryData<int> BowCounts { get; } = [2, 3, 4];

    [Theory]
    [MemberData(nameof(BowCounts))]
    public void Of_sheets_with_tape_noise_alone_at_most_5_in_100_are_complained_of(int bows)
    {
        var (found, _) = Simulate(bows, 1.5, _ => 0);

        Assert.InRange(found, 0.0001, 0.05);
    }

    /// <summary>Slips of all sizes from 6 mm to 50 mm, a misread inch or centimetre or a tape hooked on the wrong mark, are alike likely.</summary>
    [Theory]
    [MemberData(nameof(BowCounts))]
    public void Of_single_slips_of_6_mm_and_more_95_in_100_are_found_and_90_named(int bows)
    {
        var (found, named) = Simulate(bows, 1.5, dice => 6 + (44 * dice.Part()));

        Assert.InRange(found, 0.95, 1);
        Assert.InRange(named, 0.90, 1);
    }

    /// <summary>A tape good to 1.5 mm 19 times in 20, hence with half of that as its standard deviation, finds even the smallest slip.</summary>
    [Theory]
    [MemberData(nameof(BowCounts))]
    public void With_1_5_mm_as_the_tapes_limit_slips_of_just_6_mm_are_found_and_named(int bows)
    {
        var (found, named) = Simulate(bows, 0.75, _ => 6);

        Assert.InRange(found, 0.95, 1);
        Assert.InRange(named, 0.90, 1);
    }

    private static (double Found, double Named) Simulate(int bows, double tapeMm, Func<SimulationDice, double> slipMm)
    {
        var shape = bows switch { 2 => SampleTops.TwoBows, 3 => SampleTops.ThreeBows, _ => SampleTops.FourBows };
        var readings = SampleTops.Of(shape, tapeMm, (_, mm) => mm).Measures.Sum(measure => measure.Readings.Length);
        var dice = new SimulationDice(20_261_125);
        var (found, named) = (0, 0);
        for (var sheet = 0; sheet < Sheets; sheet++)
        {
            var (wrong, slip) = (dice.Below(readings), slipMm(dice) * (dice.Below(2) == 0 ? 1 : -1));
            var adjustment = MeasureAdjustment.Of(SampleTops.Of(shape, tapeMm, (i, mm) => Math.Max(0, mm + (tapeMm * dice.Normal()) + (i == wrong ? slip : 0))));
            found += adjustment.Agrees ? 0 : 1;
            named += adjustment.Suspects is [var suspect] && adjustment.Readings.IndexOf(suspect) == wrong ? 1 : 0;
        }

        return ((double)found / Sheets, (double)named / Sheets);
    }
}
