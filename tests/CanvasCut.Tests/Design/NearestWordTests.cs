using CanvasCut.Design;

namespace CanvasCut.Tests.Design;

public sealed class NearestWordTests
{
    private static readonly string[] Known = ["length", "width", "long_side", "hem"];

    [Theory]
    [InlineData("lenght", "length")]
    [InlineData("Length", "length")]
    [InlineData("widht", "width")]
    [InlineData("longside", "long_side")]
    [InlineData("hems", "hem")]
    public void A_slip_finds_the_word_that_was_meant(string slip, string meant) => Assert.Equal(meant, NearestWord.To(slip, Known));

    [Theory]
    [InlineData("colour")]
    [InlineData("")]
    [InlineData("x")]
    public void A_word_like_no_other_finds_none(string word) => Assert.Null(NearestWord.To(word, Known));
}
