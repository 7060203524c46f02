namespace CanvasCut.Nesting;

/// <summary>A function that keeps what adds up to at most 1 at no more than 1.</summary>
/// <remarks>
/// Every one grows with its argument and runs straight between its <see cref="Breaks"/>. The three families are those of
/// S. Fekete and J. Schepers, "New classes of fast lower bounds for bin packing problems", Mathematical Programming 91
/// (2001), and "A general framework for bounds for higher-dimensional orthogonal packing problems", arXiv cs/0402044.
/// </remarks>
public abstract record DualFeasible
{
    /// <summary>Arguments are lowered by this part, so that round-off never lifts one over a break. It costs as much of the bound.</summary>
    private const double Lowered = 1e-12;

    private protected DualFeasible()
    {
    }

    /// <summary>The value, 0 to 1.</summary>
    /// <param name="part">A length over the width it must fit in; 0 to 1, more counts as 1.</param>
    public abstract double At(double part);

    /// <summary>Where, in rising order, the function jumps or bends.</summary>
    private protected abstract IEnumerable<double> Breaks { get; }

    /// <summary>The mean while the argument changes evenly.</summary>
    public double Mean(double from, double to)
    {
        var (low, high) = (Math.Min(from, to) * (1 - Lowered), Math.Min(Math.Max(from, to) * (1 - Lowered), 1));
        if (high - low < Lowered)
        {
            return At(Math.Min(low, 1));
        }

        var (sum, reached) = (0.0, low);
        foreach (var cut in Breaks.Where(cut => cut > low && cut < high).Append(high))
        {
            sum += (cut - reached) * At((reached + cut) / 2);
            reached = cut;
        }

        return sum / (high - low);
    }
}

/// <summary>What is too tall to lie beside <paramref name="Threshold"/> counts whole, what is smaller than that not at all.</summary>
/// <param name="Threshold">0 to 1/2; with 0 the function changes nothing.</param>
public sealed record TallCountsWhole(double Threshold) : DualFeasible
{
    private protected override IEnumerable<double> Breaks => [Threshold, 1 - Threshold];

    /// <inheritdoc/>
    public override double At(double part) => part > 1 - Threshold ? 1 : part < Threshold ? 0 : part;
}

/// <summary>Rounds down to parts of <paramref name="Most"/>, of which at most so many lie side by side.</summary>
/// <param name="Most">One or more.</param>
public sealed record RoundedShares(int Most) : DualFeasible
{
    private protected override IEnumerable<double> Breaks => Enumerable.Range(1, Most).Select(i => i / (Most + 1.0));

    /// <inheritdoc/>
    public override double At(double part)
    {
        var shares = Math.Min(part, 1) * (Most + 1);
        return shares == Math.Floor(shares) ? Math.Min(part, 1) : Math.Floor(shares) / Most;
    }
}

/// <summary>Counts how many pieces of at least <paramref name="Threshold"/> still find room beside a tall one.</summary>
/// <param name="Threshold">Above 0, at most 1/2.</param>
public sealed record RoomBeside(double Threshold) : DualFeasible
{
    private double Most => Math.Floor(1 / Threshold);

    private protected override IEnumerable<double> Breaks =>
        [Threshold, .. Enumerable.Range(0, (int)Most + 1).Select(i => 1 - (i * Threshold)).Where(cut => cut > 0.5).Append(0.5).Order()];

    /// <inheritdoc/>
    public override double At(double part) =>
        part > 0.5 ? 1 - (Math.Floor((1 - Math.Min(part, 1)) / Threshold) / Most)
        : part >= Threshold ? 1 / Most
        : 0;
}
