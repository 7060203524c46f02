using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>What bonds the panel, as the plan of strips has it: foam tape, webbing or a coated patch under it, wipes.</summary>
internal static class BondSupplies
{
    /// <summary>Wipes for each metre that is bonded, one for either face; common practice, no source.</summary>
    private const int WipesPerMetre = 2;

    public static IEnumerable<OrderNeed> Of(PatternSet patterns)
    {
        var (job, supplies, bond) = (patterns.Job, patterns.Job.Workshop.Supplies, patterns.Bond);
        var use = new OrderUse(Say.Of("panel on the carrier"), [.. patterns.CarrierPieces.Select(piece => piece.Key)]);
        if (bond.HasTape)
        {
            yield return Tape(job, (supplies.Tapes.Foam, bond.TapeWidth), bond.TapeLength, (Rest(job, bond), use));
        }

        if (!bond.Webbing.IsEmpty)
        {
            yield return Tape(job, (supplies.Tapes.Webbing, supplies.Tapes.Webbing.Width), bond.WebbingLength, (Say.Of("smooth ground for the foam tape, for woven cloth is porous; sewn on before bonding"), use));
        }

        if (bond.Patch is not null)
        {
            yield return Patch(job, bond.Patch.Value, use);
        }

        yield return Wipes(job, bond, use);
    }

    private static OrderNeed Wipes(CarrierJob job, BondPlan bond, OrderUse use)
    {
        var grade = job.Workshop.Supplies.Notions.Wipe;
        var bonded = bond.HasTape ? bond.TapeLength : (job.Panel.Body.Length + job.Panel.Body.Width) * 2;
        return new(
            default,
            new(grade.Grade.Id, grade.Grade.Name),
            new(bonded.Meters, metres => SoldBy.Of(WipesPerMetre * (int)Math.Ceiling(metres), grade)),
            Say.Of("one for either face of each metre; ask the panel's maker whether alcohol is allowed on it"),
            use);
    }

    /// <summary>Soft vinyl is warned of because its plasticiser wanders into the adhesive; from memory.</summary>
    private static OrderNeed Patch(CarrierJob job, Geometry.Box patch, OrderUse use)
    {
        var grade = job.Workshop.Supplies.Notions.Patch;
        string Text(double millimetres) => LengthText.Of(Length.FromMillimeters(millimetres), job.Units);
        return new(
            default,
            new(grade.Grade.Id, grade.Grade.Name),
            NeedAmount.Of(1, grade),
            Say.Of($"{Text(patch.WidthMm)} x {Text(patch.HeightMm)}, smooth face up; no soft vinyl, its plasticiser creeps into the adhesive: ask the maker of the tape"),
            use);
    }

    private static OrderNeed Tape(CarrierJob job, (TapeGrade Grade, Length Width) tape, Length length, (string Also, OrderUse Use) told)
    {
        var grade = tape.Grade;
        return new(
            (tape.Width.Millimeters, 0),
            new(grade.Grade.Id, tape.Width.Equals(grade.Width, Length.FromMillimeters(0.5)) ? grade.Grade.Name : Say.Of($"{grade.Grade.Name}, but {LengthText.Of(tape.Width, job.Units)} wide")),
            NeedAmount.Of(OrderList.WithWaste(length), grade.Sold, job.Units),
            Say.Of($"{LengthText.Of(length, job.Units)} in strips, 15 % waste; {told.Also}"),
            told.Use);
    }

    /// <summary>How much the tape carries at rest against what the panel weighs.</summary>
    private static string Rest(CarrierJob job, BondPlan bond)
    {
        var carries = (bond.Adhesive * BondPlan.TapeBears).Newtons / 9.80665;
        var weight = job.Panel.Body.Mass is { } mass ? Say.Of($"the panel weighs {mass.Kilograms:0.#} kg") : Say.Of("the panel's mass is not given");
        return Say.Of($"{bond.Adhesive.SquareCentimeters:0} cm2 carry {carries:0.#} kg at rest by the tape sellers' rule, {weight}; wind pulls harder");
    }
}
