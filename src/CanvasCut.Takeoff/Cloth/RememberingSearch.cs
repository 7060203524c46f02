using CanvasCut.Nesting;

namespace CanvasCut.Takeoff;

/// <summary>A search that also tries what it found for the same shapes before, so that more room or more turns never make a plan longer.</summary>
internal sealed class RememberingSearch(INestingSearch search) : INestingSearch
{
    private readonly List<NestingLayout> _found = [];

    /// <inheritdoc/>
    public NestingLayout? Find(NestingTask task, NestingControl control)
    {
        if (search.Find(task, control) is not { } found)
        {
            return null;
        }

        var best = _found
            .Where(known => known.LengthMm < found.LengthMm && IsAlike(known.Task, task))
            .OrderBy(known => known.LengthMm)
            .Select(known => new NestingLayout(task, known.Placements))
            .FirstOrDefault(known => LayoutCheck.Faults(known).IsEmpty) ?? found;
        _found.Add(best);
        return best;
    }

    private static bool IsAlike(NestingTask one, NestingTask other) =>
        one.Items.Length == other.Items.Length
        && one.Items.Zip(other.Items).All(pair => pair.First.Demand == pair.Second.Demand && pair.First.Shape.Corners.SequenceEqual(pair.Second.Shape.Corners));
}
