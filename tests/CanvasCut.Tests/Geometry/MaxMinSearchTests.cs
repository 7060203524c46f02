using CanvasCut.Geometry;

namespace CanvasCut.Tests.Geometry;

/// <summary>The place with the largest smallest spare, held against hand calculations and against trying every place of a grid.</summary>
public sealed class MaxMinSearchTests
{
    private const double GridMm = 5;

    /// <summary>By hand: between walls at 0 and 100 the middle has 50 to each.</summary>
    [Fact]
    public void Between_two_walls_the_middle_is_best()
    {
        var found = Best([(0, 100)], [One(new(0, 1, 0)), One(new(0, -1, 100))]);

        Assert.Equal((50, 50), (found.Place[0], found.Spare));
    }

    /// <summary>
    /// By hand: a point between 0 and 100 that must keep clear of a post from 20 to 30. To the right of it there are 70 mm, so the best
    /// place is at 65 with 35; to the left only 20, with 10.
    /// </summary>
    [Fact]
    public void The_wider_side_of_a_post_is_taken()
    {
        var post = new SpareChoice([Spare(0, -1, 20), Spare(0, 1, -30)]);
        var found = Best([(0, 100)], [One(new(0, 1, 0)), One(new(0, -1, 100)), post]);

        Assert.Equal(65, found.Place[0], 1e-6);
        Assert.Equal(35, found.Spare, 1e-6);
    }

    /// <summary>
    /// By hand: two boxes of 40 side by side on 200 leave 120 for three gaps, 40 each: their middles at 60 and 140.
    /// </summary>
    [Fact]
    public void Two_share_a_strip_evenly()
    {
        SpareChoice[] choices =
        [
            One(new(0, 1, -20)), One(new(0, -1, 180)), One(new(1, 1, -20)), One(new(1, -1, 180)),
            new([new([(0, -1), (1, 1)], -40), new([(0, 1), (1, -1)], -40)]),
        ];

        var found = Best([(0, 200), (0, 200)], choices);

        Assert.Equal(40, found.Spare, 1e-6);
        Assert.Equal([60, 140], found.Place.Order().Select(value => Math.Round(value, 6)));
    }

    [Fact]
    public void What_cannot_be_kept_is_missed_by_as_little_as_can_be()
    {
        var found = Best([(-100, 100)], [One(new(0, 1, -30)), One(new(0, -1, -10))]);

        // By hand: x - 30 and -x - 10 are equal at x = 10, where both are -20.
        Assert.Equal((10, -20), (Math.Round(found.Place[0], 6), Math.Round(found.Spare, 6)));
    }

    /// <summary>
    /// Three boxes on a sheet with posts: no place of the grid is better than what is found, and one of them is worse by no more than a step of
    /// the grid to each side can make it.
    /// </summary>
    [Fact]
    public void No_place_of_a_grid_is_better() => Sheets.Sample(
        sheet =>
        {
            var choices = ChoicesOf(sheet);
            var found = Best([.. Enumerable.Repeat((0.0, sheet.Size), 4)], choices);
            var tried = BestOfGrid(sheet.Size, choices);

            Assert.True(tried <= found.Spare + 0.011, $"{tried} is better than {found.Spare}");
            Assert.True(found.Spare - tried <= 2 * GridMm, $"{found.Spare} against {tried}");
            Assert.Equal(found.Spare, choices.Min(choice => choice.At(found.Place.AsSpan())), 1e-9);
        },
        iter: 30,
        threads: 1,
        seed: "0000000000W2");

    private static readonly Gen<(double Size, (int X, int Y, int Half)[] Posts, int[] Halves)> Sheets =
        Gen.Select(
            Gen.Select(Gen.Int[10, 70], Gen.Int[10, 70], Gen.Int[1, 8]).Array[0, 3],
            Gen.Int[4, 14].Array[2],
            (posts, halves) => (80.0, posts.Select(post => (post.Item1, post.Item2, post.Item3)).ToArray(), halves));

    private static List<SpareChoice> ChoicesOf((double Size, (int X, int Y, int Half)[] Posts, int[] Halves) sheet)
    {
        var choices = new List<SpareChoice>();
        for (var i = 0; i < 2; i++)
        {
            var half = sheet.Halves[i];
            for (var axis = 0; axis < 2; axis++)
            {
                choices.Add(One(new((2 * i) + axis, 1, -half)));
                choices.Add(One(new((2 * i) + axis, -1, sheet.Size - half)));
            }

            choices.AddRange(sheet.Posts.Select(post => new SpareChoice(
            [
                Spare(2 * i, -1, post.X - post.Half - half), Spare(2 * i, 1, -post.X - post.Half - half),
                Spare((2 * i) + 1, -1, post.Y - post.Half - half), Spare((2 * i) + 1, 1, -post.Y - post.Half - half),
            ])));
        }

        var both = sheet.Halves.Sum();
        choices.Add(new([new([(0, 1), (2, -1)], -both), new([(0, -1), (2, 1)], -both), new([(1, 1), (3, -1)], -both), new([(1, -1), (3, 1)], -both)]));
        return choices;
    }

    private static double BestOfGrid(double size, List<SpareChoice> choices)
    {
        var steps = (int)(size / GridMm) + 1;
        var best = double.NegativeInfinity;
        var place = new double[4];
        for (var i = 0; i < steps * steps * steps * steps; i++)
        {
            (place[0], place[1]) = (i % steps * GridMm, i / steps % steps * GridMm);
            (place[2], place[3]) = (i / (steps * steps) % steps * GridMm, i / (steps * steps * steps) * GridMm);
            best = Math.Max(best, choices.Min(choice => choice.At(place)));
        }

        return best;
    }

    private static MaxMinPlace Best((double Low, double High)[] bounds, IReadOnlyList<SpareChoice> choices) =>
        MaxMinSearch.Best(bounds, choices, cancel: TestContext.Current.CancellationToken);

    private static LinearSpare Spare(int unknown, double factor, double constant) => new([(unknown, factor)], constant);

    private static SpareChoice One((int Unknown, double Factor, double Constant) spare) => new([Spare(spare.Unknown, spare.Factor, spare.Constant)]);
}
