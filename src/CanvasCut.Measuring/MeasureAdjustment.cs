using System.Collections.Immutable;
using CanvasCut.Design;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;
using UnitsNet;

namespace CanvasCut.Measuring;

/// <summary>A measured top adjusted by least squares: what each reading should be, and which is most likely wrong.</summary>
/// <remarks>
/// Gauss-Markov model, solved by Gauss-Newton steps; global test of the weighted sum of squares against chi-square, and
/// normalised residuals against the normal distribution: W. Baarda, "A testing procedure for use in geodetic networks",
/// Netherlands Geodetic Commission, Publications on Geodesy, new series 2, no. 5, Delft 1968. The limit of the residuals is
/// divided among the readings (Bonferroni), so that one limit holds for the whole sheet.
/// </remarks>
public sealed class MeasureAdjustment
{
    /// <summary>Of sheets without a slip, the part that the global test may still complain of.</summary>
    private const double GlobalRisk = 0.01;

    /// <summary>The same for the largest normalised residual.</summary>
    private const double ResidualRisk = 0.03;

    /// <summary>Slips as large as <see cref="AdjustedReading.Seen"/> are found so often.</summary>
    private const double Power = 0.95;

    private const int MostSteps = 60;
    private const double StillMm = 1e-7;
    private const double NothingChecks = 1e-6;
    private const double AlikePart = 1e-6;

    private MeasureAdjustment(MeasuredTop top, TopModel model, Vector<double> unknowns, bool isSettled)
    {
        (Top, IsSettled) = (top, isSettled);
        ImmutableArray<(TopMeasure Measure, int Row, int Number)> readings =
            [.. top.Measures.SelectMany((measure, row) => measure.Readings.Select((_, i) => (measure, row, i + 1)))];
        Freedom = readings.Length - model.Unknowns;
        ResidualLimit = Normal.InvCDF(0, 1, 1 - (ResidualRisk / 2 / readings.Length));
        var (values, leverage) = (model.Values(unknowns), Leverage(top, model.Slopes(unknowns)));
        Readings = [.. readings.Select(reading => Adjusted(reading.Measure, reading.Number, values[reading.Row], 1 - leverage[reading.Row]))];
        Misfit = Readings.Sum(reading => Math.Pow(reading.Residual / top.Tape, 2));
        MisfitLimit = Freedom > 0 ? ChiSquared.InvCDF(Freedom, 1 - GlobalRisk) : double.PositiveInfinity;
        Ends = [.. top.Bows.Select((_, bow) => EndsOf(model, unknowns, bow))];
        Stations = [.. top.Bows.Select((_, bow) => model.StationMm(unknowns, bow) is { } station ? Length.FromMillimeters(station) : (Length?)null)];
    }

    /// <summary>What was adjusted.</summary>
    public MeasuredTop Top { get; }

    /// <summary>Whether the steps came to rest; else the measures are of no top at all.</summary>
    public bool IsSettled { get; }

    /// <summary>Every reading, in the order of the sheet.</summary>
    public ImmutableArray<AdjustedReading> Readings { get; }

    /// <summary>Where the ends of the bows lie.</summary>
    public ImmutableArray<BowEnds> Ends { get; }

    /// <summary>The bows' stations, along the cloth on the centreline from the top's forward edge; null when none was measured.</summary>
    public ImmutableArray<Length?> Stations { get; }

    /// <summary>How many readings there are beyond those that the shape needs.</summary>
    public int Freedom { get; }

    /// <summary>The sum of squares of residuals over the tape's standard deviation.</summary>
    public double Misfit { get; }

    /// <summary>The misfit that 1 in 100 sheets without a slip exceeds.</summary>
    public double MisfitLimit { get; }

    /// <summary>The normalised residual that at most 3 in 100 sheets without a slip exceed anywhere.</summary>
    public double ResidualLimit { get; }

    /// <summary>The largest normalised residual, without its sign.</summary>
    public double LargestNormalised => Readings.Max(reading => Math.Abs(reading.Normalised));

    /// <summary>Whether the measures agree as well as the tape allows.</summary>
    public bool Agrees => IsSettled && Misfit <= MisfitLimit && LargestNormalised <= ResidualLimit;

    /// <summary>The reading most likely wrong, or those between which nothing decides; empty when all agree.</summary>
    public ImmutableArray<AdjustedReading> Suspects => Agrees
        ? []
        : [.. Readings.Where(reading => Math.Abs(reading.Normalised) >= LargestNormalised * (1 - AlikePart))];

    /// <summary>Adjusts the measures of a top.</summary>
    public static MeasureAdjustment Of(MeasuredTop top)
    {
        var model = new TopModel(top);
        var (unknowns, isSettled) = (model.Start(), false);
        var weights = Weights(top);
        var means = Vector<double>.Build.Dense([.. top.Measures.Select(measure => measure.Mean.Millimeters)]);
        for (var i = 0; i < MostSteps && !isSettled; i++)
        {
            var step = Factors(top, model.Slopes(unknowns)).Solve(weights.PointwiseMultiply(means - model.Values(unknowns)));
            if (!step.ForAll(double.IsFinite))
            {
                break;
            }

            unknowns += step;
            isSettled = step.AbsoluteMaximum() < StillMm;
        }

        return new(top, model, unknowns, isSettled);
    }

    private AdjustedReading Adjusted(TopMeasure measure, int number, double valueMm, double redundancy)
    {
        var (adjusted, read) = (Length.FromMillimeters(valueMm), measure.Readings[number - 1]);
        if (redundancy < NothingChecks)
        {
            return new(measure, number, adjusted, 0, 0, null);
        }

        var root = Math.Sqrt(redundancy);
        var seen = Top.Tape * ((ResidualLimit + Normal.InvCDF(0, 1, Power)) / root);
        return new(measure, number, adjusted, redundancy, (adjusted - read) / Top.Tape / root, seen);
    }

    private static BowEnds EndsOf(TopModel model, Vector<double> unknowns, int bow)
    {
        var (port, starboard, middle) = (model.End(unknowns, bow, isPort: true), model.End(unknowns, bow, isPort: false), unknowns[0] / 2);
        return new(
            Length.FromMillimeters(port[0] - middle),
            Length.FromMillimeters(port[1]),
            Length.FromMillimeters(starboard[0] - middle),
            Length.FromMillimeters(starboard[1]));
    }

    /// <summary>Readings of one measure count as their mean, with the weight of their number: the same solution with fewer rows.</summary>
    private static Vector<double> Weights(MeasuredTop top) => Vector<double>.Build.Dense([.. top.Measures.Select(measure => Math.Sqrt(measure.Readings.Length))]);

    private static QR<double> Factors(MeasuredTop top, Matrix<double> slopes) =>
        Matrix<double>.Build.DenseOfDiagonalVector(Weights(top)).Multiply(slopes).QR(QRMethod.Thin);

    /// <summary>Which part of a slip in one reading its adjusted value follows.</summary>
    private static ImmutableArray<double> Leverage(MeasuredTop top, Matrix<double> slopes)
    {
        var q = Factors(top, slopes).Q;
        return [.. top.Measures.Select((measure, row) => q.Row(row).DotProduct(q.Row(row)) / measure.Readings.Length)];
    }
}
