using System.Collections.Immutable;
using CanvasCut.Patterns;

namespace CanvasCut.Checks;

/// <summary>What a check is about, by what it is; the words for it stand in <see cref="CheckResult.Subject"/>.</summary>
/// <param name="Parts">The things it looked at; none where it is about no one thing on the top.</param>
public sealed record CheckSubject(ImmutableArray<PartKey> Parts)
{
    /// <summary>No one thing on the top.</summary>
    public static CheckSubject None { get; } = new([]);

    /// <inheritdoc/>
    public bool Equals(CheckSubject? other) => other is not null && Parts.SequenceEqual(other.Parts);

    /// <inheritdoc/>
    public override int GetHashCode() => Parts.Aggregate(0, HashCode.Combine);
}
