using System.Globalization;
using System.Text.RegularExpressions;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>One kind of quantity: how people write it, how it is read, compared, rounded and printed.</summary>
/// <remarks>All there are stand in <see cref="QuantityKinds"/>.</remarks>
public abstract partial class QuantityKind
{
    private readonly Func<string> _name;

    private protected QuantityKind(string example, Func<string> name) => (Example, _name) = (example, name);

    /// <summary>A text that is one, as in "2.3 kg".</summary>
    public string Example { get; }

    /// <summary>What to write, in the language of the run: "a mass in kg, g, lb or oz".</summary>
    public string Name => _name();

    /// <summary>What no quantity of this kind can be beyond; null without such a limit.</summary>
    public NaturalLimit? Limit { get; internal init; }

    /// <summary>The kind of a quantity.</summary>
    /// <exception cref="ArgumentException">The table has no row for it.</exception>
    public static QuantityKind Of(IQuantity quantity) =>
        QuantityKinds.All.FirstOrDefault(kind => kind.Has(quantity)) ?? throw new ArgumentException($"{quantity.QuantityInfo.Name} is no known kind of quantity.", nameof(quantity));

    /// <summary>Whether a quantity is of this kind.</summary>
    public abstract bool Has(IQuantity quantity);

    /// <summary>Reads a number and its unit; null when the text is none.</summary>
    public abstract IQuantity? Parse(string text);

    /// <summary>The number in the unit that results.json gives, with that unit; by it two of a kind are compared.</summary>
    /// <exception cref="InvalidCastException">The quantity is of another kind.</exception>
    public abstract (double Number, string Unit) Plain(IQuantity quantity);

    /// <summary>As in "35 kn (18 m/s)"; rounded for reading, never for reckoning.</summary>
    /// <exception cref="InvalidCastException">The quantity is of another kind.</exception>
    public abstract string Print(IQuantity quantity, RoundTo way);

    /// <summary>A number and what stands behind it; null when the text is not so.</summary>
    private protected static (double Number, string Unit)? Split(string text)
    {
        var match = NumberAndUnit().Match(text);
        return match.Success
            ? (double.Parse(match.Groups[1].ValueSpan, CultureInfo.InvariantCulture), match.Groups[2].Value)
            : null;
    }

    [GeneratedRegex(@"^\s*(-?[0-9]{1,9}(?:\.[0-9]{1,9})?)\s*([a-zA-Z/%°Ω]*)\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex NumberAndUnit();
}

/// <summary>What nature allows of a kind of quantity.</summary>
public sealed class NaturalLimit
{
    private readonly (double Least, double Most) _ends;
    private readonly Func<string> _complaint;

    internal NaturalLimit(double least, double most, Func<string> complaint) => (_ends, _complaint) = ((least, most), complaint);

    /// <summary>What is said of anything beyond, in the language of the run.</summary>
    public string Complaint => _complaint();

    /// <summary>Whether a number in the plain unit lies beyond.</summary>
    public bool IsBeyond(double number) => number < _ends.Least || number > _ends.Most;
}

/// <summary>One kind of quantity, with its type.</summary>
/// <typeparam name="T">The type that holds it.</typeparam>
public class QuantityKind<T> : QuantityKind
    where T : struct, IQuantity
{
    private readonly UnitOf<T>[] _units;

    internal QuantityKind(string example, Func<string> name, params UnitOf<T>[] units)
        : base(example, name) => _units = units;

    /// <inheritdoc/>
    public sealed override bool Has(IQuantity quantity) => quantity is T;

    /// <inheritdoc/>
    public sealed override IQuantity? Parse(string text) => Read(text);

    /// <summary>Reads a number and its unit; null when the text is none.</summary>
    public virtual T? Read(string text) =>
        Split(text) is var (number, word) && Array.Find(_units, unit => unit.Words.Contains(word, StringComparer.Ordinal)) is { } found ? found.From(number) : null;

    /// <inheritdoc/>
    public sealed override (double Number, string Unit) Plain(IQuantity quantity) => (_units[0].In((T)quantity), _units[0].Words[0]);

    /// <inheritdoc/>
    public sealed override string Print(IQuantity quantity, RoundTo way) => Text((T)quantity, way);

    /// <summary>In every unit that is printed, the second in brackets.</summary>
    private protected virtual string Text(T quantity, RoundTo way) => Bracketed(unit => unit.Print(quantity, way));

    /// <summary>In whole numbers, in the units asked for: the first that is printed is the metric one.</summary>
    internal string Whole(T quantity, PrintUnits units, RoundTo way)
    {
        var printed = Array.FindAll(_units, unit => !unit.IsReadOnly);
        return units switch
        {
            PrintUnits.Metric => printed[0].PrintWhole(quantity, way),
            PrintUnits.Imperial => printed[^1].PrintWhole(quantity, way),
            _ => Bracketed(unit => unit.PrintWhole(quantity, way)),
        };
    }

    private string Bracketed(Func<UnitOf<T>, string> print)
    {
        string[] texts = [.. _units.Where(unit => !unit.IsReadOnly).Select(print)];
        return texts.Length == 1 ? texts[0] : $"{texts[0]} ({texts[1]})";
    }
}
