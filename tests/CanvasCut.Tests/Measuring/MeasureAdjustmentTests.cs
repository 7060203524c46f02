using CanvasCut.Design;
using CanvasCut.Measuring;
using UnitsNet;

namespace CanvasCut.Tests.Measuring;

public sealed class MeasureAdjustmentTests
{
    /// <summary>
    /// A braced square has one length too many. The forces with which such a square can be braced against itself are known
    /// from statics: 1 in every side and -√2 in both diagonals. So the misclosure of a diagonal 8 mm long is -8√2 mm, its
    /// weight 1/(4·1 + 2·2) = 1/8, and the corrections are -8·2/8 = -2 mm in the diagonals and 8√2/8 = √2 mm in the sides;
    /// by the hand's straight-line reckoning, which 8 mm in a metre leave by some thousandths.
    /// </summary>
    [Fact]
    public void A_braced_square_is_adjusted_as_worked_by_hand()
    {
        var diagonal = 1000 * Math.Sqrt(2);
        var adjustment = MeasureAdjustment.Of(Quad(1000, (1000, 1000, 1000), (diagonal + 8, diagonal)));

        Assert.Equal(1, adjustment.Freedom);
        Assert.All(adjustment.Readings, reading =>
        {
            var isDiagonal = reading.Measure.Kind is MeasureKind.DiagonalFromPort or MeasureKind.DiagonalFromStarboard;
            Assert.Equal(isDiagonal ? -2 : Math.Sqrt(2), reading.Residual.Millimeters, 0.02);
            Assert.Equal(isDiagonal ? 0.25 : 0.125, reading.Redundancy, 0.002);
        });
        Assert.Equal(6, adjustment.Suspects.Length);
        Assert.Contains("cannot tell which is wrong", MeasureVerdict.Of(adjustment)[0], StringComparison.Ordinal);
    }

    /// <summary>The quantiles of NIST/SEMATECH, e-Handbook of Statistical Methods, 1.3.6.7.4: chi-square, 0.99, of 1 and of 29.</summary>
    [Fact]
    public void The_limit_of_the_misfit_is_the_tables()
    {
        var quad = MeasureAdjustment.Of(Quad(1000, (1000, 1000, 1000), (1414, 1414)));
        var top = MeasureAdjustment.Of(SampleTops.Of(SampleTops.ThreeBows, 1.5, (_, mm) => mm));

        Assert.Equal((1, 29), (quad.Freedom, top.Freedom));
        Assert.Equal(6.635, quad.MisfitLimit, 0.0005);
        Assert.Equal(49.588, top.MisfitLimit, 0.0005);
    }

    /// <summary>The mean of three: each reading shows 2/3 of a slip of its own.</summary>
    [Fact]
    public void Three_readings_of_a_crown_check_each_other_and_one_alone_is_checked_by_nothing()
    {
        var three = MeasureAdjustment.Of(Quad(1000, (1000, 1000, 1000), (1414, 1414), 80, 81, 91));
        var one = MeasureAdjustment.Of(Quad(1000, (1000, 1000, 1000), (1414, 1414), 80));

        Assert.All(three.Readings.Where(IsCrown), reading => Assert.Equal(2.0 / 3, reading.Redundancy, 1e-6));
        Assert.Equal(84, three.Readings.First(IsCrown).Adjusted.Millimeters, 1e-6);
        Assert.Equal("bow 2, crown, reading 3", MeasureWords.Of(three.Top, Assert.Single(three.Suspects)));
        Assert.Equal(80.5, three.Suspects[0].ByOthers.Millimeters, 1e-6);
        Assert.Null(Assert.Single(one.Readings, IsCrown).Seen);
        Assert.Contains(MeasureVerdict.Of(one), line => line.Contains("bow 2, crown", StringComparison.Ordinal));

        static bool IsCrown(AdjustedReading reading) => reading.Measure.Kind == MeasureKind.Crown;
    }

    [Fact]
    public void True_measures_leave_no_residual_and_give_the_shape_back()
    {
        var adjustment = MeasureAdjustment.Of(SampleTops.Of(SampleTops.FourBows, 1.5, (_, mm) => mm));

        Assert.True(adjustment.Agrees);
        Assert.Empty(adjustment.Suspects);
        Assert.All(adjustment.Readings, reading => Assert.Equal(0, reading.Residual.Millimeters, 1e-6));
        Assert.All(adjustment.Ends.Zip(SampleTops.FourBows), pair =>
        {
            Assert.Equal(pair.Second.AskewMm - (pair.Second.ChordMm / 2), pair.First.PortOffset.Millimeters, 1e-5);
            Assert.Equal(pair.Second.StationMm + pair.Second.AskewMm, pair.First.StarboardStation.Millimeters, 1e-5);
        });
    }

    /// <summary>2·L·x/D by plane geometry: 1100 x 550 mm, 3 mm askew, has diagonals that differ by 5.4 mm.</summary>
    [Fact]
    public void A_top_out_of_square_is_told_of_by_its_diagonals()
    {
        var adjustment = MeasureAdjustment.Of(Quad(1100, (1100, 550, 550), (Math.Sqrt((1103 * 1103) + (550 * 550)), Math.Sqrt((1097 * 1097) + (550 * 550)))));

        Assert.True(adjustment.Agrees);
        Assert.Contains(MeasureVerdict.Of(adjustment), line => line.Contains("differ by 5.4 mm", StringComparison.Ordinal));
    }

    [Fact]
    public void Measures_of_no_top_do_not_agree() =>
        Assert.False(MeasureAdjustment.Of(Quad(1800, (1800, 900, 900), (400, 5000))).Agrees);

    private static MeasuredTop Quad(double chordMm, (double Chord, double Port, double Starboard) aft, (double Port, double Starboard) diagonals, params double[] crowns)
    {
        List<TopMeasure> measures =
        [
            Measure(MeasureKind.Chord, 0, chordMm),
            Measure(MeasureKind.Chord, 1, aft.Chord),
            Measure(MeasureKind.Port, 1, aft.Port),
            Measure(MeasureKind.Starboard, 1, aft.Starboard),
            Measure(MeasureKind.DiagonalFromPort, 1, diagonals.Port),
            Measure(MeasureKind.DiagonalFromStarboard, 1, diagonals.Starboard),
        ];
        if (crowns.Length > 0)
        {
            measures.Add(Measure(MeasureKind.Crown, 1, crowns));
        }

        return new("quad", Length.FromMillimeters(1.5), [new("bow 1", Length.Zero), new("bow 2", Length.Zero)], [.. measures]);
    }

    private static TopMeasure Measure(MeasureKind kind, int bow, params double[] readingsMm) => new(kind, bow, [.. readingsMm.Select(mm => Length.FromMillimeters(mm))]);
}
