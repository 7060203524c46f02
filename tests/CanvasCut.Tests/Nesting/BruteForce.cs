using System.Collections.Immutable;

namespace CanvasCut.Tests.Nesting;

/// <summary>Tries whole-numbered rectangles in every place of a grid, one after another.</summary>
internal sealed class BruteForce(bool mayTurn, int width)
{
    private int _best = int.MaxValue;

    public static int ShortestLength(ImmutableArray<(int Along, int Across)> sizes, bool mayTurn, int width)
    {
        var brute = new BruteForce(mayTurn, width) { _best = sizes.Sum(size => Math.Max(size.Along, size.Across)) + 1 };
        brute.Place([], 0, sizes);
        return brute._best;
    }

    private void Place(ImmutableArray<Taken> taken, int length, ImmutableArray<(int Along, int Across)> left)
    {
        if (left.IsEmpty)
        {
            _best = length;
            return;
        }

        var (along, across) = left[0];
        Try(along, across, taken, length, left[1..]);
        if (mayTurn)
        {
            Try(across, along, taken, length, left[1..]);
        }
    }

    private void Try(int along, int across, ImmutableArray<Taken> taken, int length, ImmutableArray<(int Along, int Across)> left)
    {
        for (var x = 0; Math.Max(length, x + along) < _best; x++)
        {
            for (var y = 0; y + across <= width && Math.Max(length, x + along) < _best; y++)
            {
                var place = new Taken(x, y, x + along, y + across);
                if (!taken.Any(place.Overlaps))
                {
                    Place(taken.Add(place), Math.Max(length, x + along), left);
                }
            }
        }
    }

    private readonly record struct Taken(int Left, int Bottom, int Right, int Top)
    {
        public bool Overlaps(Taken other) => other.Left < Right && Left < other.Right && other.Bottom < Top && Bottom < other.Top;
    }
}
