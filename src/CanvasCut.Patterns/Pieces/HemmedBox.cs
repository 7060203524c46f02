using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>How one edge of a rectangular piece is turned.</summary>
/// <param name="TurnUnder">The raw edge folded in first.</param>
/// <param name="Width">The hem that shows; zero for an edge that is turned once.</param>
public sealed record EdgeTurn(Length TurnUnder, Length Width)
{
    /// <summary>An edge that is not turned at all.</summary>
    public static EdgeTurn None { get; } = new(Length.Zero, Length.Zero);

    /// <summary>The cloth beyond the finished edge.</summary>
    public Length Allowance => TurnUnder + Width;

    /// <summary>A hem.</summary>
    public static EdgeTurn Of(Hem hem) => new(hem.TurnUnder, hem.Width);

    /// <summary>A single turn.</summary>
    public static EdgeTurn Once(Length allowance) => new(allowance, Length.Zero);
}

/// <summary>A rectangular piece with turned edges: the outline to cut, and the folds and rows that make it.</summary>
public sealed class HemmedBox
{
    /// <summary>The cloth kept outside the fold of a mitre; 1/4 in, taken as 6 mm; common practice.</summary>
    public static readonly Length KeptAtMitre = Length.FromMillimeters(6);

    private static readonly ImmutableArray<Side> EdgeOrder = [Side.Aft, Side.Starboard, Side.Forward, Side.Port];

    private readonly Sides<EdgeTurn> _turns;
    private readonly bool _isMitred;
    private readonly Side? _last;

    /// <summary>Works out a piece.</summary>
    /// <param name="finished">The finished piece, in millimetres.</param>
    /// <param name="turns">How each edge is turned.</param>
    /// <param name="corner">How two hems, or two edges turned once, meet; any other corner stays square.</param>
    /// <param name="last">Without mitres the edge whose hem is folded last, over the ends of the others; null for port and starboard.</param>
    /// <param name="kept">The cloth kept outside the fold of a mitre; null for <see cref="KeptAtMitre"/>.</param>
    public HemmedBox(Box finished, Sides<EdgeTurn> turns, CornerKind corner, Side? last = null, Length? kept = null)
    {
        (_turns, _isMitred, _last, Finished) = (turns, corner == CornerKind.Mitred, last, Outline.Of(finished));
        var squareCut = Outset.By(Finished, [.. EdgeOrder.Select(side => turns[side].Allowance.Millimeters)])
            ?? throw new InvalidOperationException("A box set out is a box.");
        Cut = CornerTrim.By(squareCut, [.. MitredCorners.Select(i => MitreLine(i, (kept ?? KeptAtMitre).Millimeters))]);
    }

    /// <summary>The finished outline.</summary>
    public Outline Finished { get; }

    /// <summary>The outline to cut.</summary>
    public Outline Cut { get; }

    private IEnumerable<int> MitredCorners => Enumerable.Range(0, 4).Where(i => _isMitred && IsMitre(Before(i), After(i)));

    /// <summary>The folds: the finished edge, the raw edge's turn outside it, and the mitres.</summary>
    public ImmutableArray<PieceLine> Folds() => [.. FoldLines()];

    private IEnumerable<PieceLine> FoldLines()
    {
        foreach (var side in EdgeOrder.Where(side => _turns[side].Allowance.Millimeters > 0))
        {
            yield return Beside(side, 0, LineShows.FinishedEdge);
            if (_turns[side] is { Width.Millimeters: > 0, TurnUnder.Millimeters: > 0 })
            {
                yield return Beside(side, _turns[side].Width.Millimeters, LineShows.TurnUnder);
            }
        }

        foreach (var corner in MitredCorners)
        {
            yield return Across(MitreLine(corner, 0), LineShows.Mitre);
        }
    }

    /// <summary>The folds in the order in which they are made.</summary>
    /// <remarks>
    /// With a mitre all raw edges are turned under, then the corners folded, then the hems. Without one the forward and aft
    /// hems are finished before the port and starboard ones go over them. Edges turned once come last.
    /// </remarks>
    public ImmutableArray<HalfPlane> FoldOrder
    {
        get
        {
            Side[] hemmed = [.. new[] { Side.Forward, Side.Aft, Side.Port, Side.Starboard }.Where(side => _turns[side].Width.Millimeters > 0).OrderBy(side => side == _last)];
            var hems = MitredCorners.Any()
                ? hemmed.SelectMany(TurnUnder).Concat(MitredCorners.Select(corner => MitreLine(corner, 0))).Concat(hemmed.Select(side => FoldAt(side, 0)))
                : hemmed.SelectMany(side => TurnUnder(side).Append(FoldAt(side, 0)));
            return [.. hems, .. OnceTurned.Select(side => FoldAt(side, 0))];
        }
    }

    private IEnumerable<Side> OnceTurned => EdgeOrder.Where(side => _turns[side] is { Width.Millimeters: 0, TurnUnder.Millimeters: > 0 });

    /// <summary>The rows that hold the turned edges: hems near their inner fold, single turns near the finished edge.</summary>
    /// <param name="rows">How many rows on an edge turned once; a hem has one.</param>
    public ImmutableArray<PieceLine> Rows(int rows) => [.. RowLines(rows)];

    private IEnumerable<PieceLine> RowLines(int rows)
    {
        var all = FoldOrder.Length;
        foreach (var (index, side) in EdgeOrder.Index())
        {
            var width = _turns[side].Width.Millimeters;
            if (width > 0)
            {
                yield return FinishedRow(index, width - StitchRows.FromFold.Millimeters, new(RowKind.Hem, all - OnceTurned.Count(), Face: index));
            }
            else if (_turns[side].TurnUnder.Millimeters > 0)
            {
                foreach (var row in EdgeRows(index, rows))
                {
                    yield return row;
                }
            }
        }
    }

    /// <summary>The rows along all four edges of a piece that is sewn down all round, whether its edges are turned or sealed.</summary>
    /// <param name="rows">How many on each edge.</param>
    public ImmutableArray<PieceLine> EdgeRows(int rows) => [.. Enumerable.Range(0, EdgeOrder.Length).SelectMany(index => EdgeRows(index, rows))];

    private IEnumerable<PieceLine> EdgeRows(int index, int rows) => Enumerable.Range(0, rows)
        .Select(row => FinishedRow(index, StitchRows.DistanceFromFold(row).Millimeters, new(RowKind.Edge, FoldOrder.Length, Face: index)));

    /// <summary>Two hems are mitred, and two edges turned once; a hem and a single turn are not.</summary>
    private static bool IsMitre(EdgeTurn before, EdgeTurn after) =>
        before.Allowance > Length.Zero && after.Allowance > Length.Zero && (before.Width > Length.Zero) == (after.Width > Length.Zero);

    private EdgeTurn Before(int corner) => _turns[EdgeOrder[(corner + 3) % 4]];

    private EdgeTurn After(int corner) => _turns[EdgeOrder[corner]];

    private HalfPlane MitreLine(int corner, double outsideMm)
    {
        var depths = (Before(corner).Allowance.Millimeters, After(corner).Allowance.Millimeters);
        return CornerTrim.Mitre(Finished, corner, depths, outsideMm);
    }

    private IEnumerable<HalfPlane> TurnUnder(Side side) =>
        _turns[side].TurnUnder.Millimeters > 0 ? [FoldAt(side, _turns[side].Width.Millimeters)] : [];

    /// <summary>A fold parallel to a finished edge, so far outside it.</summary>
    private PieceLine Beside(Side side, double outMm, LineShows shows) => Across(FoldAt(side, outMm), shows);

    private HalfPlane FoldAt(Side side, double outMm)
    {
        var index = EdgeOrder.IndexOf(side);
        var along = (Finished[index + 1] - Finished[index]).Unit();
        return new(Finished[index] - (along.Left * outMm), along);
    }

    /// <summary>A fold from cut edge to cut edge.</summary>
    private PieceLine Across(HalfPlane line, LineShows shows)
    {
        var (from, to) = Cut.Chord(line) ?? throw new InvalidOperationException("A fold lies on its piece.");
        return PieceLine.Straight(PieceLineKind.Fold, from, to, shows);
    }

    /// <summary>A row inside the finished outline, parallel to an edge and ending where the neighbours' finished edges are.</summary>
    private PieceLine FinishedRow(int index, double inMm, RowUse use)
    {
        var along = (Finished[index + 1] - Finished[index]).Unit();
        return PieceLine.Row(Finished[index] + (along.Left * inMm), Finished[index + 1] + (along.Left * inMm), use);
    }
}
