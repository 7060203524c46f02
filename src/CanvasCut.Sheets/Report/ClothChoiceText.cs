using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Takeoff;
using UnitsNet;

namespace CanvasCut.Sheets;

/// <summary>The ways to buy and lay the cloth, in words and figures.</summary>
public static class ClothChoiceText
{
    /// <summary>What stands over the columns of <see cref="Row"/>.</summary>
    public static ImmutableArray<string> Heads { get; } =
        ["Roll", "Pieces turned", "Seam in the carrier", "Used", "Order", "Cost", "Of it pieces", "Could be less?", "What you give up"];

    /// <summary>A choice as a row of a table.</summary>
    public static ImmutableArray<string> Row(ClothChoice choice, ReportContent content, SheetContext context)
    {
        string Text(Length length) => LengthText.Of(length, context.Units);
        return
        [
            Text(choice.Plan.Roll.Width) + (choice.IsOwn ? " *" : string.Empty),
            TurnsText(choice.Turns),
            choice.HasSeam ? "yes" : "no",
            Text(choice.Plan.Used),
            Text(choice.Plan.Ordered),
            CostText(choice, content),
            FormattableString.Invariant($"{choice.Plan.Use * 100:0} %"),
            ProofOf(choice.Plan, context.Units),
            GivenUp(choice),
        ];
    }

    /// <summary>What the table means, and which way takes or costs least.</summary>
    public static IEnumerable<string> Sentences(ImmutableArray<ClothChoice> choices, ReportContent content, SheetContext context)
    {
        yield return "* as the job file has it. Order is what the shop cuts, in its steps, the spare in it.";
        var least = choices.MinBy(choice => choice.Ordered.SquareMeters)!;
        yield return FormattableString.Invariant($"Least cloth: {Named(least, context)}, {least.Ordered.SquareMeters:0.00} m2; as the job file has it, {choices.First(choice => choice.IsOwn).Ordered.SquareMeters:0.00} m2.");
        if (choices.All(choice => choice.Cost is not null))
        {
            var cheapest = choices.MinBy(choice => choice.Cost!.Amount)!;
            yield return $"Least cost: {Named(cheapest, context)}, {CostText(cheapest, content)}.";
        }

        if (choices.Any(choice => choice.Cost is { IsByWidth: true }))
        {
            yield return "\"About\": reckoned from the price of the job's own roll by area. Ask what that width costs.";
        }
    }

    /// <summary>How many choices a table leaves out, in a sentence; empty for none.</summary>
    public static string LeftOut(ImmutableArray<ClothChoice> choices) => (choices.Length - ClothChoices.WorthTelling(choices).Length) switch
    {
        0 => string.Empty,
        1 => "Not listed: 1 way that asks for more and saves no cloth.",
        var several => FormattableString.Invariant($"Not listed: {several} ways that ask for more and save no cloth."),
    };

    /// <summary>What a choice asks for that another may spare.</summary>
    public static string GivenUp(ClothChoice choice)
    {
        var seams = choice.Patterns.CarrierPieces.Length - 1;
        string[] parts =
        [
            seams switch
            {
                0 => string.Empty,
                1 => "a felled seam in the carrier, a ridge under the panel",
                _ => FormattableString.Invariant($"{seams} felled seams in the carrier, ridges under the panel"),
            },
            .. choice.Joined.Where(kind => seams == 0 || kind != "carrier").Select(kind => $"a seam in the {kind}"),
            choice.HasAwkwardSeam ? "no place for a seam is clear of zipper ends, pockets, box and cable" : string.Empty,
            choice.Across.IsEmpty ? string.Empty : $"the grain runs the other way in: {string.Join(", ", choice.Across)}",
            choice.EndForEnd.IsEmpty ? string.Empty : $"end for end: {string.Join(", ", choice.EndForEnd)}; not for cloth with an up and a down",
        ];
        return string.Join("; ", parts.Where(part => part.Length > 0)) is { Length: > 0 } text ? text : "nothing";
    }

    private static string Named(ClothChoice choice, SheetContext context) =>
        $"roll {LengthText.Of(choice.Plan.Roll.Width, context.Units)}, turned: {TurnsText(choice.Turns)}, {(choice.HasSeam ? "with" : "without")} a seam in the carrier";

    private static string TurnsText(RollTurns turns) => turns switch
    {
        RollTurns.None => "no",
        RollTurns.Half => "end for end",
        _ => "by quarters",
    };

    private static string CostText(ClothChoice choice, ReportContent content) =>
        choice.Cost is { } cost && content.Cost is { } priced
            ? $"{(cost.IsByWidth ? "about " : string.Empty)}{priced.List.Money.Currency} {priced.Text(cost.Amount)}"
            : "no price";

    private static string ProofOf(CutPlan plan, PrintUnits units) => plan.Proof.Verdict switch
    {
        PlanVerdict.Shortest => "no",
        PlanVerdict.OrderProven => "not the order",
        _ => $"not below {LengthText.Of(plan.Proof.Bound, units)}",
    };
}
