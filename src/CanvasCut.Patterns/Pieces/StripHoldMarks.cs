using CanvasCut.Design;
using CanvasCut.Geometry;

namespace CanvasCut.Patterns;

/// <summary>What is marked and sewn on a piece for what holds a weather strip's free edge.</summary>
internal static class StripHoldMarks
{
    /// <summary>Each arm of the cross at a snap's centre.</summary>
    private const double CrossMm = 5;

    /// <summary>The marks and rows on a piece that lies with the origin of its plane at a point of the plan.</summary>
    /// <param name="holding">What holds the strip.</param>
    /// <param name="origin">Where the piece's origin lies.</param>
    /// <param name="folds">How many of the piece's folds are made before a square is sewn on.</param>
    public static IEnumerable<PieceLine> Of(StripHolding holding, Point origin, int folds)
    {
        foreach (var (index, centre) in holding.Centres.Select(centre => new Point(0, 0) + (centre - origin)).Index())
        {
            var shows = index == 0 ? LineShows.Centres : LineShows.Nothing;
            yield return PieceLine.Straight(PieceLineKind.Mark, centre - new Step(CrossMm, 0), centre + new Step(CrossMm, 0), shows) with { Count = holding.Centres.Length };
            yield return PieceLine.Straight(PieceLineKind.Mark, centre - new Step(0, CrossMm), centre + new Step(0, CrossMm));
            foreach (var row in holding.Kind == StripHold.HookAndLoop ? RowsAround(centre, holding) : [])
            {
                yield return PieceLine.Row(row.From, row.To, new(RowKind.Mount, folds, Face: index));
            }
        }
    }

    /// <summary>The rows round a square, 3 mm inside its edge.</summary>
    public static IEnumerable<(Point From, Point To)> RowsAround(Point centre, StripHolding holding)
    {
        var side = (holding.Size - (StitchRows.FromFold * 2)).Millimeters;
        var corners = Outline.Of(Box.Around(centre, side, side)).Corners;
        return corners.Select((corner, i) => (corner, corners[(i + 1) % corners.Length]));
    }
}
