using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Takeoff;
using UnitsNet;

namespace CanvasCut.Sheets;

/// <summary>The ways to buy and lay the cloth, in words and figures.</summary>
public static class ClothChoiceText
{
    /// <summary>What stands over the columns of <see cref="Row"/>.</summary>
    public static ImmutableArray<string> Heads =>
        [Say.Of("Roll"), Say.Of("Pieces turned"), Say.Of("Seam in the carrier"), Say.Of("Used"), Say.Of("Order"), Say.Of("Cost"), Say.Of("Of it pieces"), Say.Of("Could be less?"), Say.Of("What you give up")];

    /// <summary>A choice as a row of a table.</summary>
    public static ImmutableArray<string> Row(ClothChoice choice, OrderCost? priced, SheetContext context)
    {
        string Text(Length length) => LengthText.Of(length, context.Units);
        return
        [
            Text(choice.Plan.Roll.Width) + (choice.IsOwn ? " *" : string.Empty),
            TurnsText(choice.Turns),
            choice.HasSeam ? Say.Of("yes") : Say.Of("no"),
            Text(choice.Plan.Used),
            Text(choice.Plan.Ordered),
            CostText(choice, priced),
            FormattableString.Invariant($"{choice.Plan.Use * 100:0} %"),
            ProofOf(choice.Plan, context.Units),
            GivenUp(choice),
        ];
    }

    /// <summary>What the table means, and which way takes or costs least.</summary>
    public static ImmutableArray<string> Sentences(ImmutableArray<ClothChoice> choices, OrderCost? priced, SheetContext context) =>
        [.. SentencesOf(choices, priced, context)];

    private static IEnumerable<string> SentencesOf(ImmutableArray<ClothChoice> choices, OrderCost? priced, SheetContext context)
    {
        yield return Say.Of("* as the job file has it. Order is what the shop cuts, in its steps, the spare in it.");
        var least = choices.MinBy(choice => choice.Ordered.SquareMeters)!;
        yield return Say.Of($"Least cloth: {Named(least, context)}, {least.Ordered.SquareMeters:0.00} m2; as the job file has it, {choices.First(choice => choice.IsOwn).Ordered.SquareMeters:0.00} m2.");
        if (choices.All(choice => choice.Cost is not null))
        {
            var cheapest = choices.MinBy(choice => choice.Cost!.Amount)!;
            yield return Say.Of($"Least cost: {Named(cheapest, context)}, {CostText(cheapest, priced)}.");
        }

        if (choices.Any(choice => choice.Cost is { IsByWidth: true }))
        {
            yield return Say.Of("\"About\": reckoned from the price of the job's own roll by area. Ask what that width costs.");
        }
    }

    /// <summary>How many choices a table leaves out, in a sentence; empty for none.</summary>
    public static string LeftOut(ImmutableArray<ClothChoice> choices) => (choices.Length - ClothChoices.WorthTelling(choices).Length) switch
    {
        0 => string.Empty,
        1 => Say.Of("Not listed: 1 way that asks for more and saves no cloth."),
        var several => Say.Of($"Not listed: {several} ways that ask for more and save no cloth."),
    };

    /// <summary>What a choice asks for that another may spare.</summary>
    public static string GivenUp(ClothChoice choice)
    {
        var seams = choice.Seams;
        string[] parts =
        [
            seams switch
            {
                0 => string.Empty,
                1 => Say.Of("a felled seam in the carrier, a ridge under the panel"),
                _ when choice.Made.HasSeveral => Say.Of($"{seams} felled seams in the carriers, ridges under the panels"),
                _ => Say.Of($"{seams} felled seams in the carrier, ridges under the panel"),
            },
            .. choice.Joined.Select(kind => Say.Of($"a seam in the {kind}")),
            choice.HasAwkwardSeam ? Say.Of("no place for a seam is clear of zipper ends, pockets, box and cable") : string.Empty,
            choice.Across.IsEmpty ? string.Empty : Say.Of($"the grain runs the other way in: {string.Join(", ", choice.Across)}"),
            choice.EndForEnd.IsEmpty ? string.Empty : Say.Of($"end for end: {string.Join(", ", choice.EndForEnd)}; not for cloth with an up and a down"),
        ];
        return string.Join("; ", parts.Where(part => part.Length > 0)) is { Length: > 0 } text ? text : Say.Of("nothing");
    }

    private static string Named(ClothChoice choice, SheetContext context) =>
        Say.Of($"roll {LengthText.Of(choice.Plan.Roll.Width, context.Units)}, turned: {TurnsText(choice.Turns)}, {(choice.HasSeam ? Say.Of("with") : Say.Of("without"))} a seam in the carrier");

    private static string TurnsText(RollTurns turns) => turns switch
    {
        RollTurns.None => Say.Of("no"),
        RollTurns.Half => Say.Of("end for end"),
        _ => Say.Of("by quarters"),
    };

    private static string CostText(ClothChoice choice, OrderCost? priced) =>
        choice.Cost is { } cost && priced is not null
            ? $"{(cost.IsByWidth ? Say.Of("about ") : string.Empty)}{priced.List.Money.Currency} {priced.Text(cost.Amount)}"
            : Say.Of("no price");

    private static string ProofOf(CutPlan plan, PrintUnits units) => plan.Proof.Verdict switch
    {
        PlanVerdict.Shortest => Say.Of("no"),
        PlanVerdict.OrderProven => Say.Of("not the order"),
        _ => Say.Of($"not below {LengthText.Of(plan.Proof.Bound, units)}"),
    };
}
