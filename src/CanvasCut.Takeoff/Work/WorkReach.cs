using CanvasCut.Design;

namespace CanvasCut.Takeoff;

/// <summary>A place that a needle or a hand reaches or does not. It is known by what it is, and put into words when it is printed.</summary>
public sealed class WorkReach : IEquatable<WorkReach>
{
    private readonly ReachKind _kind;
    private readonly WorkThing? _under;
    private readonly Func<string> _words;

    internal WorkReach(ReachKind kind, WorkThing? under, Func<string> words) => (_kind, _under, _words) = (kind, under, words);

    /// <summary>Whether it is the cloth of the top under something that is sewn over it.</summary>
    public bool IsUnderPart => _kind == ReachKind.Under;

    /// <summary>The same place of one of several carriers; what the top has once, and what lies under a piece, stay as they are.</summary>
    internal WorkReach Of(MountingName whose) => _kind is ReachKind.TopStretched or ReachKind.TopUnderNeedle || _under?.Piece is not null
        ? this
        : new(_kind, (_under ?? new(null)) with { Of = whose }, () => $"{whose}: {_words()}");

    /// <inheritdoc/>
    public bool Equals(WorkReach? other) => other is not null && _kind == other._kind && _under == other._under;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as WorkReach);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(_kind, _under);

    /// <summary>As in "weather-strip-forward:under", the same in every language; nothing finds a place by it.</summary>
    public string Id => _under is null ? WorkIds.Of(_kind) : $"{_under.Id}:{WorkIds.Of(_kind)}";

    /// <summary>In words, in the language of the moment.</summary>
    public override string ToString() => _words();
}

/// <summary>Which place it is.</summary>
internal enum ReachKind
{
    CarrierUnderNeedle,
    TapeEnds,
    TopStretched,
    TopUnderNeedle,
    CarrierInPlace,
    Under,
}
