using CanvasCut.Design;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>What a check found.</summary>
public enum Verdict
{
    /// <summary>It holds.</summary>
    Pass,

    /// <summary>It holds, or may not matter, but the sewist should know.</summary>
    Caution,

    /// <summary>It does not hold.</summary>
    Fail,

    /// <summary>Something was not given; the advice names it.</summary>
    NotChecked,
}

/// <summary>What a check measured that is no length.</summary>
/// <param name="Value">What was found.</param>
/// <param name="Limit">What it is held against, of the same kind; null when there is no figure.</param>
public sealed record Reading(IQuantity Value, IQuantity? Limit);

/// <summary>What a check measured.</summary>
/// <param name="Value">The length that was found; null when no length was measured.</param>
/// <param name="Limit">What it is held against; null when there is no figure.</param>
/// <param name="IsAtLeast">Whether the value must be at least the limit; otherwise at most.</param>
public sealed record Measured(Length? Value, Length? Limit, bool IsAtLeast)
{
    /// <summary>Nothing was measured.</summary>
    public static Measured Nothing { get; } = new(null, null, IsAtLeast: true);

    /// <summary>What was found that is no length; null for a length or nothing.</summary>
    public Reading? Reading { get; private init; }

    /// <summary>
    /// How much there is to spare, in millimetres; of what is no length as a part of the limit. Null without both figures.
    /// </summary>
    public double? ToSpare() => (Reading, Value, Limit) switch
    {
        ({ Limit: { } limit } reading, _, _) => Signed(Plain(reading.Value) - Plain(limit)) / Math.Max(Math.Abs(Plain(limit)), 1),
        (null, { } value, { } limit) => Signed((value - limit).Millimeters),
        _ => null,
    };

    /// <summary>Whether the value keeps to the limit, to a thousandth of a millimetre, or a thousandth part of a thousandth.</summary>
    public bool Holds => ToSpare() is not { } spare || spare >= (Reading is null ? -1e-3 : -1e-6);

    /// <summary>A value that must be at least a limit.</summary>
    public static Measured AtLeast(Length value, Length limit) => new(value, limit, IsAtLeast: true);

    /// <summary>A value that must be at most a limit.</summary>
    public static Measured AtMost(Length value, Length limit) => new(value, limit, IsAtLeast: false);

    /// <summary>A value that is no length and must be at least a limit.</summary>
    public static Measured AtLeast<T>(T value, T limit)
        where T : struct, IQuantity => new(null, null, IsAtLeast: true) { Reading = new(value, limit) };

    /// <summary>A value that is no length and must be at most a limit.</summary>
    public static Measured AtMost<T>(T value, T limit)
        where T : struct, IQuantity => new(null, null, IsAtLeast: false) { Reading = new(value, limit) };

    /// <summary>A value that is no length and is held against nothing.</summary>
    public static Measured Found<T>(T value)
        where T : struct, IQuantity => new(null, null, IsAtLeast: true) { Reading = new(value, null) };

    private static double Plain(IQuantity quantity) => QuantityWords.Plain(quantity).Number;

    private double Signed(double beyond) => IsAtLeast ? beyond : -beyond;
}

/// <summary>One check on one thing.</summary>
/// <param name="Code">Stable, listed in docs/checks.md.</param>
/// <param name="Subject">What was checked, in plain words.</param>
/// <param name="Verdict">What was found.</param>
/// <param name="Measured">The figures.</param>
/// <param name="Source">Where the limit comes from.</param>
/// <param name="Advice">What to do about it; empty for a pass that needs no word.</param>
public sealed record CheckResult(string Code, string Subject, Verdict Verdict, Measured Measured, string Source, string Advice)
{
    /// <summary>What it is about, by what it is.</summary>
    public CheckSubject About { get; private init; } = CheckSubject.None;

    /// <summary>The same about some things on the top.</summary>
    internal CheckResult On(params IEnumerable<PartKey> parts) => this with { About = new([.. parts]) };

    /// <summary>A pass when the measure keeps to its limit; else another verdict, with advice.</summary>
    internal static CheckResult Judged((string Code, string Subject) what, Measured measured, Verdict otherwise, string source, string advice) => measured.Holds
        ? new(what.Code, what.Subject, Verdict.Pass, measured, source, string.Empty)
        : new(what.Code, what.Subject, otherwise, measured, source, advice);
}
