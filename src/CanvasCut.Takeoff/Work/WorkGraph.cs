using System.Collections.Immutable;

namespace CanvasCut.Takeoff;

/// <summary>The steps and which must come before which.</summary>
/// <remarks>
/// A step comes after those that make what it uses, and before those that close what it must reach, unless it needs
/// something that is only made after they have closed it; then it is opened again for it.
/// </remarks>
internal sealed class WorkGraph
{
    private readonly ImmutableArray<ImmutableSortedSet<int>> _before;

    /// <summary>Ties steps together.</summary>
    /// <param name="steps">In any order in which what is used is made first.</param>
    /// <exception cref="ArgumentException">Something is used that no earlier step makes, or is made twice.</exception>
    public WorkGraph(ImmutableArray<WorkStep> steps)
    {
        Steps = steps;
        var flow = Flow(steps);
        var after = Downstream(flow);
        _before =
        [
            .. steps.Select((step, index) => flow[index].Union(
                step.Flow.Access.Closes.SelectMany(access => Needing(access).Where(other => other != index && !after[index].Contains(other))))),
        ];
    }

    /// <summary>The steps.</summary>
    public ImmutableArray<WorkStep> Steps { get; }

    /// <summary>The indexes of the steps that must come before one.</summary>
    public ImmutableSortedSet<int> Before(int index) => _before[index];

    private static ImmutableArray<ImmutableSortedSet<int>> Flow(ImmutableArray<WorkStep> steps)
    {
        var maker = new Dictionary<WorkPart, int>();
        var before = ImmutableArray.CreateBuilder<ImmutableSortedSet<int>>(steps.Length);
        foreach (var (index, step) in steps.Index())
        {
            before.Add([.. step.Flow.Uses.Select(part => maker.TryGetValue(part, out var made) ? made : throw new ArgumentException($"{step.Task.Id} uses \"{part}\", which nothing makes before.", nameof(steps)))]);
            foreach (var part in step.Flow.Makes)
            {
                maker.Add(part, index);
            }
        }

        return before.MoveToImmutable();
    }

    /// <summary>For each step all that follow from it.</summary>
    private static ImmutableArray<HashSet<int>> Downstream(ImmutableArray<ImmutableSortedSet<int>> before)
    {
        ImmutableArray<HashSet<int>> after = [.. before.Select(_ => new HashSet<int>())];
        for (var index = before.Length - 1; index >= 0; index--)
        {
            foreach (var earlier in before[index])
            {
                after[earlier].Add(index);
                after[earlier].UnionWith(after[index]);
            }
        }

        return after;
    }

    private IEnumerable<int> Needing(WorkReach access) =>
        Steps.Index().Where(each => each.Item.Flow.Access.Needs.Contains(access)).Select(each => each.Index);
}
