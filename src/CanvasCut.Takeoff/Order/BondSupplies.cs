using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>What bonds the panel: foam tape, smooth webbing under it where the cloth is porous, wipes.</summary>
internal static class BondSupplies
{
    /// <summary>Wipes for each metre that is bonded, one for either face; common practice, no source.</summary>
    private const int WipesPerMetre = 2;

    public static IEnumerable<OrderLine> Of(PatternSet patterns)
    {
        var (job, supplies) = (patterns.Job, patterns.Job.Workshop.Supplies);
        var bond = PanelBond.Of(job, patterns.Mounted);
        var use = new OrderUse(Say.Of("panel on the carrier"), [.. patterns.CarrierPieces.Select(piece => piece.Key)]);
        if (!bond.Strips.IsEmpty)
        {
            yield return Tape(job, supplies.Tapes.Foam, bond.TapeLength, (Area(job, bond), use));
            if (bond.NeedsGround)
            {
                yield return Tape(job, supplies.Tapes.Webbing, bond.TapeLength, (Say.Of("smooth ground for the foam tape, for woven cloth is porous; sewn on before bonding"), use));
            }
        }

        var bonded = bond.Strips.IsEmpty ? (job.Panel.Body.Length + job.Panel.Body.Width) * 2 : bond.TapeLength;
        var (wipes, rounding) = SoldBy.Of(WipesPerMetre * (int)Math.Ceiling(bonded.Meters), supplies.Notions.Wipe);
        yield return new(
            new(supplies.Notions.Wipe.Grade.Id, supplies.Notions.Wipe.Grade.Name),
            wipes,
            Say.Of("one for either face of each metre; ask the panel's maker whether alcohol is allowed on it"),
            rounding,
            use);
    }

    private static OrderLine Tape(CarrierJob job, TapeGrade grade, Length length, (string Also, OrderUse Use) told)
    {
        var (bought, rounding) = SoldBy.Of(OrderList.WithWaste(length), grade.Sold, job.Units);
        return new(
            new(grade.Grade.Id, grade.Grade.Name),
            bought,
            Say.Of($"{LengthText.Of(length, job.Units)} in strips, 15 % waste; {told.Also}"),
            rounding,
            told.Use);
    }

    /// <summary>How much the tape carries at rest against what the panel weighs.</summary>
    private static string Area(CarrierJob job, PanelBond bond)
    {
        var area = bond.TapeLength * job.Workshop.Supplies.Tapes.Foam.Width;
        var carries = (area * PanelBond.Carries).Newtons / 9.80665;
        var weight = job.Panel.Body.Mass is { } mass ? Say.Of($"the panel weighs {mass.Kilograms:0.#} kg") : Say.Of("the panel's mass is not given");
        return Say.Of($"{area.SquareCentimeters:0} cm2 carry {carries:0.#} kg at rest by the tape sellers' rule, {weight}; wind pulls harder");
    }
}
