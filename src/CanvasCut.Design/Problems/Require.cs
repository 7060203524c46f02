using System.Runtime.CompilerServices;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>Throws at the programmer when a length is outside its range; the user is answered before, by the reader.</summary>
internal static class Require
{
    public static Length Positive(Length value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        value.Millimeters > 0 ? value : throw new ArgumentOutOfRangeException(name, value, "Must be above zero.");

    public static Length NotNegative(Length value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        value.Millimeters >= 0 ? value : throw new ArgumentOutOfRangeException(name, value, "Must not be below zero.");
}
