using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Nesting;

/// <summary>Pieces placed one after another, each as far left, then as low, as it goes.</summary>
internal sealed class PlacedRow(PieceCatalog catalog)
{
    private readonly List<(TurnedPiece Piece, Step Offset)> _placed = [];

    /// <summary>How far the pieces reach.</summary>
    public double LengthMm { get; private set; }

    /// <summary>Places the pieces in order; null when they reach as far as a limit, or further.</summary>
    public static PlacedRow? Of(PieceCatalog catalog, ImmutableArray<PieceChoice> order, double belowMm)
    {
        var row = new PlacedRow(catalog);
        foreach (var choice in order)
        {
            row.Place(choice);
            if (row.LengthMm >= belowMm)
            {
                return null;
            }
        }

        return row;
    }

    /// <summary>The layout of the pieces placed.</summary>
    public NestingLayout ToLayout()
    {
        var copies = new int[catalog.Task.Items.Length];
        return new(catalog.Task, [.. _placed.Select(p => new NestingPlacement(p.Piece.Item, copies[p.Piece.Item]++, p.Piece.Pose, p.Offset))]);
    }

    private void Place(PieceChoice choice)
    {
        var turns = catalog.Turns[choice.Item];
        var (best, bestOffset) = (turns[0], default(Step));
        var bestRight = double.PositiveInfinity;
        foreach (var piece in choice.Turn == PieceChoice.AnyTurn ? turns : [turns[choice.Turn]])
        {
            var offset = OffsetOf(piece);
            var right = piece.Hull.Bounds.Right + offset.X;
            if (IsBetter((right, LeftAndBottom(piece, offset)), (bestRight, LeftAndBottom(best, bestOffset))))
            {
                (best, bestOffset, bestRight) = (piece, offset, right);
            }
        }

        _placed.Add((best, bestOffset));
        LengthMm = Math.Max(LengthMm, bestRight);
    }

    private static Point LeftAndBottom(TurnedPiece piece, Step offset) => piece.Hull.Bounds.MovedBy(offset).LowerLeft;

    private static bool IsBetter((double Right, Point Corner) one, (double Right, Point Corner) other)
    {
        var differences = (one.Right - other.Right, one.Corner.X - other.Corner.X, one.Corner.Y - other.Corner.Y);
        return differences switch
        {
            ( < -FreePlace.SameMm, _, _) => true,
            ( > FreePlace.SameMm, _, _) => false,
            (_, < -FreePlace.SameMm, _) => true,
            (_, > FreePlace.SameMm, _) => false,
            (_, _, < -FreePlace.SameMm) => true,
            _ => false,
        };
    }

    private Step OffsetOf(TurnedPiece piece)
    {
        var zones = new List<ForbiddenZone>(_placed.Count);
        foreach (var (lying, offset) in _placed)
        {
            zones.Add(catalog.Zone(lying, piece).MovedBy(offset));
        }

        var reachMm = zones.Count == 0 ? 0 : zones.Max(zone => zone.Bounds.Right);
        zones.AddRange(catalog.BarredFor(piece, reachMm, out var pastMm));
        return PlaceOf(piece, piece.PlacesOn(catalog.Task.StripWidthMm, pastMm), zones) - new Point(0, 0);
    }

    /// <summary>Past all zones there is always room; with a repeat, at the first multiple past them.</summary>
    private Point PlaceOf(TurnedPiece piece, Box box, List<ForbiddenZone> zones)
    {
        var repeatMm = catalog.Task.RepeatMm;
        if (repeatMm <= 0)
        {
            return FreePlace.Find(box, zones) ?? throw new InvalidOperationException("There is always room past all zones.");
        }

        for (var start = 0.0; ; start++)
        {
            var x = (start * repeatMm) - piece.Hull.Bounds.Left;
            if (FreePlace.Find(box with { Left = x, Right = x }, zones) is { } place)
            {
                return place;
            }
        }
    }
}
