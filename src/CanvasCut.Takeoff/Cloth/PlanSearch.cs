using CanvasCut.Design;
using CanvasCut.Nesting;

namespace CanvasCut.Takeoff;

/// <summary>
/// The search for cut plans: piece by piece, and when that leaves open whether a smaller order would do, a thorough
/// search as well; the shorter layout is kept.
/// </summary>
/// <param name="roll">The shop's step.</param>
/// <param name="spare">What is ordered beyond the layout, as a part of it.</param>
/// <param name="places">How many places the thorough search may try. A number and no time, so that the same job gives the same plan everywhere.</param>
public sealed class PlanSearch(ClothRoll roll, decimal spare, long places = PlanSearch.UsualPlaces) : INestingSearch
{
    /// <summary>So many take a few tenths of a second for the pieces of a carrier.</summary>
    public const long UsualPlaces = 400_000;

    private const double SameMm = 1e-6;

    /// <summary>The search for a job's plans.</summary>
    public static PlanSearch For(CarrierJob job) => new(job.Workshop.Cloth.Roll, job.Workshop.Buying.Spare);

    /// <inheritdoc/>
    public NestingLayout? Find(NestingTask task, NestingControl control)
    {
        if (new BottomLeftSearch().Find(task, control) is not { } first)
        {
            return null;
        }

        var proof = PlanProof.Of(first, roll.OrderStep, spare);
        control.Report?.Invoke(new(first.LengthMm, proof.Bound.Millimeters, TimeSpan.Zero));
        if (proof.Verdict != PlanVerdict.Open)
        {
            return first;
        }

        var other = new ThoroughSearch().Find(task, control with { Budget = NestingBudget.OfSteps(places) });
        return other is not null && other.LengthMm < first.LengthMm - SameMm ? other : first;
    }
}
