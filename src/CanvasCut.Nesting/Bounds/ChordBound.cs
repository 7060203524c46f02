using System.Collections.Immutable;

namespace CanvasCut.Nesting;

/// <summary>Adds up what the pieces take of every line across the strip, and of every line along it.</summary>
/// <remarks>
/// At any place the chords of the pieces there add up to no more than the strip's width. So for a dual feasible function
/// f the integrals of f(chord / width) over all pieces add up to no more than the length. For rectangles these are the
/// bounds of S. Fekete and J. Schepers, arXiv cs/0402044; a slanted piece counts as tall only where it is.
/// </remarks>
internal sealed class ChordBound
{
    /// <summary>A break is set so much to the side of a chord on which the chord counts.</summary>
    private const double Nudge = 1e-9;

    /// <summary>Below this threshold there are too many small pieces for the function to tell anything.</summary>
    private const double LeastThreshold = 0.04;

    /// <summary>About how many stretches of chords are looked at in one trial.</summary>
    private const int Work = 40_000;

    private const int MostRounded = 4;

    private readonly NestingTask _task;
    private readonly ImmutableArray<PieceChords> _pieces;
    private readonly double[] _chordsMm;

    public ChordBound(NestingTask task)
    {
        (_task, _pieces) = (task, PieceChords.Of(task));
        var choices = _pieces.SelectMany(piece => piece.Choices).ToList();
        var runs = choices.Sum(choice => choice.Upright.Runs.Length + choice.Level.Runs.Length);
        _chordsMm = Spread(choices.SelectMany(choice => choice.Upright.Runs.Concat(choice.Level.Runs)), Math.Max(Work / runs, 4));
    }

    /// <summary>The chords at which something changes, rising; some left out when there are many.</summary>
    public IReadOnlyList<double> ChordsMm => _chordsMm;

    /// <summary>The area of all pieces with half the gap round each.</summary>
    public double AreaMm2 => _pieces.Sum(piece => piece.Demand * piece.Choices[0].Upright.AreaMm2);

    /// <summary>No layout up to a length is shorter than this.</summary>
    public double AlongMm(double upToMm)
    {
        var widthMm = _task.StripWidthMm + _task.GapMm + BoundTurns.SlackMm;
        return Functions(widthMm).Max(function =>
            _pieces.Sum(piece => piece.Least(upToMm, choice => choice.Upright.Integral(function, widthMm)))) - _task.GapMm;
    }

    /// <summary>Whether the chords along the strip take more than its width when nothing may reach beyond a length.</summary>
    public bool RulesOutAcross(double lengthMm)
    {
        var lengthWithGapMm = lengthMm + _task.GapMm + BoundTurns.SlackMm;
        var roomMm = _task.StripWidthMm + _task.GapMm + BoundTurns.SlackMm;
        return Functions(lengthWithGapMm).Any(function =>
            _pieces.Sum(piece => piece.Least(lengthMm, choice => choice.Level.Integral(function, lengthWithGapMm))) > roomMm);
    }

    /// <summary>The functions whose breaks lie at the chords.</summary>
    private IEnumerable<DualFeasible> Functions(double widthMm)
    {
        yield return new TallCountsWhole(0);
        for (var most = 1; most <= MostRounded; most++)
        {
            yield return new RoundedShares(most);
        }

        foreach (var part in _chordsMm.Select(chord => chord / widthMm).Where(part => part < 1))
        {
            var threshold = part <= 0.5 ? part - Nudge : 1 - part + Nudge;
            if (threshold is > 0 and <= 0.5)
            {
                yield return new TallCountsWhole(threshold);
            }

            if (threshold is >= LeastThreshold and <= 0.5 && part <= 0.5)
            {
                yield return new RoomBeside(threshold);
            }
        }
    }

    private static double[] Spread(IEnumerable<ChordRun> runs, int most)
    {
        double[] all = [.. runs.SelectMany(run => new[] { run.FromMm, run.ToMm }).Where(chord => chord > 0).Select(chord => Math.Round(chord, 9)).Distinct().Order()];
        return all.Length <= most ? all : [.. Enumerable.Range(1, most).Select(i => all[(i * all.Length / most) - 1])];
    }
}
