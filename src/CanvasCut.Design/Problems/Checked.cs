using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace CanvasCut.Design;

/// <summary>Either a value, or every problem that stood in its way.</summary>
/// <typeparam name="T">The kind of value.</typeparam>
public sealed class Checked<T>
    where T : class
{
    internal Checked(T? value, ImmutableArray<Problem> problems) => (Value, Problems) = (value, problems);

    /// <summary>The value, or null when there are problems.</summary>
    public T? Value { get; }

    /// <summary>The problems in the order of the file; empty when there is a value.</summary>
    public ImmutableArray<Problem> Problems { get; }

    /// <summary>Whether there is a value.</summary>
    [MemberNotNullWhen(true, nameof(Value))]
    public bool IsValid => Value is not null;

    /// <summary>The same outcome one step further on: the problems are carried along.</summary>
    public Checked<TNext> Then<TNext>(Func<T, TNext> next)
        where TNext : class => IsValid ? new(next(Value), []) : new(null, Problems);
}
