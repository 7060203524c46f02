using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Text;
using CanvasCut.Geometry;

namespace CanvasCut.Drawing;

/// <summary>Letters of plain lines, for sheets that a pen or a knife draws.</summary>
/// <remarks>
/// The letters are our own, on the proportions of ISO 3098. A text never takes more room than the same text printed: where
/// the plain letters would be wider they are narrowed. There are no bold ones. A letter that is not known becomes a box.
/// </remarks>
public static class StrokeLetters
{
    private const double UnitsInHeight = 14;
    private const double GapUnits = 3;
    private const double SpaceUnits = 4;
    private const double FractionScale = 0.56;

    private static readonly Dictionary<char, string> Fractions = new()
    {
        ['½'] = "12",
        ['¼'] = "14",
        ['¾'] = "34",
        ['⅛'] = "18",
        ['⅜'] = "38",
        ['⅝'] = "58",
        ['⅞'] = "78",
    };

    private static readonly FrozenDictionary<Rune, StrokeGlyph> Glyphs = Read();

    private static readonly StrokeGlyph Unknown = StrokeGlyph.Read("8 0,0 8,0 8,14 0,14 0,0");

    /// <summary>Every character that has strokes of its own, and the space.</summary>
    public static IEnumerable<Rune> Characters => Glyphs.Keys.Order();

    /// <summary>The figures with every text drawn in plain lines, those seen through insets too.</summary>
    public static ImmutableArray<Figure> In(ImmutableArray<Figure> figures) => [.. figures.SelectMany(In)];

    /// <summary>The lines of a text, of the same height, at the same place and turned as it is; role Note.</summary>
    public static ImmutableArray<Figure> Of(Lettering lettering)
    {
        var narrowing = Narrowing(lettering);
        var (sine, cosine) = Math.SinCos(lettering.TurnDegrees * Math.PI / 180);
        var along = new Step(cosine, sine) * (lettering.HeightMm / UnitsInHeight);
        var start = lettering.At - (along * (PartBefore(lettering.Anchor) * WidthUnits(lettering.Text) * narrowing));
        var figures = ImmutableArray.CreateBuilder<Figure>();
        var left = 0.0;
        foreach (var glyph in lettering.Text.EnumerateRunes().Select(GlyphOf))
        {
            figures.AddRange(glyph.Placed(1, new(left, 0)).Select(stroke =>
                Stroke.Open(LineRole.Note, [.. stroke.Select(point => start + (along * (point.X * narrowing)) + (along.Left * point.Y))])));
            left += glyph.WidthUnits + GapUnits;
        }

        return figures.ToImmutable();
    }

    /// <summary>How wide a text is when drawn so: from its first letter's left edge to its last one's right edge.</summary>
    public static double WidthMm(Lettering lettering) => WidthUnits(lettering.Text) * Narrowing(lettering) * lettering.HeightMm / UnitsInHeight;

    private static IEnumerable<Figure> In(Figure figure) => figure switch
    {
        Lettering lettering => Of(lettering),
        Inset inset => [inset with { Figures = In(inset.Figures) }],
        _ => [figure],
    };

    private static double Narrowing(Lettering lettering)
    {
        var naturalMm = WidthUnits(lettering.Text) * lettering.HeightMm / UnitsInHeight;
        return naturalMm > 0 ? Math.Min(1, TextWidth.Of(lettering) / naturalMm) : 1;
    }

    private static double WidthUnits(string text) =>
        Math.Max(0, text.EnumerateRunes().Sum(character => GlyphOf(character).WidthUnits + GapUnits) - GapUnits);

    private static double PartBefore(TextAnchor anchor) => anchor switch { TextAnchor.Left => 0, TextAnchor.Middle => 0.5, _ => 1 };

    private static StrokeGlyph GlyphOf(Rune character) => Glyphs.GetValueOrDefault(character, Unknown);

    private static FrozenDictionary<Rune, StrokeGlyph> Read()
    {
        using var data = typeof(StrokeLetters).Assembly.GetManifestResourceStream("stroke-letters.txt")!;
        using var reader = new StreamReader(data, Encoding.UTF8);
        var glyphs = reader.ReadToEnd()
            .Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Where(line => !line.StartsWith("# ", StringComparison.Ordinal) || char.IsAsciiDigit(line[2]))
            .ToDictionary(line => line.EnumerateRunes().First(), line => StrokeGlyph.Read(line[2..]));
        glyphs[new(' ')] = new(SpaceUnits, []);
        foreach (var (fraction, digits) in Fractions)
        {
            glyphs[new(fraction)] = FractionOf(glyphs[new(digits[0])], glyphs[new(digits[1])]);
        }

        return glyphs.ToFrozenDictionary();
    }

    /// <summary>One small digit above, a slanted line, another below.</summary>
    private static StrokeGlyph FractionOf(StrokeGlyph above, StrokeGlyph below)
    {
        const double LineRoomUnits = 4.5;
        var belowAt = (above.WidthUnits * FractionScale) + LineRoomUnits;
        ImmutableArray<Point> line = [new((above.WidthUnits * FractionScale) - 1, 0), new(belowAt + 0.6, UnitsInHeight)];
        return new(
            belowAt + (below.WidthUnits * FractionScale),
            [
                .. above.Placed(FractionScale, new(0, UnitsInHeight * (1 - FractionScale))),
                line,
                .. below.Placed(FractionScale, new(belowAt, 0)),
            ]);
    }
}
