using CanvasCut.Drawing;

namespace CanvasCut.Tests.Drawing;

public sealed class TextWrapTests
{
    private static readonly Gen<string> Words = Gen.String[Gen.Char['a', 'z'], 1, 25].Array[1, 30].Select(words => string.Join(' ', words));

    [Fact]
    public void No_line_is_wider_than_allowed() =>
        Gen.Select(Words, Gen.Double[10, 90]).Sample((text, widthMm) =>
            Assert.All(TextWrap.Lines(text, widthMm, 3, isBold: false), line => Assert.InRange(TextWidth.Of(line, 3, isBold: false), 0, widthMm)));

    [Fact]
    public void No_letter_is_lost() =>
        Gen.Select(Words, Gen.Double[10, 90]).Sample((text, widthMm) =>
            Assert.Equal(
                text.Replace(" ", string.Empty, StringComparison.Ordinal),
                string.Concat(TextWrap.Lines(text, widthMm, 3, isBold: true)).Replace(" ", string.Empty, StringComparison.Ordinal)));

    [Fact]
    public void Lines_break_between_words_and_where_the_text_says_so() =>
        Assert.Equal(["fold the", "hem twice", "sew"], TextWrap.Lines("fold the hem twice\nsew", TextWidth.Of("hem twice ", 3, isBold: false), 3, isBold: false));

    [Fact]
    public void A_word_wider_than_a_line_is_broken() =>
        Assert.Equal(["mm", "mm", "m"], TextWrap.Lines("mmmmm", TextWidth.Of("mm", 3, isBold: false), 3, isBold: false));

    [Fact]
    public void No_text_is_one_empty_line() => Assert.Equal([string.Empty], TextWrap.Lines(string.Empty, 50, 3, isBold: false));
}
