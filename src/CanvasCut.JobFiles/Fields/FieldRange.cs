using CanvasCut.Language;

namespace CanvasCut.JobFiles;

/// <summary>What can be at all.</summary>
internal enum Bound
{
    /// <summary>Any sign.</summary>
    Any,

    /// <summary>Zero or more.</summary>
    NotNegative,

    /// <summary>Above zero.</summary>
    Positive,
}

/// <summary>What a field's value can be, and what it usually is; both ends usual too, empty for no usual range.</summary>
internal sealed record FieldRange(Bound Bound, string From, string To)
{
    public static FieldRange Any { get; } = new(Bound.Any, string.Empty, string.Empty);

    public bool IsLimited => From.Length > 0;

    /// <summary>Above zero, and no size of it is questioned.</summary>
    public static FieldRange Positive { get; } = new(Bound.Positive, string.Empty, string.Empty);

    public static FieldRange Size(string from, string to) => new(Bound.Positive, from, to);

    public static FieldRange Reach(string from, string to) => new(Bound.NotNegative, from, to);

    public static FieldRange Signed(string from, string to) => new(Bound.Any, from, to);

    public override string ToString() => IsLimited ? Say.Of($"{From} to {To}") : string.Empty;
}
