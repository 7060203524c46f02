using System.Collections.Immutable;

namespace CanvasCut.Geometry;

/// <summary>Finds the rests that a strip presses on.</summary>
/// <remarks>
/// The pushes are the non-negative numbers that leave no rest inside the strip, with none where there is a gap. That is a
/// least-squares problem with non-negative unknowns, and is solved by the active set of C. Lawson and R. Hanson, "Solving
/// least squares problems", 1974, chapter 23, which ends after finitely many steps: the deepest rest is taken up, and those
/// that would have to pull are let go on the way.
/// </remarks>
internal static class StripContactSearch
{
    /// <summary>A rest counts as cleared when the strip is no deeper in it; far below anything that can be measured.</summary>
    private const double ClearMm = 1e-7;

    /// <summary>The indices of the rests that push, in order.</summary>
    public static ImmutableArray<int> Find(double lengthMm, ImmutableArray<StripRest> rests, double weightPerMm3)
    {
        var pushes = new double[rests.Length];
        var touched = new SortedSet<int>();
        var most = 10 * (rests.Length + 1);
        for (var step = 0; step < most; step++)
        {
            var spans = Spans(lengthMm, rests, touched, weightPerMm3);
            if (Deepest(rests, touched, spans) is not { } deepest)
            {
                return [.. touched];
            }

            touched.Add(deepest);
            LetGo(lengthMm, rests, touched, pushes, weightPerMm3);
            if (!touched.Contains(deepest))
            {
                // What was just taken up can only be let go at once when nothing but round-off is left.
                return [.. touched];
            }
        }

        throw new InvalidOperationException("The contact of a strip was not found.");
    }

    /// <summary>The strip over its holds and some of the rests.</summary>
    public static ImmutableArray<BeamSpan> Spans(double lengthMm, ImmutableArray<StripRest> rests, IEnumerable<int> touched, double weightPerMm3) =>
        ContinuousBeam.Over([new(0, 0), .. touched.Select(i => rests[i]), new(lengthMm, 0)], weightPerMm3);

    /// <summary>The rest that reaches farthest into the strip; null when all are clear.</summary>
    private static int? Deepest(ImmutableArray<StripRest> rests, SortedSet<int> touched, ImmutableArray<BeamSpan> spans)
    {
        var (deepest, depth, span) = ((int?)null, ClearMm, 0);
        for (var i = 0; i < rests.Length; i++)
        {
            while (span + 1 < spans.Length && spans[span + 1].FromMm <= rests[i].AtMm)
            {
                span++;
            }

            var into = rests[i].HeightMm - spans[span].HeightAt(rests[i].AtMm - spans[span].FromMm);
            if (into > depth && !touched.Contains(i))
            {
                (deepest, depth) = (i, into);
            }
        }

        return deepest;
    }

    /// <summary>Goes from the old pushes toward those of the new set, and lets go whatever reaches zero first, until none pulls.</summary>
    private static void LetGo(double lengthMm, ImmutableArray<StripRest> rests, SortedSet<int> touched, double[] pushes, double weightPerMm3)
    {
        while (true)
        {
            var wanted = touched.Zip(ContinuousBeam.Pushes(Spans(lengthMm, rests, touched, weightPerMm3))).ToList();
            var pulling = wanted.Where(each => each.Second <= 0).ToList();
            var part = pulling.Count == 0 ? 1 : pulling.Min(each => pushes[each.First] / (pushes[each.First] - each.Second));
            foreach (var (rest, push) in wanted)
            {
                pushes[rest] += part * (push - pushes[rest]);
            }

            if (pulling.Count == 0)
            {
                return;
            }

            var first = pulling.MinBy(each => pushes[each.First]).First;
            pushes[first] = 0;
            touched.Remove(first);
        }
    }
}
