using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>Something that a carrier needs, as exactly as it is known: before it is rounded to what a shop sells.</summary>
/// <param name="Size">What tells it from others of its grade, in millimetres: a width, a thickness, a stock length.</param>
/// <param name="Thing">What to ask for.</param>
/// <param name="Amount">How much.</param>
/// <param name="Also">How that was come to.</param>
/// <param name="Use">What it is for.</param>
internal sealed record OrderNeed((double Mm, double AlsoMm) Size, OrderThing Thing, NeedAmount Amount, string Also, OrderUse Use);

/// <summary>An amount, and how a shop rounds it.</summary>
/// <param name="Exact">So many, or so many millimetres.</param>
/// <param name="Sold">What is bought for such an amount, and the rule.</param>
internal sealed record NeedAmount(double Exact, Func<double, (Bought Bought, string Rounding)> Sold)
{
    public static NeedAmount Of(Length length, SoldLength sold, PrintUnits units) => new(length.Millimeters, mm => SoldBy.Of(Length.FromMillimeters(mm), sold, units));

    public static NeedAmount Of(int count, PackGrade grade) => new(count, number => SoldBy.Of((int)Math.Round(number), grade));

    /// <summary>What is bought when it is needed so often.</summary>
    public (Bought Bought, string Rounding) Times(int sets) => Sold(Exact * sets);

    /// <summary>Both together, rounded once.</summary>
    public NeedAmount And(NeedAmount other) => this with { Exact = Exact + other.Exact };
}

/// <summary>Adds up what several carriers need, and rounds the sums: a roll, a spool or a pack serves all of them.</summary>
internal static class NeedSums
{
    /// <summary>The lines for what each carrier needs of a sort, in the order in which it is first asked for.</summary>
    public static IEnumerable<OrderLine> Of(MadeTogether made, Func<PatternSet, IEnumerable<OrderNeed>> needs) =>
        from need in made.Carriers.SelectMany(carrier => needs(carrier).Select(need => (Carrier: carrier, Need: need)))
        group need by (need.Need.Thing.Grade, Rounded(need.Need.Size.Mm), Rounded(need.Need.Size.AlsoMm)) into alike
        select Line(made, [.. alike]);

    /// <summary>How something was come to, as told for one set, where there are several.</summary>
    public static string ForSets(MadeTogether made, string told) => made.Sets == 1 ? told : Say.Of($"{told}; all of it for {made.Sets} sets");

    private static OrderLine Line(MadeTogether made, ImmutableArray<(PatternSet Carrier, OrderNeed Need)> alike)
    {
        var (bought, rounding) = alike.Select(each => each.Need.Amount).Aggregate((sum, next) => sum.And(next)).Times(made.Sets);
        return new(
            alike[0].Need.Thing,
            bought,
            ForSets(made, Whose(made, alike, need => need.Also)),
            rounding,
            new(Whose(made, alike, need => need.Use.Text), [.. alike.SelectMany(each => each.Need.Use.Pieces).Distinct()]));
    }

    /// <summary>As in "port, starboard: forward and aft edge": what is alike is told once.</summary>
    private static string Whose(MadeTogether made, ImmutableArray<(PatternSet Carrier, OrderNeed Need)> alike, Func<OrderNeed, string> told) => made.HasSeveral
        ? string.Join("; ", alike.GroupBy(each => told(each.Need)).Select(same => $"{string.Join(", ", same.Select(each => each.Carrier.Job.Mounting.Text).Distinct())}: {same.Key}"))
        : told(alike[0].Need);

    private static double Rounded(double mm) => Math.Round(mm, 3);
}
