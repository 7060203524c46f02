using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Drawing;
using CanvasCut.Language;
using CanvasCut.Patterns;
using CanvasCut.Takeoff;

namespace CanvasCut.Sheets;

/// <summary>One page to hang up: at which wind the panel comes off, in which order, and how it is stowed.</summary>
public static class RemovalCard
{
    /// <summary>What goes for every card.</summary>
    internal static string TwoPeople => Say.Of("Two people, one always holding the panel. Never begin on the side the wind comes from: it gets under and takes it out of your hands. If it already blows harder than this, stay off the top and leave it. Panel and cloth can be replaced.");

    /// <summary>The card; black on white, to be read at arm's length.</summary>
    public static Sheet Of(PatternSet patterns, SheetContext context) => BigColumn.Card(context, column => Written(patterns, context, column));

    private static void Written(PatternSet patterns, SheetContext context, BigColumn column)
    {
        var hold = HoldDown.Of(patterns.Job, patterns.Mounted);
        var steps = Steps(patterns);
        column.Put(patterns.Job.Mounting.IsOnly ? Say.Of("TAKE THE PANEL OFF") : $"{Say.Of("TAKE THE PANEL OFF")}: {patterns.Job.Mounting}", 11, isBold: true);
        Wind(column, hold);
        column.Rule();
        foreach (var (i, step) in steps.Index())
        {
            column.Numbered(i + 1, step, 4.8);
        }

        column.Put(Say.Of($"{steps.Length} steps, {RemovalActions.Of(patterns.Mounted.Fastened)} movements of the hand, no tools. My time: ______ minutes."), 4.2, isBold: true);
        column.Rule();
        column.Put(Say.Of($"Stow flat: it needs {SizeOf(patterns, context)}. Never rolled, never folded, nothing on top of it, dry, strapped down. Cap the plug."), 4.4);
        column.Rule();
        column.Put(TwoPeople, 4.2);
    }

    private static void Wind(BigColumn column, HoldDown hold)
    {
        if (hold.KnowsPull)
        {
            column.Put(Say.Of($"before gusts of {LimitWords.Knots(hold.OffAt)} knots"), 9, isBold: true);
            column.Put(Say.Of($"{LimitWords.MetersPerSecond(hold.OffAt)} m/s. A mean wind of about {LimitWords.Knots(hold.MeanAtOff)} knots, Beaufort {hold.ForceAtOff}, brings them. At once when the cloth shakes."), 4.2);
            return;
        }

        column.Put(Say.Of("before gusts of ____ knots"), 9, isBold: true);
        column.Put(Say.Of($"Not worked out, for how far the cloth stretches is not known (stretch in the materials file). Never above {LimitWords.Knots(hold.OffAt)} knots. At once when the cloth shakes."), 4.2);
    }

    private static ImmutableArray<string> Steps(PatternSet patterns) =>
    [
        Say.Of("Cover the panel: in light it is live. Then pull the plug."),
        .. patterns.Mounted.Fastened.Sides.IsEmpty ? [] : new[] { Sides(patterns) },
        Say.Of($"Away from the wind first. At anchor that is the AFT {Held(patterns, Side.Aft)}: {Lift(patterns, Side.Aft)}{Open(patterns, Side.Aft)}, slip both aft corners out of their pockets."),
        Say.Of($"Hold on. {Forward(patterns)}, slip both forward corners out."),
        Say.Of("Keep it low and flat, edge to the wind, and hand it below."),
    ];

    /// <summary>The sides while both ends still hold, as in "PORT: open it".</summary>
    private static string Sides(PatternSet patterns)
    {
        var sides = patterns.Mounted.Fastened.Sides.Select(side => $"{Words.Of(side.Side).ToUpperInvariant()}: {MountText.Open(side)}");
        return Say.Of($"While both ends still hold, the sides, the one away from the wind first. {string.Join("; ", sides)}.");
    }

    private static EdgePlace Edge(PatternSet patterns, Side side) => patterns.Mounted.Fastened.Edges.Single(edge => edge.Side == side);

    private static string Held(PatternSet patterns, Side side) => Edge(patterns, side).Kind == MountKind.Zipper ? Say.Of("zipper") : Say.Of("edge");

    private static string Open(PatternSet patterns, Side side) => MountText.Open(Edge(patterns, side));

    /// <summary>As in "Lift the strip, open the FORWARD zipper".</summary>
    private static string Forward(PatternSet patterns) => Edge(patterns, Side.Forward).Kind == MountKind.Zipper
        ? Say.Of($"{Lift(patterns, Side.Forward)}open the FORWARD zipper")
        : Say.Of($"The FORWARD edge: {Say.Within(Lift(patterns, Side.Forward))}{Open(patterns, Side.Forward)}");

    private static string Lift(PatternSet patterns, Side side) => patterns.Mounted.Fastened.Strips.FirstOrDefault(strip => strip.Side == side) switch
    {
        null => string.Empty,
        { Holding: { Kind: StripHold.Snaps } held } => side == Side.Aft ? Say.Of($"open the strip's {held.Centres.Length} snaps, ") : Say.Of($"Open the strip's {held.Centres.Length} snaps, "),
        { Holding.Kind: StripHold.HookAndLoop } => side == Side.Aft ? Say.Of("peel the strip up, ") : Say.Of("Peel the strip up, "),
        _ => side == Side.Aft ? Say.Of("lift the strip, ") : Say.Of("Lift the strip, "),
    };

    /// <summary>The carrier's size, as it is stowed.</summary>
    internal static string SizeOf(PatternSet patterns, SheetContext context)
    {
        var box = patterns.Mounted.CarrierBox;
        return $"{LengthText.Of(UnitsNet.Length.FromMillimeters(box.WidthMm), context.Units)} × {LengthText.Of(UnitsNet.Length.FromMillimeters(box.HeightMm), context.Units)}";
    }
}
