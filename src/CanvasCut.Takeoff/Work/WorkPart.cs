using System.Text.Json;
using CanvasCut.Design;
using CanvasCut.Patterns;

namespace CanvasCut.Takeoff;

/// <summary>A thing in one state, which a step makes and later ones use. It is known by thing and state, and put into words when it is printed.</summary>
public sealed class WorkPart : IEquatable<WorkPart>
{
    private readonly WorkState _state;
    private readonly WorkThing? _thing;
    private readonly Func<string> _words;

    internal WorkPart(WorkState state, WorkThing? thing, Func<string> words) => (_state, _thing, _words) = (state, thing, words);

    /// <summary>The same thing of one of several carriers; what the top has once, and a piece, which says whose it is, stay as they are.</summary>
    internal WorkPart Of(MountingName whose) => IsTheTops || _thing?.Piece is not null ? this : new(_state, (_thing ?? new(null)) with { Of = whose }, () => $"{whose}: {_words()}");

    private bool IsTheTops => _state is WorkState.Measures or WorkState.Templates or WorkState.TriedTemplates or WorkState.MarkedTop or WorkState.LooseTop or WorkState.StretchedTop;

    /// <inheritdoc/>
    public bool Equals(WorkPart? other) => other is not null && _state == other._state && _thing == other._thing;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as WorkPart);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(_state, _thing);

    /// <summary>As in "weather-strip-forward:ready", the same in every language; nothing finds a thing by it.</summary>
    public string Id => _thing is null ? WorkIds.Of(_state) : $"{_thing.Id}:{WorkIds.Of(_state)}";

    /// <summary>In words, in the language of the moment.</summary>
    public override string ToString() => _words();
}

/// <summary>How states and places are written where no language counts.</summary>
internal static class WorkIds
{
    /// <summary>As in flat-carrier.</summary>
    public static string Of<T>(T value)
        where T : struct, Enum => JsonNamingPolicy.KebabCaseLower.ConvertName(value.ToString());
}

/// <summary>A piece, or what lies along an edge without being one.</summary>
/// <param name="Piece">The piece; null for a zipper or a tape.</param>
/// <param name="Edge">The edge it lies along; null for a piece.</param>
internal sealed record WorkThing(PieceKey? Piece, Side? Edge = null)
{
    /// <summary>Whose it is; a piece says so itself.</summary>
    public MountingName Of { get; init; }

    /// <summary>As in weather-strip-forward, edge-aft or port-edge-aft, the same in every language.</summary>
    public string Id => Piece?.Id ?? string.Join('-', Parts());

    private IEnumerable<string> Parts()
    {
        if (!Of.IsOnly)
        {
            yield return Of.Text;
        }

        if (Edge is { } edge)
        {
            yield return $"edge-{Words.Id(edge)}";
        }
    }

    /// <summary>For a message to the one who writes steps.</summary>
    public override string ToString() => Piece?.Id ?? $"{Edge} edge";
}

/// <summary>What has been done to it.</summary>
internal enum WorkState
{
    Measures,
    Templates,
    TriedTemplates,
    FlatCarrier,
    HemmedCarrier,
    CappedZippers,
    LaidPanel,
    CuredPanel,
    ProvedCarrier,
    FinishedCarrier,
    TapedZippers,
    MarkedTop,
    LooseTop,
    StretchedTop,
    Fitted,
    Wired,
    Tested,
    Done,
    TapedCarrier,
    Cut,
    Marked,
    Joined,
    Ready,
    Trimmed,
    OnCarrier,
    SetInCarrier,
    SetOnTop,
    RodOf,
    OnTop,
    BushedCarrier,
}
