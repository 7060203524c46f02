using System.Collections.Immutable;
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
        var use = new OrderUse(job.Row is null ? Say.Of("panel on the carrier") : Say.Of("panels on the carrier"), [.. patterns.CarrierPieces.Select(piece => piece.Key)]);
        if (bond.HasTape)
        {
            yield return Tape(job, (supplies.Tapes.Foam, bond.TapeWidth), bond.TapeLength, (Rest(job, bond), use));
        }

        if (!bond.Webbing.IsEmpty)
        {
            yield return Tape(job, (supplies.Tapes.Webbing, supplies.Tapes.Webbing.Width), bond.WebbingLength, (Say.Of("smooth ground for the foam tape, for woven cloth is porous; sewn on before bonding"), use));
        }

        if (!bond.Patches.IsEmpty)
        {
            yield return Patch(job, bond.Patches, use);
        }

        yield return Wipes(patterns, use);
    }

    private static OrderNeed Wipes(PatternSet patterns, OrderUse use)
    {
        var job = patterns.Job;
        var grade = job.Workshop.Supplies.Notions.Wipe;
        var bonded = patterns.EachPanel.Select(Bonded).Aggregate((sum, next) => sum + next);
        return new(
            default,
            new(grade.Grade.Id, grade.Grade.Name),
            new(bonded.Meters, metres => SoldBy.Of(WipesPerMetre * (int)Math.Ceiling(metres), grade)),
            Say.Of("one for either face of each metre; ask the panel's maker whether alcohol is allowed on it"),
            use);
    }

    /// <summary>What is wiped for a panel: as long as its tape, without tape once round it.</summary>
    private static Length Bonded(PatternSet patterns) =>
        patterns.Bond.HasTape ? patterns.Bond.TapeLength : (patterns.Job.Panel.Body.Length + patterns.Job.Panel.Body.Width) * 2;

    /// <summary>Soft vinyl is warned of because its plasticiser wanders into the adhesive; from memory.</summary>
    private static OrderNeed Patch(CarrierJob job, ImmutableArray<Geometry.Box> patches, OrderUse use)
    {
        var grade = job.Workshop.Supplies.Notions.Patch;
        string Text(double millimetres) => LengthText.Of(Length.FromMillimeters(millimetres), job.Units);
        var sizes = string.Join(", ", patches.Select(patch => $"{Text(patch.WidthMm)} x {Text(patch.HeightMm)}"));
        return new(
            default,
            new(grade.Grade.Id, grade.Grade.Name),
            NeedAmount.Of(patches.Length, grade),
            Say.Of($"{sizes}, smooth face up; no soft vinyl, its plasticiser creeps into the adhesive: ask the maker of the tape"),
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
        var masses = job.Panels.Select(each => each.Panel.Body.Mass).ToList();
        var weight = masses.Exists(mass => mass is null) ? job.Row is null ? Say.Of("the panel's mass is not given") : Say.Of("the mass of a panel is not given")
            : job.Row is null ? Say.Of($"the panel weighs {masses[0]!.Value.Kilograms:0.#} kg")
            : Say.Of($"the panels weigh {masses.Sum(mass => mass!.Value.Kilograms):0.#} kg together");
        return Say.Of($"{bond.Adhesive.SquareCentimeters:0} cm2 carry {carries:0.#} kg at rest by the tape sellers' rule, {weight}; wind pulls harder");
    }
}
