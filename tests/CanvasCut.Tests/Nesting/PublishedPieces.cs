using CanvasCut.Geometry;

namespace CanvasCut.Tests.Nesting;

/// <summary>Pieces of published tasks.</summary>
internal static class PublishedPieces
{
    /// <summary>A square of 100 cut into sixteen pieces: R. Dighe, M. Jakiela (1996), as in the ESICUP data sets (CC0-1.0).</summary>
    public static readonly Point[][] Dighe1 =
    [
        [new(0, 0), new(35, 0), new(0, 34)],
        [new(0, 0), new(33, 0), new(18, 15)],
        [new(0, 0), new(32, 0), new(32, 41), new(14, 33)],
        [new(35, 0), new(53, 15), new(51, 38), new(48, 62), new(39, 57), new(0, 34)],
        [new(2, 15), new(17, 0), new(31, 33), new(25, 34), new(0, 38)],
        [new(0, 0), new(39, 23), new(20, 26), new(0, 66)],
        [new(3, 4), new(28, 0), new(30, 18), new(32, 39), new(25, 37), new(0, 28)],
        [new(0, 1), new(6, 0), new(24, 8), new(2, 19)],
        [new(0, 11), new(22, 0), new(2, 32)],
        [new(0, 32), new(20, 0), new(20, 37)],
        [new(1, 0), new(26, 9), new(0, 15)],
        [new(0, 3), new(19, 0), new(28, 5), new(27, 20), new(24, 43)],
        [new(20, 0), new(44, 40), new(0, 40)],
        [new(3, 6), new(29, 0), new(36, 2), new(0, 29)],
        [new(0, 27), new(36, 0), new(56, 27)],
        [new(0, 0), new(20, 5), new(20, 27)],
    ];
}
