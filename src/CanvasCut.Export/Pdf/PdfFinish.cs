using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace CanvasCut.Export.Pdf;

/// <summary>
/// Gives a finished PDF file what the PDF canvas cannot: pages of their exact sizes, which it rounds to whole points; dates without
/// the machine's time zone; the title, the language, and the wish to be printed at its size and on one side.
/// </summary>
/// <remarks>
/// The file is taken as Latin-1 text, one character a byte, so that places in the text are places in the file. Every place in the
/// file's cross-reference table is moved on by what was put in before it. No text of a person's stands in it yet: the letters are
/// numbers of a font, and the title comes here, so that nothing can be taken for a part of the file that is not one.
/// </remarks>
internal static partial class PdfFinish
{
    /// <summary>A date that never changes, so that the same sheets give the same bytes; without a zone (ISO 32000-1, 7.9.4).</summary>
    private const string Date = "(D:20000101000000)";

    /// <summary>The file with the given sizes, in points, in the order of the pages.</summary>
    /// <exception cref="InvalidOperationException">The file is not built as the PDF canvas builds it.</exception>
    public static byte[] Of(byte[] pdf, (string Title, string Language) head, IReadOnlyList<(double Width, double Height)> sizes)
    {
        var text = Encoding.Latin1.GetString(pdf);
        var table = TableStart(text);
        var boxes = PageBox().Matches(text[..table]);
        if (boxes.Count != sizes.Count)
        {
            throw new InvalidOperationException($"The PDF file has {boxes.Count} page boxes for {sizes.Count} pages.");
        }

        List<Change> changes =
        [
            .. boxes.Zip(sizes, (box, size) => new Change(box.Index, box.Length, TextOf(size)))
                .Append(Once(Dates().Match(text), $"/Title <{Hex(head.Title)}>\n/CreationDate {Date}\n/ModDate {Date}"))
                .Append(Once(Catalog().Match(text), $"{Catalog().Match(text).Value}\n/Lang ({head.Language})\n/ViewerPreferences <</PrintScaling /None /Duplex /Simplex>>"))
                .OrderBy(change => change.Place),
        ];
        return Encoding.Latin1.GetBytes(Replaced(text[..table], changes) + MovedTable(text[table..], table, changes));
    }

    private static int TableStart(string text)
    {
        var start = text.LastIndexOf("startxref\n", StringComparison.Ordinal);
        var place = StartOfTable().Match(text, Math.Max(start, 0));
        return place.Success
            ? int.Parse(place.Groups[1].ValueSpan, CultureInfo.InvariantCulture)
            : throw new InvalidOperationException("The PDF file does not end with the place of its cross-reference table.");
    }

    private static Change Once(Match match, string text) => match.Success
        ? new(match.Index, match.Length, text)
        : throw new InvalidOperationException("The PDF file has no catalogue or no dates where they are looked for.");

    /// <summary>A text as PDF writes those that may hold any letter: UTF-16, the high byte first, with its mark.</summary>
    private static string Hex(string text) => "FEFF" + Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(text));

    private static string TextOf((double Width, double Height) size) =>
        string.Create(CultureInfo.InvariantCulture, $"/MediaBox [0 0 {size.Width:0.####} {size.Height:0.####}]");

    private static string Replaced(string text, List<Change> changes)
    {
        var result = new StringBuilder(text.Length);
        var done = 0;
        foreach (var change in changes)
        {
            result.Append(text, done, change.Place - done).Append(change.Text);
            done = change.Place + change.Length;
        }

        return result.Append(text, done, text.Length - done).ToString();
    }

    private static string MovedTable(string table, int place, List<Change> changes)
    {
        var entries = UsedEntry().Replace(table, entry => Moved(entry.Groups[1].Value, changes).ToString("D10", CultureInfo.InvariantCulture) + entry.Groups[2].Value);
        return StartOfTable().Replace(entries, $"startxref\n{Moved(place.ToString(CultureInfo.InvariantCulture), changes)}\n");
    }

    private static int Moved(string place, List<Change> changes)
    {
        var old = int.Parse(place, CultureInfo.InvariantCulture);
        return old + changes.Where(change => change.Place < old).Sum(change => change.Text.Length - change.Length);
    }

    [GeneratedRegex(@"/MediaBox \[0 0 [0-9.]+ [0-9.]+\]")]
    private static partial Regex PageBox();

    [GeneratedRegex(@"/CreationDate \(D:[^)]*\)\n/ModDate \(D:[^)]*\)")]
    private static partial Regex Dates();

    [GeneratedRegex(@"<</Type /Catalog")]
    private static partial Regex Catalog();

    [GeneratedRegex(@"startxref\n([0-9]+)\n")]
    private static partial Regex StartOfTable();

    [GeneratedRegex(@"([0-9]{10})( [0-9]{5} n)")]
    private static partial Regex UsedEntry();

    private readonly record struct Change(int Place, int Length, string Text);
}
