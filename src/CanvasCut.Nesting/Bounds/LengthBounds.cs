namespace CanvasCut.Nesting;

/// <summary>Every bound of a task; the best of them tells how short a layout can be at most.</summary>
public sealed class LengthBounds
{
    /// <summary>Lengths are told apart to this; what cannot be undercut by more is the shortest.</summary>
    public const double SameMm = 1e-3;

    private const int Halvings = 24;

    /// <summary>Sums of two chords looked at beside the halving, for the bound jumps there.</summary>
    private const int MostSums = 60;

    private readonly NestingTask _task;
    private readonly ILengthProof _proof;
    private readonly ChordBound _chords;
    private readonly double _rowMm;

    /// <summary>Prepares the bounds of a task.</summary>
    /// <param name="task">The task.</param>
    /// <param name="proof">What is asked where the bounds leave room; null for rectangles tried out.</param>
    /// <exception cref="ArgumentException">An item fits across the strip in none of its turns.</exception>
    public LengthBounds(NestingTask task, ILengthProof? proof = null)
    {
        if (!NestingFit.ItemsTooWide(task).IsEmpty)
        {
            throw new ArgumentException("An item is too wide for the strip.", nameof(task));
        }

        (_task, _proof) = (task, proof ?? new RectangleProof());
        _chords = new(task);
        _rowMm = RowBound.LengthMm(task);
        Simple = new[] { Area(), new(LongestMm(), BoundKind.LongestPiece), new(_rowMm, BoundKind.Row) }.MaxBy(bound => bound.LengthMm)!;
    }

    /// <summary>The best of the bounds that need no trial length: area, longest piece, row.</summary>
    public LengthBound Simple { get; }

    /// <summary>What shows that no layout is as short as this, or shorter; null when nothing does.</summary>
    public BoundKind? RulesOut(double lengthMm) =>
        Shown(lengthMm) ?? (_proof.Try(_task, lengthMm) == LengthAnswer.Impossible ? BoundKind.Tried : null);

    /// <summary>The best bound up to a length.</summary>
    /// <param name="foundMm">A layout is so long; no bound beyond it is looked for.</param>
    /// <returns>The bound; its length is at most the one found.</returns>
    public LengthBound Best(double foundMm)
    {
        var along = Math.Min(_chords.AlongMm(foundMm), foundMm);
        var best = along > Simple.LengthMm ? new LengthBound(along, BoundKind.ChordsAlong) : Simple;
        best = best with { LengthMm = Math.Min(best.LengthMm, foundMm) };
        foreach (var trialMm in Trials(foundMm))
        {
            best = Raised(best, trialMm);
        }

        var highMm = foundMm;
        for (var i = 0; i < Halvings && highMm - best.LengthMm > SameMm; i++)
        {
            var middleMm = (best.LengthMm + highMm) / 2;
            var raised = Raised(best, middleMm);
            highMm = ReferenceEquals(raised, best) ? middleMm : highMm;
            best = raised;
        }

        return foundMm - best.LengthMm > SameMm && RulesOut(foundMm - SameMm) is { } kind ? new(foundMm - SameMm, kind) : best;
    }

    private BoundKind? Shown(double lengthMm) =>
        Simple.LengthMm > lengthMm ? Simple.Kind
        : _chords.AlongMm(lengthMm) > lengthMm ? BoundKind.ChordsAlong
        : _chords.RulesOutAcross(lengthMm) ? BoundKind.ChordsAcross
        : null;

    private LengthBound Raised(LengthBound best, double trialMm) =>
        trialMm > best.LengthMm && Shown(trialMm) is { } kind ? new(trialMm, kind) : best;

    private IEnumerable<double> Trials(double foundMm)
    {
        var sums = _chords.ChordsMm.SelectMany(one => _chords.ChordsMm.Select(other => one + other - _task.GapMm - SameMm))
            .Concat(_task.Items.SelectMany(item => new[] { item.Shape.Bounds.WidthMm - SameMm, item.Shape.Bounds.HeightMm - SameMm }))
            .Where(sum => sum > Simple.LengthMm && sum < foundMm - SameMm)
            .Select(sum => Math.Round(sum, 6))
            .Distinct()
            .OrderDescending();
        return sums.Take(MostSums).Prepend(foundMm - SameMm);
    }

    private LengthBound Area()
    {
        var withGapMm = (_chords.AreaMm2 / (_task.StripWidthMm + _task.GapMm)) - _task.GapMm;
        return new(Math.Max(withGapMm, _task.AreaMm2 / _task.StripWidthMm), BoundKind.Area);
    }

    private double LongestMm() => _task.Items.Max(item =>
        BoundTurns.Of(item, _task.StripWidthMm).Min(pose => BoundTurns.AlongMm(item, pose)));
}
