namespace CanvasCut.Design;

/// <summary>Finds the word that was probably meant.</summary>
public static class NearestWord
{
    private const int LongestWord = 60;

    /// <summary>The known word with the fewest letters changed, or null when none is near; the first of equals.</summary>
    /// <param name="word">As written.</param>
    /// <param name="known">The right words.</param>
    public static string? To(string word, IEnumerable<string> known)
    {
        var near = Math.Max(1, Math.Min(word.Length, LongestWord) / 3);
        return word.Length > LongestWord
            ? null
            : known.Select(candidate => (candidate, Distance: Distance(word, candidate)))
                .Where(pair => pair.Distance <= near)
                .OrderBy(pair => pair.Distance)
                .Select(pair => pair.candidate)
                .FirstOrDefault();
    }

    /// <summary>Letters to insert, delete, change or swap with their neighbour (optimal string alignment).</summary>
    private static int Distance(string left, string right)
    {
        var cost = new int[left.Length + 1][];
        for (var i = 0; i <= left.Length; i++)
        {
            cost[i] = new int[right.Length + 1];
            for (var j = 0; j <= right.Length; j++)
            {
                cost[i][j] = i == 0 || j == 0 ? i + j : Cheapest(cost, (left, right), i, j);
            }
        }

        return cost[left.Length][right.Length];
    }

    private static int Cheapest(int[][] cost, (string Left, string Right) words, int i, int j)
    {
        var (left, right) = words;
        var isSame = char.ToUpperInvariant(left[i - 1]) == char.ToUpperInvariant(right[j - 1]);
        var best = Math.Min(Math.Min(cost[i - 1][j], cost[i][j - 1]) + 1, cost[i - 1][j - 1] + (isSame ? 0 : 1));
        var isSwap = i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1];
        return isSwap ? Math.Min(best, cost[i - 2][j - 2] + 1) : best;
    }
}
