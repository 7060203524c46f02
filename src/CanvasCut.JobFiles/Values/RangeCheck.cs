using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>Holds a value against what is possible and what is usual.</summary>
internal static class RangeCheck
{
    /// <summary>Per cent.</summary>
    private const double MostShrink = 10;

    /// <summary>A tenth of the line that is cut along, a fifth of the thinnest foil there is.</summary>
    private const double LeastMm = 0.01;

    private const int FirstYear = 2000;
    private const int LastYear = 2100;

    /// <summary>Beyond so many times the usual, a value is no unusual job but another kind of job.</summary>
    private const double MostTimesUsual = 4;

    /// <summary>The value again, or null when it is out of range, which is reported.</summary>
    /// <param name="located">Where the value stands.</param>
    /// <param name="value">One value or a list of them.</param>
    /// <param name="isAccepted">Whether an unusual value was said to be meant.</param>
    public static object? Check(Located located, object? value, bool isAccepted) => value switch
    {
        (Length from, Length to) => One(located, from, isAccepted) is null || One(located, to, isAccepted) is null ? null : value,
        ImmutableArray<Length> list => All(located, list, isAccepted) ? value : null,
        DateOnly date => Day(located, date),
        IQuantity or int or double => One(located, value, isAccepted),
        _ => value,
    };

    /// <summary>A day within a lifetime of this program; a slip of a digit is seldom inside.</summary>
    private static object? Day(Located located, DateOnly date) =>
        date.Year is >= FirstYear and <= LastYear ? date : located.Report(ProblemCode.Impossible, Say.Of($"must lie between {FirstYear} and {LastYear}; check the year."));

    private static bool All(Located located, ImmutableArray<Length> list, bool isAccepted)
    {
        var nodes = ((TomlList)located.Node).Items;
        return list.Select((length, index) => One(located.Item(index, nodes[index]), length, isAccepted)).ToList().TrueForAll(length => length is not null);
    }

    private static object? One(Located located, object value, bool isAccepted)
    {
        var (range, kind) = (located.Field.Range, located.Field.Kind);
        var size = FieldKinds.SizeOf(kind, value);
        return range.Bound == Bound.Positive && size <= 0 ? located.Report(ProblemCode.Impossible, Say.Of("must be above zero."))
            : range.Bound == Bound.NotNegative && size < 0 ? located.Report(ProblemCode.Impossible, Say.Of("must not be below zero."))
            : IsTiny(located.Field, size)
                ? located.Report(ProblemCode.Impossible, range.Bound == Bound.NotNegative ? Say.Of("is less than 0.01 mm and yet not nought; write \"0 mm\", or a size that a tape can show.") : Say.Of("is less than 0.01 mm; write a size that a tape can show."))
            : FieldKinds.QuantityIn(kind)?.Limit is { } limit && limit.IsBeyond(size) ? located.Report(ProblemCode.Impossible, limit.Complaint)
            : kind == FieldKind.Percent && size >= MostShrink ? located.Report(ProblemCode.Impossible, Say.Of("must be below 10 %; cloth that shrinks so much is of no use here."))
            : range.IsLimited && Math.Abs(size) > MostTimesUsual * FieldKinds.SizeOf(kind, range.To) + Slack
                ? located.Report(ProblemCode.Impossible, Say.Of($"is more than four times what is usual, {range}; check the unit and the digits."))
            : range.IsLimited && !isAccepted && IsUnusual(kind, range, size) ? located.Report(ProblemCode.Unusual, Question(located, range))
            : value;
    }

    /// <summary>No tape shows so little, and shapes with edges so short cannot be told from those without.</summary>
    private static bool IsTiny(Field field, double size) =>
        field.Range.Bound != Bound.Any && FieldKinds.QuantityIn(field.Kind) == QuantityKinds.Length && size is > 0 and < LeastMm;

    private static bool IsUnusual(FieldKind kind, FieldRange range, double size) =>
        size < FieldKinds.SizeOf(kind, range.From) - Slack || size > FieldKinds.SizeOf(kind, range.To) + Slack;

    /// <summary>So that 9 ft or 5 kn at the very end of a range is not questioned for its last digit.</summary>
    private const double Slack = 1e-9;

    private static string Question(Located located, FieldRange range) =>
        Say.Of($"is outside the usual range, {range}; if it is really so, list \"{FieldPath.WithoutItem(located.Place.Field, located.Field)}\" in accept_unusual.");
}
