using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>The rods of sleeves, and what goes on their ends.</summary>
public static class RodOrder
{
    /// <summary>A cap and a stop at each end.</summary>
    private const int Ends = 2;

    /// <summary>The rod of a sleeve: its run, and at each end what sticks out for stop and cap.</summary>
    public static Length LengthOf(FlapPlace flap) => flap.Run + (SleeveSpec.StickOut * 2);

    /// <summary>The lines of a job; none without a sleeve.</summary>
    /// <param name="patterns">The pieces.</param>
    /// <param name="flaps">Its sleeves.</param>
    /// <param name="use">What they are for.</param>
    internal static IEnumerable<OrderNeed> Of(PatternSet patterns, FlapPlace[] flaps, OrderUse use)
    {
        var (units, grades, sleeve) = (patterns.Job.Units, patterns.Job.Workshop.Supplies.Notions.Mount.Rod, flaps[0].Parts.Sleeve!);
        foreach (var alike in flaps.GroupBy(flap => Math.Round(LengthOf(flap).Millimeters, 6)))
        {
            var length = LengthOf(alike.First());
            yield return new(
                (length.Millimeters, sleeve.Rod.Millimeters),
                new(grades.Rod.Grade.Id, Say.Of($"{grades.Rod.Grade.Name}, {LengthText.Of(sleeve.Rod, units)} thick, {LengthText.Of(length, units)} long"), length),
                NeedAmount.Of(alike.Count(), grades.Rod),
                Say.Of($"bent to a radius of {LimitWords.Most(sleeve.LeastRadius, units)} for good: ask the seller"),
                use);
        }

        foreach (var (grade, details) in new[]
        {
            (grades.Cap, Say.Of($"for rods of {LengthText.Of(sleeve.Rod, units)}, one an end")),
            (grades.Stop, Say.Of($"for rods of {LengthText.Of(sleeve.Rod, units)}, thicker outside than {LengthText.Of(sleeve.Bore, units)} so that they do not slip into the sleeve, one an end")),
        })
        {
            yield return new((sleeve.Rod.Millimeters, sleeve.Bore.Millimeters), new(grade.Grade.Id, grade.Grade.Name), NeedAmount.Of(Ends * flaps.Length, grade), details, use);
        }
    }
}
