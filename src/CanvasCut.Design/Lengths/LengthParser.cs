using System.Globalization;
using CanvasCut.Language;
using static CanvasCut.Design.LengthTokenKind;

namespace CanvasCut.Design;

/// <summary>Reads one length: a sign, a number with its unit, and after feet also inches.</summary>
internal sealed class LengthParser
{
    /// <summary>Decimals of a millimetre that are kept; 1/64 in needs six.</summary>
    public const int Decimals = 9;

    private static string NeedsUnit => Say.Of("needs a unit, such as \"1040 mm\" or \"41 in\"");
    private const decimal Longest = 10_000_000;

    private readonly List<LengthToken> _tokens;
    private int _at;
    private string? _reason;

    private LengthParser(List<LengthToken> tokens) => _tokens = tokens;

    private LengthToken? Next => _at < _tokens.Count ? _tokens[_at] : null;

    public static LengthReading Parse(string text)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return LengthReading.Not(Say.Of("is empty; write a number and a unit, such as \"1040 mm\" or \"41 in\""));
        }

        if (LengthDoubts.Of(text) is { } doubt)
        {
            return LengthReading.Not(doubt);
        }

        var parser = new LengthParser(LengthToken.AllOf(text));
        var millimetres = parser.Signed();
        return parser._reason is { } reason ? LengthReading.Not(reason)
            : Math.Abs(millimetres) > Longest ? LengthReading.Not(Say.Of("is longer than ten kilometres"))
            : LengthReading.Of(Math.Round(millimetres, Decimals) is var kept && kept == 0 ? 0 : kept);
    }

    private decimal Signed()
    {
        var isNegative = Take(Dash);
        var plus = Next is { Kind: Other, Text: "+" };
        _at += plus && !isNegative ? 1 : 0;
        var length = Whole();
        return isNegative ? -length : length;
    }

    private decimal Whole()
    {
        var (number, unit) = Quantity();
        if (_reason is not null || Next is null)
        {
            return number * unit;
        }

        if (Next is { Kind: Unit } second)
        {
            return Fail(Say.Of($"has two units, and the second, {second.Text}, has no number; write one"));
        }

        _ = Take(Dash);
        var (inches, inch) = Quantity();
        return _reason is not null ? 0
            : unit == LengthUnits.Inch && inch == LengthUnits.Foot ? Fail(Say.Of("has inches before feet; write the feet first"))
            : unit != LengthUnits.Foot || inch != LengthUnits.Inch ? Fail(Say.Of("mixes units that do not go together; only feet and inches do"))
            : Next is not null ? Fail(Say.Of($"has \"{Next.Value.Text}\" after the inches; write one length"))
            : number != decimal.Truncate(number) ? Fail(Say.Of("has a part of a foot and inches as well; write whole feet before inches"))
            : inches >= 12 ? Fail(Say.Of("has 12 inches or more after the feet; write the inches below 12"))
            : (number * unit) + (inches * inch);
    }

    private (decimal Number, decimal Unit) Quantity()
    {
        var number = Mixed();
        if (_reason is not null)
        {
            return default;
        }

        if (Next is not { Kind: Unit } unit)
        {
            Fail(Next is { Kind: Number } ? Say.Of("has two numbers before the unit; leave out spaces inside a number") : NeedsUnit);
            return default;
        }

        _at++;
        if (LengthUnits.MillimetresIn(unit.Text) is { } size)
        {
            return (number, size);
        }

        Fail(LengthUnits.Unknown(unit.Text));
        return default;
    }

    /// <summary>41, 41.5, 1/2, 41 1/2 or 41-1/2.</summary>
    private decimal Mixed()
    {
        var first = Plain();
        if (_reason is not null)
        {
            return 0;
        }

        if (Next is { Kind: Slash })
        {
            return Fraction(first);
        }

        if (!IsNext(Number, Slash) && !IsNext(Dash, Number, Slash))
        {
            return first;
        }

        _ = Take(Dash);
        var fraction = Fraction(Plain());
        return _reason is not null ? 0
            : first != decimal.Truncate(first) ? Fail(Say.Of("has decimals and a fraction; write one of them"))
            : fraction >= 1 ? Fail(Say.Of("has a fraction of one or more after the whole number; write it below one"))
            : first + fraction;
    }

    private decimal Fraction(decimal numerator)
    {
        if (!Take(Slash))
        {
            return 0;
        }

        var denominator = Plain();
        return _reason is not null ? 0
            : denominator == 0 ? Fail(Say.Of("divides by zero"))
            : numerator % 1 != 0 || denominator % 1 != 0 ? Fail(Say.Of("has decimals in a fraction; write whole numbers above and below the stroke"))
            : numerator / denominator;
    }

    private decimal Plain()
    {
        if (Next is not { Kind: Number } token)
        {
            return Fail(Say.Of("is not a length; write a number and a unit, such as \"1040 mm\" or \"41 in\""));
        }

        _at++;
        return !decimal.TryParse(token.Text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            ? Fail(Say.Of($"has a number that cannot be read, {token.Text}"))
            : number > Longest ? Fail(Say.Of("is longer than ten kilometres")) : number;
    }

    private bool IsNext(params LengthTokenKind[] kinds) => _tokens.Skip(_at).Take(kinds.Length).Select(token => token.Kind).SequenceEqual(kinds);

    private bool Take(LengthTokenKind kind)
    {
        var isThere = Next?.Kind == kind;
        _at += isThere ? 1 : 0;
        return isThere;
    }

    private decimal Fail(string reason)
    {
        _reason ??= reason;
        return 0;
    }
}
