using System.Collections.Immutable;
using CanvasCut.Drawing;

namespace CanvasCut.Export.Exchange;

/// <summary>Names of pieces as a release 12 block can bear them: A to Z, digits, hyphens, no more than 31 signs with the size.</summary>
internal static class BlockNames
{
    private const int Longest = 31;

    /// <summary>The names of a style's pieces, without their size, in order.</summary>
    /// <exception cref="ArgumentException">Two pieces would bear one name.</exception>
    public static ImmutableArray<string> Of(PatternStyle style)
    {
        ImmutableArray<string> names = [.. style.Blocks.Select(block => Fitting(Plain(block.Title.Name), Longest - 1 - style.Size.Length))];
        return names.Distinct(StringComparer.Ordinal).Count() == names.Length
            ? names
            : throw new ArgumentException("Two pieces would bear one name.", nameof(style));
    }

    private static string Plain(string name) =>
        string.Concat(name.ToUpperInvariant().Select(letter => char.IsAsciiLetterUpper(letter) || char.IsAsciiDigit(letter) ? letter : '-'));

    /// <summary>Without hyphens when it is too long with them; else its beginning and its end, where numbers stand.</summary>
    private static string Fitting(string name, int longest)
    {
        const int EndKept = 10;
        var shorter = name.Length <= longest ? name : name.Replace("-", string.Empty, StringComparison.Ordinal);
        return shorter.Length <= longest ? shorter : shorter[..(longest - EndKept)] + shorter[^EndKept..];
    }
}
