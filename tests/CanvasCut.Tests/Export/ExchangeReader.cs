using System.Collections.Immutable;
using System.Globalization;
using CanvasCut.Geometry;

namespace CanvasCut.Tests.Export;

/// <summary>One entity of an exchange file: its kind and its pairs, and for a polyline its vertices.</summary>
internal sealed record ExchangeEntity(string Kind, ImmutableDictionary<int, string> Pairs, ImmutableArray<Point> Vertices)
{
    public int Layer => int.Parse(Pairs[8], CultureInfo.InvariantCulture);

    public string Text => Pairs[1];

    public bool IsClosed => Pairs.GetValueOrDefault(70) == "1";

    public Point At(int code) => new(Number(code), Number(code + 10));

    public double Number(int code) => double.Parse(Pairs[code], NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
}

/// <summary>
/// A reader of pattern exchange files, written from public descriptions of ASTM D6673 and ANSI/AAMA-292 and sharing no code
/// with the writer: sections in order, blocks, what is inserted, and texts split at their first colon.
/// </summary>
internal sealed class ExchangeReader
{
    public ExchangeReader(string file)
    {
        var lines = file.Split('\n')[..^1];
        Assert.Equal(0, lines.Length % 2);
        var pairs = lines.Chunk(2).Select(pair => (Code: int.Parse(pair[0], CultureInfo.InvariantCulture), Value: pair[1])).ToList();
        Assert.Equal((0, "EOF"), pairs[^1]);
        var entities = Entities(pairs).ToList();
        Sections = [.. entities.Where(entity => entity.Kind == "SECTION").Select(entity => entity.Pairs[2])];
        HeaderLength = entities.FindIndex(entity => entity.Kind == "ENDSEC") - 1;
        Blocks = BlocksOf(entities);
        Modelspace = [.. entities.SkipWhile(entity => entity.Pairs.GetValueOrDefault(2) != "ENTITIES").Skip(1).Where(entity => entity.Kind is "INSERT" or "TEXT")];
    }

    public ImmutableArray<string> Sections { get; }

    public int HeaderLength { get; }

    public ImmutableArray<(string Name, ImmutableArray<ExchangeEntity> Entities)> Blocks { get; }

    /// <summary>What stands in the section ENTITIES.</summary>
    public ImmutableArray<ExchangeEntity> Modelspace { get; }

    public static ILookup<string, string> TextsOf(IEnumerable<ExchangeEntity> entities) => entities
        .Where(entity => entity is { Kind: "TEXT", Layer: 1 })
        .Select(entity => entity.Text.Split(':', 2))
        .ToLookup(parts => parts[0], parts => parts[1].Trim(), StringComparer.OrdinalIgnoreCase);

    private static ImmutableArray<(string Name, ImmutableArray<ExchangeEntity> Entities)> BlocksOf(List<ExchangeEntity> entities)
    {
        var blocks = ImmutableArray.CreateBuilder<(string, ImmutableArray<ExchangeEntity>)>();
        foreach (var (index, entity) in entities.Index().Where(each => each.Item.Kind == "BLOCK"))
        {
            blocks.Add((entity.Pairs[2], [.. entities.Skip(index + 1).TakeWhile(inside => inside.Kind != "ENDBLK")]));
        }

        return blocks.ToImmutable();
    }

    private static IEnumerable<ExchangeEntity> Entities(List<(int Code, string Value)> pairs)
    {
        var starts = pairs.Index().Where(each => each.Item.Code == 0).Select(each => each.Index).Append(pairs.Count).ToList();
        var all = starts.Zip(starts.Skip(1)).Select(range => (Kind: pairs[range.First].Value, Pairs: pairs[(range.First + 1)..range.Second])).ToList();
        for (var i = 0; i < all.Count; i++)
        {
            if (all[i].Kind is "VERTEX" or "SEQEND")
            {
                continue;
            }

            var vertices = all[i].Kind == "POLYLINE" ? all.Skip(i + 1).TakeWhile(next => next.Kind == "VERTEX").Select(vertex => Whole(vertex).At(10)) : [];
            yield return Whole(all[i]) with { Vertices = [.. vertices] };
        }
    }

    private static ExchangeEntity Whole((string Kind, List<(int Code, string Value)> Pairs) raw) =>
        new(raw.Kind, raw.Pairs.ToImmutableDictionary(pair => pair.Code, pair => pair.Value), []);
}
