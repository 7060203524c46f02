using System.Text;
using CanvasCut.Job;

namespace CanvasCut.Tests.Job;

/// <summary>Whatever stands in a results.json, it is refused with one plain line, or taken; nothing is ever thrown.</summary>
public sealed class HostileResultsTests
{
    private static readonly string Good = Repository.Read("tests/CanvasCut.Tests/Job/Written/format-1.json");

    [Theory]
    [InlineData("\"reveal_mm\": 9.525", "\"reveal_mm\": \"9.525\"", "sewn.zipper.reveal_mm: should be a number.")]
    [InlineData("\"reveal_mm\": 9.525", "\"reveal_mm\": null", "sewn.zipper.reveal_mm: should be a number.")]
    [InlineData("\"reveal_mm\": 9.525", "\"reveal_mm\": 1e999", "sewn.zipper.reveal_mm: should be a length above zero in millimetres.")]
    [InlineData("\"reveal_mm\": 9.525,", "", "sewn.zipper: should have reveal_mm.")]
    [InlineData("\"reveal_mm\": 9.525", "\"reveal_mm\": 9.525, \"reveal_mm\": 9", "sewn.zipper")]
    [InlineData("\"job\": \"", "\"job\": \"\\ud800", "job: should be a text.")]
    [InlineData("\"job\": \"", "\"job\": \"\\u001b[2J", "job: must be on one line, without control characters.")]
    [InlineData("\"job\": \"", "\"\\udc00\": 1, \"job\": \"", "should be a table in braces, each name in it once.")]
    [InlineData("\"name\": \"Carrier\"", "\"name\": \"Car\\nrier\"", "pieces[1].name: must be on one line, without control characters.")]
    [InlineData("\"name\": \"Carrier\"", "\"name\": 7", "pieces[1].name: should be a text.")]
    [InlineData("\"marks\": [", "\"marks\": [ 7,", "marks[1]: should be a table in braces, each name in it once.")]
    [InlineData("\"marks\": [", "\"marks\": [ null,", "marks[1]: should be a table in braces, each name in it once.")]
    [InlineData("\"marks\": [", "\"marks\": 5, \"marked\": [", "marks: should be a list.")]
    [InlineData("\"kept_pieces\": []", "\"kept_pieces\": [null]", "kept_pieces[1]: should be a table in braces, each name in it once.")]
    [InlineData("\"finished_mm\": [", "\"finished_mm\": [ 5, 6, 7,", "pieces[1].finished_mm[1]: should be a point, [x, y].")]
    [InlineData("\"finished_mm\": [", "\"finished_mm\": [ [1, 2, 3],", "pieces[1].finished_mm[1]: should be a point, [x, y].")]
    [InlineData("\"finished_mm\": [", "\"finished_mm\": [ [1, 1e999],", "pieces[1].finished_mm[1]: should be a point, [x, y].")]
    [InlineData("\"sewn\": {", "\"sewn\": null, \"sown\": {", "sewn: should tell what is sewn.")]
    [InlineData("\"over_zipper\": true", "\"over_zipper\": 1", "sewn.pocket.over_zipper: should be true or false.")]
    public void Each_gives_one_plain_line(string written, string changed, string told)
    {
        Assert.Contains(written, Good, StringComparison.Ordinal);
        var at = Good.IndexOf(written, StringComparison.Ordinal);

        var problem = Assert.Single(OldResults.Read(Encoding.UTF8.GetBytes(Good[..at] + changed + Good[(at + written.Length)..]), "results.json").Problems);

        Assert.Equal(ResultsCode.Damaged, problem.Code);
        Assert.Contains(told, problem.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain(problem.ToString(), char.IsControl);
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
            Encoding.UTF8.GetBytes($"{{\"format\": \"canvascut-results-1\", \"job\": {new string('[', 1000)}"),
            [(byte)'{', (byte)'"', 0xFF, 0xFE, (byte)'"', (byte)':', (byte)'1', (byte)'}'],
            Encoding.Unicode.GetBytes(Good),
            [.. Encoding.UTF8.GetBytes("{\"format\": \"canvascut-results-1\", \"job\": \""), 0xFF, .. Encoding.UTF8.GetBytes("\"}")],
        ];

        Assert.All(files, bytes => Assert.Single(OldResults.Read(bytes, "results.json").Problems));
    }

    /// <summary>Bytes changed at random, always the same ones: a result or problems, never anything thrown.</summary>
    [Fact]
    public void Random_damage_throws_nothing()
    {
        var dice = new Random(20240611);
        var good = Encoding.UTF8.GetBytes(Good);
        for (var round = 0; round < 150; round++)
        {
            var bytes = good.ToArray();
            for (var hit = 0; hit <= round % 4; hit++)
            {
                bytes[dice.Next(bytes.Length)] = (byte)dice.Next(256);
            }

            var read = OldResults.Read(bytes, "results.json");

            Assert.True(read.IsValid || read.Problems.Length > 0, $"Round {round}.");
            Assert.All(read.Problems, problem => Assert.DoesNotContain(problem.ToString(), char.IsControl));
        }
    }
}
