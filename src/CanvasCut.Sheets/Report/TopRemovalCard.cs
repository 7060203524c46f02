using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Sheets;

/// <summary>The removal card of a top with several carriers: a page on all of them, then the card of each.</summary>
public static class TopRemovalCard
{
    /// <summary>The pages; of one carrier its card alone.</summary>
    /// <param name="carriers">The carriers with what their own sheets say.</param>
    /// <param name="context">What the common page says.</param>
    public static ImmutableArray<Sheet> Of(ImmutableArray<(PatternSet Patterns, SheetContext Context)> carriers, SheetContext context) =>
    [
        .. carriers.Length > 1 ? [BigColumn.Card(context, column => Written([.. carriers.Select(each => each.Patterns)], context, column))] : Array.Empty<Sheet>(),
        .. carriers.Select(each => RemovalCard.Of(each.Patterns, each.Context)),
    ];

    /// <summary>The wind at which all must be off: that of the weakest.</summary>
    public static HoldDown Weakest(IEnumerable<PatternSet> carriers) =>
        carriers.Select(patterns => HoldDown.Of(patterns.Job, patterns.Mounted)).MinBy(hold => hold.OffAt.MetersPerSecond)!;

    private static void Written(ImmutableArray<PatternSet> carriers, SheetContext context, BigColumn column)
    {
        var known = carriers.Select(patterns => (Patterns: patterns, Hold: HoldDown.Of(patterns.Job, patterns.Mounted))).OrderBy(each => each.Hold.OffAt.MetersPerSecond).ToList();
        var weakest = known[0].Hold;
        column.Put(Say.Of("TAKE THE PANELS OFF"), 11, isBold: true);
        column.Put(known.All(each => each.Hold.KnowsPull) ? Say.Of($"all before gusts of {LimitWords.Knots(weakest.OffAt)} knots") : Say.Of("before gusts of ____ knots"), 9, isBold: true);
        column.Put(known.All(each => each.Hold.KnowsPull)
            ? Say.Of($"{LimitWords.MetersPerSecond(weakest.OffAt)} m/s. A mean wind of about {LimitWords.Knots(weakest.MeanAtOff)} knots, Beaufort {weakest.ForceAtOff}, brings them. At once when the cloth shakes.")
            : Say.Of($"Not worked out, for how far the cloth stretches is not known (stretch in the materials file). Never above {LimitWords.Knots(weakest.OffAt)} knots. At once when the cloth shakes."), 4.2);
        column.Rule();
        column.Put(Say.Of("The weakest comes off first. Each comes off by itself, while the others stay closed, as its own card tells:"), 4.8);
        foreach (var (i, each) in known.Index())
        {
            column.Numbered(i + 1, Told(each.Patterns, each.Hold, context), 4.8);
        }

        column.Put(Say.Of($"{known.Sum(each => RemovalActions.Of(each.Patterns.Mounted.Fastened))} movements of the hand in all. My time for all: ______ minutes: begin so early that the last is off in time."), 4.2, isBold: true);
        column.Rule();
        column.Put(RemovalCard.TwoPeople, 4.2);
    }

    private static string Told(PatternSet patterns, HoldDown hold, SheetContext context)
    {
        var actions = RemovalActions.Of(patterns.Mounted.Fastened);
        var (name, size) = (patterns.Job.Mounting.Text, RemovalCard.SizeOf(patterns, context));
        return hold.KnowsPull
            ? Say.Of($"{name}: before gusts of {LimitWords.Knots(hold.OffAt)} knots, {actions} movements of the hand. Stowed flat it needs {size}.")
            : Say.Of($"{name}: never above {LimitWords.Knots(hold.OffAt)} knots, {actions} movements of the hand. Stowed flat it needs {size}.");
    }
}
