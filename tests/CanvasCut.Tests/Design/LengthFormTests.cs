using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Tests.Design;

public sealed class LengthFormTests
{
    /// <summary>1040.74 mm: / 25.4 = 40.97402 in = 655.58/16 = 1311.17/32 = 2622.34/64; 656/16 = 41 in, 2622/64 = 40 31/32 in, 1311/32 = 40 31/32 in.</summary>
    [Theory]
    [InlineData("1040 mm", "1040.7 mm")]
    [InlineData("104 cm", "104.07 cm")]
    [InlineData("1.04 m", "1.0407 m")]
    [InlineData("41 in", "41 in")]
    [InlineData("41.0 in", "40.97 in")]
    [InlineData("40 1/32 in", "40 31/32 in")]
    [InlineData("40 1/64 in", "40 31/32 in")]
    [InlineData("41½\"", "41 in")]
    [InlineData("3 ft 5-1/2 in", "3 ft 5 in")]
    [InlineData("3' 5 1/32\"", "3 ft 4 31/32 in")]
    [InlineData("1/4 yd", "3 ft 5 in")]
    public void A_length_is_written_as_another_one_was(string written, string expected) =>
        Assert.Equal(expected, LengthForm.Of(written).Write(Length.FromMillimeters(1040.74)));
}
