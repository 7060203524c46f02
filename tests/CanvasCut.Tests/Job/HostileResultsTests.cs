using System.Text;
using System.Text.Json.Nodes;
using CanvasCut.Job;

namespace CanvasCut.Tests.Job;

/// <summary>Whatever stands in a results.json, it is refused with one plain line, or taken; nothing is ever thrown.</summary>
public sealed class HostileResultsTests
{
    private static readonly string Good = Repository.Read("tests/CanvasCut.Tests/Job/Written/format-2.json");
    private static readonly string Earlier = Repository.Read("tests/CanvasCut.Tests/Job/Written/format-1.json");

    [Theory]
    [InlineData("\"reveal_mm\": 9.525", "\"reveal_mm\": \"9.525\"", "mountings[1].sewn.zipper.reveal_mm: should be a number.")]
    [InlineData("\"reveal_mm\": 9.525", "\"reveal_mm\": null", "mountings[1].sewn.zipper.reveal_mm: should be a number.")]
    [InlineData("\"reveal_mm\": 9.525", "\"reveal_mm\": 1e999", "mountings[1].sewn.zipper.reveal_mm: should be a length above zero in millimetres.")]
    [InlineData("\"reveal_mm\": 9.525,", "", "mountings[1].sewn.zipper: should have reveal_mm.")]
    [InlineData("\"reveal_mm\": 9.525", "\"reveal_mm\": 9.525, \"reveal_mm\": 9", "mountings[1].sewn.zipper")]
    [InlineData("\"job\": \"", "\"job\": \"\\ud800", "job: should be a text.")]
    [InlineData("\"job\": \"", "\"job\": \"\\u001b[2J", "job: must be on one line, without control characters.")]
    [InlineData("\"job\": \"", "\"\\udc00\": 1, \"job\": \"", "should be a table in braces, each name in it once.")]
    [InlineData("\"name\": \"Carrier\"", "\"name\": \"Car\\nrier\"", "mountings[1].pieces[1].name: must be on one line, without control characters.")]
    [InlineData("\"name\": \"Carrier\"", "\"name\": 7", "mountings[1].pieces[1].name: should be a text.")]
    [InlineData("\"marks\": [", "\"marks\": [ 7,", "mountings[1].marks[1]: should be a table in braces, each name in it once.")]
    [InlineData("\"marks\": [", "\"marks\": [ null,", "mountings[1].marks[1]: should be a table in braces, each name in it once.")]
    [InlineData("\"marks\": [", "\"marks\": 5, \"marked\": [", "mountings[1].marks: should be a list.")]
    [InlineData("\"kept_pieces\": []", "\"kept_pieces\": [null]", "mountings[1].kept_pieces[1]: should be a table in braces, each name in it once.")]
    [InlineData("\"finished_mm\": [", "\"finished_mm\": [ 5, 6, 7,", "mountings[1].pieces[1].finished_mm[1]: should be a point, [x, y].")]
    [InlineData("\"finished_mm\": [", "\"finished_mm\": [ [1, 2, 3],", "mountings[1].pieces[1].finished_mm[1]: should be a point, [x, y].")]
    [InlineData("\"finished_mm\": [", "\"finished_mm\": [ [1, 1e999],", "mountings[1].pieces[1].finished_mm[1]: should be a point, [x, y].")]
    [InlineData("\"sewn\": {", "\"sewn\": null, \"sown\": {", "mountings[1].sewn: should tell what is sewn.")]
    [InlineData("\"over_zipper\": true", "\"over_zipper\": 1", "mountings[1].sewn.pocket.over_zipper: should be true or false.")]
    public void Each_gives_one_plain_line(string written, string changed, string told) => Told(Good, written, changed, told);

    /// <summary>A file of the first format is read by its own types and complains by its own places.</summary>
    [Theory]
    [InlineData("\"reveal_mm\": 9.525", "\"reveal_mm\": \"9.525\"", "CC183: sewn.zipper.reveal_mm: should be a number.")]
    [InlineData("\"marks\": [", "\"marks\": [ 7,", "CC183: marks[1]: should be a table in braces, each name in it once.")]
    [InlineData("\"kind\": \"separating\"", "\"kind\": \"glued\"", "CC183: sewn.zipper.kind: should be one of \"separating\", \"continuous\".")]
    [InlineData("\"start\": \"port\"", "\"start\": \"aft\"", "CC183: sewn.zipper.start: should be \"port\" or \"starboard\".")]
    [InlineData("\"name\": \"Carrier\"", "\"name\": \"\\ud83d\"", "CC183: pieces[1].name: should be a text.")]
    public void So_does_each_in_the_first_format(string written, string changed, string told) => Told(Earlier, written, changed, told);

    private static void Told(string good, string written, string changed, string told)
    {
        // The sewn half has words that other parts have too.
        var from = told.Contains("sewn.", StringComparison.Ordinal) ? good.IndexOf("\"sewn\"", StringComparison.Ordinal) : 0;
        var at = good.IndexOf(written, from, StringComparison.Ordinal);
        Assert.True(at >= 0, written);

        var problem = Assert.Single(OldResults.Read(Encoding.UTF8.GetBytes(good[..at] + changed + good[(at + written.Length)..]), "results.json").Problems);

        Assert.Equal(ResultsCode.Damaged, problem.Code);
        Assert.Contains(told, problem.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain(problem.ToString(), char.IsControl);
    }

    /// <summary>No carrier, and two: nothing of which to take what is sewn.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    public void Another_number_of_carriers_is_told(int count)
    {
        var results = JsonNode.Parse(Good)!;
        var only = results["mountings"]![0]!;
        results["mountings"] = new JsonArray([.. Enumerable.Range(0, count).Select(_ => only.DeepClone())]);

        var problem = Assert.Single(OldResults.Read(Encoding.UTF8.GetBytes(results.ToJsonString()), "results.json").Problems);

        Assert.Contains($"CC185: mountings: tells of {count} carriers; name the results.json in the folder of the one", problem.ToString(), StringComparison.Ordinal);
    }

    /// <summary>compare reads by the same types: no drawing is looked for by names that cannot be.</summary>
    [Theory]
    [InlineData("\"files\": [", "\"files\": [ null,")]
    [InlineData("\"files\": [", "\"files\": [ \"a\\u001bb.svg\",")]
    [InlineData("\"cut_mm\": [", "\"cut_mm\": [ \"1\",")]
    [InlineData("\"name\": \"Carrier\"", "\"name\": \"\\ud800\"")]
    public void Compare_takes_none_of_them(string written, string changed)
    {
        using var folder = new TemporaryFolder();
        var at = Good.IndexOf(written, StringComparison.Ordinal);
        File.WriteAllText(folder.PathOf("results.json"), Good[..at] + changed + Good[(at + written.Length)..]);

        Assert.Null(ResultsComparison.Of(folder.PathOf(".")));
    }

    /// <summary>A mark at the start of the file that an editor may leave is no damage.</summary>
    [Fact]
    public void A_byte_order_mark_is_no_damage() => Assert.True(OldResults.Read([0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Good)], "results.json").IsValid);

    /// <summary>A hundred thousand levels, bytes that are no letters, another encoding.</summary>
    [Fact]
    public void What_is_no_text_of_ours_is_told()
    {
        byte[][] files =
        [
            Encoding.UTF8.GetBytes(new string('[', 100_000)),
            Encoding.UTF8.GetBytes($"{{\"format\": \"canvascut-results-2\", \"job\": {new string('[', 1000)}"),
            [(byte)'{', (byte)'"', 0xFF, 0xFE, (byte)'"', (byte)':', (byte)'1', (byte)'}'],
            Encoding.Unicode.GetBytes(Good),
            [.. Encoding.UTF8.GetBytes("{\"format\": \"canvascut-results-2\", \"job\": \""), 0xFF, .. Encoding.UTF8.GetBytes("\"}")],
        ];

        Assert.All(files, bytes => Assert.Single(OldResults.Read(bytes, "results.json").Problems));
    }

    /// <summary>Bytes changed at random, always the same ones: a result or problems, never anything thrown.</summary>
    [Fact]
    public void Random_damage_throws_nothing()
    {
        // A linear congruential sequence, its constants from Numerical Recipes: chance enough for damage.
        var state = 20240611u;
        int Next(int below) => (int)(((state = unchecked((state * 1664525) + 1013904223)) >> 8) % (uint)below);
        var good = Encoding.UTF8.GetBytes(Good);
        for (var round = 0; round < 150; round++)
        {
            var bytes = good.ToArray();
            for (var hit = 0; hit <= round % 4; hit++)
            {
                bytes[Next(bytes.Length)] = (byte)Next(256);
            }

            var read = OldResults.Read(bytes, "results.json");

            Assert.True(read.IsValid || read.Problems.Length > 0, $"Round {round}.");
            Assert.All(read.Problems, problem => Assert.DoesNotContain(problem.ToString(), char.IsControl));
        }
    }
}
