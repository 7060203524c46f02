using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Sheets;
using CanvasCut.Takeoff;

namespace CanvasCut.Job;

/// <summary>The ways to buy and lay the cloth, for programs.</summary>
public static class ClothJson
{
    /// <summary>The value of "format".</summary>
    public const string Format = "canvascut-cloth-1";

    /// <summary>Every choice, as <c>cloth --json</c> prints them.</summary>
    public static string Of(JobRun outcome, ImmutableArray<ClothChoice> choices) => JsonText.Of(new Dictionary<string, object?>
    {
        ["format"] = Format,
        ["version"] = outcome.Context.Version,
        ["job"] = outcome.Context.JobName,
        ["cloth_choices"] = Choices(choices),
    });

    private static object Choices(ImmutableArray<ClothChoice> choices) => choices.Select(choice => new
    {
        roll_width_mm = JsonText.Mm(choice.Plan.Roll.Width.Millimeters),
        turns = choice.Turns switch
        {
            RollTurns.None => "none",
            RollTurns.Half => "half",
            _ => "quarter",
        },
        carrier_widths = choice.Patterns.CarrierPieces.Length,
        is_own = choice.IsOwn,
        used_mm = JsonText.Mm(choice.Plan.Used.Millimeters),
        order_mm = JsonText.Mm(choice.Plan.Ordered.Millimeters),
        cost = choice.Cost?.Amount,
        cost_by_width = choice.Cost?.IsByWidth,
        use = Math.Round(choice.Plan.Use, JsonText.Digits),
        lower_bound_mm = JsonText.Mm(choice.Plan.LowerBound.Millimeters),
        verdict = PlanWords.Of(choice.Plan.Proof.Verdict),
        gives_up = ClothChoiceText.GivenUp(choice),
    });
}
