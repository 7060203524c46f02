using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Nesting;

/// <summary>All pieces of a task in all their turns, and the zones between each two, made when first asked for.</summary>
internal sealed class PieceCatalog
{
    private readonly Dictionary<(TurnedPiece Lying, TurnedPiece Coming), ForbiddenZone> _zones = new(ReferencePair.Instance);

    public PieceCatalog(NestingTask task)
    {
        Task = task;
        Turns = [.. Enumerable.Range(0, task.Items.Length).Select(item => TurnedPiece.Of(task, item))];
    }

    /// <summary>The task.</summary>
    public NestingTask Task { get; }

    /// <summary>For each item its turns.</summary>
    public ImmutableArray<ImmutableArray<TurnedPiece>> Turns { get; }

    /// <summary>The zone of places for one piece beside another that lies at the origin.</summary>
    public ForbiddenZone Zone(TurnedPiece lying, TurnedPiece coming)
    {
        if (!_zones.TryGetValue((lying, coming), out var zone))
        {
            zone = ForbiddenZone.Between(lying.Hull, coming.Hull, Task.GapMm);
            _zones.Add((lying, coming), zone);
        }

        return zone;
    }

    /// <summary>The zones that the task bars, as places for a piece.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="reachMm">How far along the strip other zones reach.</param>
    /// <param name="pastMm">Where only zones without an end are left.</param>
    public IEnumerable<ForbiddenZone> BarredFor(TurnedPiece piece, double reachMm, out double pastMm)
    {
        var bounds = piece.Hull.Bounds;
        var ends = Task.Barred.Select(zone => zone.Right).Where(double.IsFinite);
        var past = pastMm = ends.Append(0).Max() + Math.Max(reachMm, 0) + bounds.WidthMm + Math.Abs(bounds.Left);
        if (Task.Barred.IsEmpty)
        {
            pastMm = reachMm;
        }

        return Task.Barred
            .Select(zone => zone.Shared(new(-bounds.WidthMm, -bounds.HeightMm, past + (2 * bounds.WidthMm), Task.StripWidthMm + bounds.HeightMm)))
            .Where(zone => zone is { WidthMm: > 0, HeightMm: > 0 })
            .Select(zone => ForbiddenZone.Between(Outline.Of(zone), piece.Hull, 0));
    }

    /// <summary>Each piece is made once, so there is no need to compare what is in it.</summary>
    private sealed class ReferencePair : IEqualityComparer<(TurnedPiece Lying, TurnedPiece Coming)>
    {
        public static readonly ReferencePair Instance = new();

        public bool Equals((TurnedPiece Lying, TurnedPiece Coming) x, (TurnedPiece Lying, TurnedPiece Coming) y) =>
            ReferenceEquals(x.Lying, y.Lying) && ReferenceEquals(x.Coming, y.Coming);

        public int GetHashCode((TurnedPiece Lying, TurnedPiece Coming) obj) =>
            HashCode.Combine(obj.Lying.Item, obj.Lying.Pose, obj.Coming.Item, obj.Coming.Pose);
    }
}
