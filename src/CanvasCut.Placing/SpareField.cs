namespace CanvasCut.Placing;

/// <summary>The smallest spare distance of a mounting wherever it is moved.</summary>
internal sealed class SpareField
{
    private readonly (MovedDistance Distance, double NeededMm)[] _all;

    /// <summary>The field of rules that were made with the mounting's middle at the origin.</summary>
    public SpareField(IEnumerable<DistanceRule> rules)
    {
        var all = rules.SelectMany(rule => rule.Parts.SelectMany(rule.From.Moved).Select(distance => (Distance: distance, rule.NeededMm))).ToList();

        // Of distances that change alike the smallest counts. What is quickly worked out comes first, for it often settles that a place is no good.
        var even = all.Where(each => each.Distance is EvenDistance).GroupBy(each => ((EvenDistance)each.Distance).Unit).Select(alike => alike.MinBy(each => ((EvenDistance)each.Distance).AtOrigin - each.NeededMm));
        _all = [.. even, .. all.Where(each => each.Distance is not (EvenDistance or ZoneDistance)), .. all.Where(each => each.Distance is ZoneDistance)];
    }

    /// <summary>The smallest spare after a step; as soon as it is known to be below a bound, any number below it.</summary>
    public double At(double x, double y, double bound)
    {
        var least = double.PositiveInfinity;
        foreach (ref readonly var each in _all.AsSpan())
        {
            least = Math.Min(least, each.Distance.At(x, y, least + each.NeededMm) - each.NeededMm);
            if (least < bound)
            {
                return least;
            }
        }

        return least;
    }

    /// <summary>No step that differs from one by no more than this in each direction leaves a larger smallest spare.</summary>
    public double Most((double X, double Y) step, (double X, double Y) by, double bound)
    {
        var least = double.PositiveInfinity;
        foreach (ref readonly var each in _all.AsSpan())
        {
            var more = each.Distance.Change(by.X, by.Y) - each.NeededMm;
            least = Math.Min(least, each.Distance.At(step.X, step.Y, least - more) + more);
            if (least < bound)
            {
                return least;
            }
        }

        return least;
    }
}
