using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Nesting;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>Lays the pieces on every roll on sale, with and without turning them, with and without a seam in the carrier.</summary>
public static class ClothChoices
{
    /// <summary>The choices: narrow rolls first; on each, what asks for least first.</summary>
    /// <param name="made">The pieces as the job has them.</param>
    /// <param name="own">The job's own cut plan.</param>
    /// <param name="search">Finds the layouts.</param>
    /// <param name="report">Told how it gets on, from any thread; null when nobody listens.</param>
    /// <param name="cancellation">Breaks it off.</param>
    /// <exception cref="OperationCanceledException">It was broken off.</exception>
    public static ImmutableArray<ClothChoice> Of(
        MadeTogether made, CutPlan own, INestingSearch search, Action<PlanProgress>? report = null, CancellationToken cancellation = default)
    {
        var remembering = new RememberingSearch(search);
        var choices =
            from width in Widths(made.Job)
            from turns in Turns(made.Job.Workshop.Cloth.Lay)
            from pieces in Pieces(made, width, turns)
            let isOwn = IsOwn(pieces, made)
            let plan = isOwn ? own : CutPlan.Of(pieces.PiecesOfAllSets, pieces.Job.Workshop, remembering, report, cancellation)
            select new ClothChoice(pieces, plan, CostOf(plan, made.Job), isOwn);
        return [.. choices];
    }

    /// <summary>The choices without those that ask for something and save no cloth; the job's own always among them.</summary>
    public static ImmutableArray<ClothChoice> WorthTelling(ImmutableArray<ClothChoice> choices) =>
        [.. choices.Where(choice => choice.IsOwn || !choices.Any(choice.IsNoBetterThan))];

    private static IEnumerable<Length> Widths(CarrierJob job) => job.Workshop.Buying.RollWidths
        .Append(job.Workshop.Cloth.Roll.Width)
        .OrderBy(width => width.Millimeters)
        .DistinctBy(width => Math.Round(width.Millimeters, 3));

    private static RollTurns[] Turns(ClothLay lay) => lay.OneWay ? [RollTurns.None] : [RollTurns.None, RollTurns.Half, RollTurns.Quarter];

    private static CarrierJob JobOn(CarrierJob job, Length width, RollTurns turns)
    {
        var cloth = job.Workshop.Cloth;
        return job with
        {
            Workshop = job.Workshop with
            {
                Cloth = cloth with { Roll = cloth.Roll with { Width = width }, Lay = cloth.Lay with { Turns = turns } },
            },
        };
    }

    /// <summary>With every carrier whole that fits, and with one seam in each of these; else with the seams they need.</summary>
    private static MadeTogether[] Pieces(MadeTogether made, Length width, RollTurns turns)
    {
        var whole = made with { Carriers = [.. made.Carriers.Select(carrier => PatternSet.Of(JobOn(carrier.Job, width, turns), carrier.Mounted))] };
        if (whole.Carriers.All(carrier => carrier.CarrierPieces.Length > 1))
        {
            return [whole];
        }

        return [whole, made with { Carriers = [.. whole.Carriers.Select(carrier => carrier.CarrierPieces.Length > 1 ? carrier : PatternSet.Of(carrier.Job, carrier.Mounted, carrierWidths: 2))] }];
    }

    private static bool IsOwn(MadeTogether pieces, MadeTogether own)
    {
        var (cloth, ownCloth) = (pieces.Job.Workshop.Cloth, own.Job.Workshop.Cloth);
        return Math.Abs((cloth.Roll.Width - ownCloth.Roll.Width).Millimeters) < 1e-3
            && cloth.Lay.AllowedTurns == ownCloth.Lay.AllowedTurns
            && pieces.Carriers.Zip(own.Carriers).All(pair => pair.First.CarrierPieces.Length == pair.Second.CarrierPieces.Length);
    }

    /// <summary>The price is that of the job's own roll; another width is taken to cost as much an area.</summary>
    private static ClothCost? CostOf(CutPlan plan, CarrierJob job)
    {
        var (workshop, own) = (job.Workshop, job.Workshop.Cloth.Roll.Width);
        if (workshop.Buying.Prices is not { } prices
            || prices.Of(workshop.Supplies.Cloth.Grade.Id, null) is not { } price
            || Bought.InSteps(plan.Ordered, plan.Roll.OrderStep, job.Units).In(price.Per) is not { } number)
        {
            return null;
        }

        var isOwn = Math.Abs((plan.Roll.Width - own).Millimeters) < 1e-3;
        var part = isOwn ? 1 : (decimal)plan.Roll.Width.Millimeters / (decimal)own.Millimeters;
        return new(decimal.Round(number * price.Amount * part, prices.Money.Decimals, MidpointRounding.AwayFromZero), !isOwn);
    }
}
