using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>What a text says as a length, or why it says none.</summary>
/// <param name="Value">The length; null when the text is not one.</param>
/// <param name="Reason">What is wrong, to stand behind the quoted text; null when there is a length.</param>
public sealed record LengthReading(Length? Value, string? Reason)
{
    /// <summary>Whether the text is a length.</summary>
    [MemberNotNullWhen(true, nameof(Value))]
    [MemberNotNullWhen(false, nameof(Reason))]
    public bool IsLength => Value is not null;

    internal static LengthReading Of(decimal millimetres) => new(Length.FromMillimeters((double)millimetres), null);

    internal static LengthReading Not(string reason) => new(null, reason);
}
