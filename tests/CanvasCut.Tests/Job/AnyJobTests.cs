using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using CanvasCut.Geometry;
using CanvasCut.Job;
using CanvasCut.JobFiles;
using CanvasCut.Tests.Measuring;

namespace CanvasCut.Tests.Job;

/// <summary>Whatever a job file that is read asks for, there are results; the odd sizes are all accepted as meant.</summary>
public sealed partial class AnyJobTests
{
    private static readonly double[] Factors = [0.05, 0.3, 0.5, 0.8, 1, 1, 1, 1, 1, 1.1, 1.3, 2, 3.5];

    /// <summary>Wishes that no example has, each a table that is added when the job has none of the name.</summary>
    private static readonly string[] Wishes =
    [
        "", "[zipper]\nkind = \"continuous\"\n", "[cloth]\nwarp = \"athwart\"\n", "[cloth]\nroll_width = \"600 mm\"\n",
        "[cloth]\nroll_width = \"330 mm\"\nturns = \"none\"\n", "[cloth]\none_way = true\nturns = \"quarter\"\n", "[carrier]\nedges = \"binding\"\n",
        "[carrier]\ncorner = \"square\"\nhem = { turn_under = \"0 mm\", width = \"5 mm\" }\n", "[carrier]\nborder = \"0 mm\"\n",
        "[pocket]\nleg = \"30 mm\"\n", "[pocket]\nleg = \"400 mm\"\nover_zipper = false\n", "[pocket]\nmouth = { turn_under = \"40 mm\", width = \"100 mm\" }\n",
        "[weather_strip]\nedges = [\"forward\", \"aft\"]\nsewn_to = \"carrier\"\n", "[mount]\nport = \"zipper\"\n[weather_strip]\nedges = [\"port\"]\nsewn_to = { port = \"carrier\" }\n",
        "[weather_strip]\nheld = \"snaps\"\noverlap = \"40 mm\"\n", "[weather_strip]\nedges = [\"forward\", \"aft\"]\nheld = \"hook-and-loop\"\nsewn_to = { aft = \"carrier\" }\n",
        "[weather_strip]\nheld = \"rod\"\nsewn_to = \"carrier\"\n", "[weather_strip]\nheld = \"rod\"\nedges = [\"aft\"]\n",
        "[weather_strip]\nedges = [\"forward\", \"aft\"]\noverlap = \"0 mm\"\n", "[weather_strip]\nedges = []\n", "[sewing]\nrows = 1\n",
        "[chafe]\nturn_under = \"0 mm\"\nwidth_beyond_tube = \"0 mm\"\n", "[paper]\nsize = \"A3\"\noverlap = \"0 mm\"\n", "[zipper]\nsetback = \"0 mm\"\n",
        "[mount]\nforward = \"snaps\"\naft = \"twist\"\n", "[mount]\nforward = \"hook-and-loop\"\naft = \"lacing\"\n", "[mount]\naft = \"snaps\"\nsnaps = { width = \"15 mm\" }\n",
        "[mount]\nforward = \"lacing\"\naft = \"hook-and-loop\"\nlacing = { pitch = \"60 mm\", end_distance = \"20 mm\" }\n", "[mount]\nforward = \"twist\"\nsetback = \"0 mm\"\n",
        "[mount]\nforward = \"sleeve\"\naft = \"sleeve\"\n", "[mount]\nport = \"zipper\"\nstarboard = \"zipper\"\n",
        "[mount]\nforward = \"sleeve\"\nport = \"snaps\"\nstarboard = \"lacing\"\nsnaps = { end_distance = \"20 mm\" }\nlacing = { end_distance = \"20 mm\" }\n",
        "[mount]\naft = \"twist\"\nport = \"sleeve\"\nstarboard = \"hook-and-loop\"\nsleeve = { segment = \"60 mm\", ease = \"20 mm\" }\n",
    ];

    private static readonly ImmutableArray<string> Bases =
        [.. ExampleTests.Examples.Select(example => Repository.Read($"patterns/{example.Data}/job.toml"))];

    /// <summary>Every example as it stands, with each of the wishes: the same jobs every time.</summary>
    internal static IEnumerable<string> ExamplesWithWishes => Enumerable.Range(0, Bases.Length).SelectMany(_ => Wishes, (index, wish) => TextOf(index, [1], wish, ""));

    internal static readonly Gen<string> AnyText = Gen.Select(
        Gen.Int[0, Bases.Length - 1], AnyOf(Factors).Array[80], AnyOf(Wishes), AnyOf(Wishes)).Select(TextOf);

    /// <summary>Every piece is sound and the cut plan faultless, both by NetTopologySuite.</summary>
    [Fact]
    public void Any_job_that_is_read_is_worked_out() => AnyText.Sample(
        text =>
        {
            if (JobRun.Of(text, "job.toml", new() { Side = JobFiles.Sample.Beside("patterns/priced-own-materials") }).Value is { Content: var content })
            {
                Assert.All(content.Patterns.Pieces, Patterns.CarrierPieceTests.AssertSound);
                Assert.All(content.Plan.Placed, (placed, i) => Assert.All(
                    content.Plan.Placed.Skip(i + 1),
                    other => Assert.True(Witness.DistanceMm(placed.Outline, other.Outline) > 0)));
            }
        },
        iter: 150);

    /// <summary>As wild as the others, but the same jobs every time: drawing takes long, so there are only a few.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    [InlineData(9)]
    [InlineData(10)]
    [InlineData(11)]
    [InlineData(12)]
    public void Any_job_that_is_worked_out_is_drawn(int seed)
    {
        var outcome = WildTexts(seed).Select(text => JobRun.Of(text, "job.toml", new() { Side = JobFiles.Sample.Beside("patterns/priced-own-materials") }).Value).First(found => found is not null)!;
        var files = ResultFiles.Of(outcome);

        Assert.Equal(files.Length, files.Select(file => file.Name).Distinct().Count());
        Assert.All(files, file => Assert.False(file.Bytes.IsEmpty, file.Name));
    }

    /// <summary>Job files without end, most of which are read.</summary>
    private static IEnumerable<string> WildTexts(int seed)
    {
        var dice = new SimulationDice((ulong)seed);
        T One<T>(IReadOnlyList<T> of) => of[dice.Below(of.Count)];
        while (true)
        {
            yield return TextOf(dice.Below(Bases.Length), [.. Enumerable.Range(0, 80).Select(_ => One(Factors))], One(Wishes), One(Wishes));
        }
    }

    private static string TextOf(int index, double[] factors, string wish, string otherWish)
    {
        var next = 0;
        var text = Size().Replace(Bases[index], match =>
            FormattableString.Invariant($"\"{double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture) * factors[next++ % factors.Length]:0.###} {match.Groups[2].Value}\""));
        foreach (var each in new[] { wish, otherWish }.Where(each => each.Length > 0 && !text.Contains(each.Split('\n')[0], StringComparison.Ordinal)))
        {
            text += $"\n{each}";
        }

        return text.Replace("format = 1", $"format = 1\naccept_unusual = [{string.Join(", ", Accepted().Select(name => $"\"{name}\""))}]", StringComparison.Ordinal);
    }

    private static Gen<T> AnyOf<T>(T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static IEnumerable<string> Accepted() => JobFields.All
        .Where(field => field.Name is not ("format" or "name" or "accept_unusual"))
        .SelectMany(field => field.Name.Contains("[]", StringComparison.Ordinal)
            ? Enumerable.Range(1, 3).Select(i => field.Name.Replace("[]", $"[{i}]", StringComparison.Ordinal))
            : [field.Name]);

    [GeneratedRegex("\"(-?[0-9.]+) (mm|in)\"")]
    private static partial Regex Size();
}
