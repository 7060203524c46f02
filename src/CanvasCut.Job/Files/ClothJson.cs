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
    public static string Of(TopRun top, ImmutableArray<ClothChoice> choices) => JsonText.Of(
        new(Format, top.Context.Version, top.Context.JobName, [.. choices.Select(Choice)]), ResultsContext.Default.ClothDocument);

    private static ClothPart Choice(ClothChoice choice) => new(
        JsonText.Mm(choice.Plan.Roll.Width.Millimeters),
        choice.Turns switch
        {
            RollTurns.None => "none",
            RollTurns.Half => "half",
            _ => "quarter",
        },
        choice.Made.Carriers.Max(carrier => carrier.CarrierPieces.Length),
        choice.IsOwn,
        JsonText.Mm(choice.Plan.Used.Millimeters),
        JsonText.Mm(choice.Plan.Ordered.Millimeters),
        choice.Cost?.Amount,
        choice.Cost?.IsByWidth,
        Math.Round(choice.Plan.Use, JsonText.Digits),
        JsonText.Mm(choice.Plan.LowerBound.Millimeters),
        PlanWords.Of(choice.Plan.Proof.Verdict),
        ClothChoiceText.GivenUp(choice));
}
