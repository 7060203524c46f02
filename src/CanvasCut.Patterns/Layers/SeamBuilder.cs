using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Patterns;

/// <summary>Sews part after part to what is there already, and keeps each seam with the plies under its needle.</summary>
/// <param name="ground">What lies there at first.</param>
/// <param name="join">How widths are joined.</param>
/// <param name="origin">Which point of the plan is the origin of the plane that is sewn in.</param>
internal sealed class SeamBuilder(IEnumerable<SewnLayer> ground, FelledSeam join, Point origin)
{
    private readonly List<SewnLayer> _layers = [.. ground];
    private readonly List<SewnSeam> _seams = [];

    public IReadOnlyList<SewnSeam> Seams => _seams;

    /// <summary>Adds plies that lie there; they are sewn through by what comes after.</summary>
    public void Lay(IEnumerable<SewnLayer> layers) => _layers.AddRange(layers);

    /// <summary>Sews rows through all that lies there.</summary>
    public void Sew(SeamKind kind, string name, ImmutableArray<PieceKey> pieces, IEnumerable<RowLine> rows, Side? edge = null) =>
        Add(kind, (name, name), pieces, Through(rows), edge);

    private ImmutableArray<SewnRow> Through(IEnumerable<RowLine> rows) => [.. rows.Select(row => row.Through(_layers))];

    /// <summary>Hems a piece by itself, then lays it at its place; its edges are not sewn on yet.</summary>
    /// <param name="piece">The piece as a whole.</param>
    /// <param name="cut">All pieces that are cut; the widths of this one are among them when it was split.</param>
    public void Lay(PatternPiece piece, IEnumerable<PatternPiece> cut)
    {
        var seams = FelledBands.SeamsOf(piece, cut);
        var flat = FelledBands.Sheet(piece, seams, join);
        _seams.AddRange(FelledBands.Rows(piece, seams, join));
        foreach (var (rows, kind, name) in new[] { (RowKind.Hem, SeamKind.Hems, Named(piece, name => Say.Of($"{name}, hems"))), (RowKind.Sleeve, SeamKind.Mount, Named(piece, name => Say.Of($"{name}, row beside the fold"))) })
        {
            var own = piece.Lines.Where(line => line.Use?.Kind == rows).ToList();
            if (own.Count > 0)
            {
                var folded = SewnLayer.Of(LayerKind.Cloth, flat.Folded(piece.Folds.Take(own[0].Use!.AfterFolds))).ToList();
                Add(kind, name, KeysOf(piece, seams), [.. own.Select(row => RowLine.Of(row).Through(folded))]);
            }
        }

        Lay(SewnLayer.Of(LayerKind.Cloth, flat.Folded(piece.Folds).MovedBy(StepOf(piece))));
    }

    /// <summary>Lays a piece at its place and sews its turned edges to what is there.</summary>
    public void SewOn(PatternPiece piece, IEnumerable<PatternPiece> cut, string onWhat)
    {
        ImmutableArray<PatternPiece> all = [.. cut];
        Lay(piece, all);
        Add(
            SeamKind.Edges,
            Named(piece, name => Say.Of($"{name}, edges {onWhat}")),
            KeysOf(piece, FelledBands.SeamsOf(piece, all)),
            Through(piece.Lines.Where(line => line.Use?.Kind == RowKind.Edge).Select(line => RowLine.Of(line.Mapped(point => point + StepOf(piece))))));
    }

    /// <summary>What a seam of a piece is called, and what it and its like are.</summary>
    private static (string Own, string Kind) Named(PatternPiece piece, Func<string, string> seam) => (seam(piece.Title.Name), seam(piece.Title.KindName));

    /// <summary>From a piece's plane to the plane that is sewn in, where nothing is shrunk.</summary>
    private Step StepOf(PatternPiece piece) => (piece.At ?? throw new ArgumentException($"{piece.Key} lies nowhere.", nameof(piece))).Move - (origin - new Point(0, 0));

    private static ImmutableArray<PieceKey> KeysOf(PatternPiece piece, ImmutableArray<double> seams) => seams.IsEmpty
        ? [piece.Key]
        : [.. Enumerable.Range(1, seams.Length + 1).Select(i => piece.Key with { Width = i })];

    private void Add(SeamKind kind, (string Own, string Kind) name, ImmutableArray<PieceKey> pieces, ImmutableArray<SewnRow> rows, Side? edge = null)
    {
        if (rows.Any(row => !row.Runs.IsEmpty))
        {
            _seams.Add(new(kind, name.Own, pieces, 1, rows) { KindName = name.Kind, Edge = edge });
        }
    }
}
