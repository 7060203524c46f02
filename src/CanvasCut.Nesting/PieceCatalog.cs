using System.Collections.Immutable;

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

    /// <summary>Each piece is made once, so there is no need to compare what is in it.</summary>
    private sealed class ReferencePair : IEqualityComparer<(TurnedPiece Lying, TurnedPiece Coming)>
    {
        public static readonly ReferencePair Instance = new();

        public bool Equals((TurnedPiece Lying, TurnedPiece Coming) x, (TurnedPiece Lying, TurnedPiece Coming) y) =>
            ReferenceEquals(x.Lying, y.Lying) && ReferenceEquals(x.Coming, y.Coming);

        public int GetHashCode((TurnedPiece Lying, TurnedPiece Coming) obj) =>
            HashCode.Combine(obj.Lying.Item, obj.Lying.Quarters, obj.Coming.Item, obj.Coming.Quarters);
    }
}
