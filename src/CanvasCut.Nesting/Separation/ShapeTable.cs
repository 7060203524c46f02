using System.Collections.Immutable;
using CanvasCut.Geometry;

namespace CanvasCut.Nesting.Separation;

/// <summary>All pieces of a task in all their poses, the barred zones, and what is forbidden between each two.</summary>
/// <remarks>
/// What is forbidden between two shapes is worked out when first asked for. Two threads may do it at the same time;
/// both come to the same.
/// </remarks>
internal sealed class ShapeTable
{
    private readonly NoFitParts?[] _parts;

    public ShapeTable(NestingTask task, double lengthMm)
    {
        Task = task;
        var shapes = new List<SearchShape>();
        var choices = ImmutableArray.CreateBuilder<ImmutableArray<int>>();
        for (var item = 0; item < task.Items.Length; item++)
        {
            var own = Poses(task, item);
            choices.Add([.. Enumerable.Range(shapes.Count, own.Count)]);
            shapes.AddRange(own);
        }

        Choices = choices.ToImmutable();
        FirstZone = shapes.Count;
        var near = new Box(-lengthMm, -task.StripWidthMm, 2 * lengthMm, 2 * task.StripWidthMm);
        shapes.AddRange(task.Barred.Select(zone => zone.Shared(near)).Where(zone => zone is { WidthMm: > 0, HeightMm: > 0 }).Select(zone => new SearchShape(-1, default, Outline.Of(zone))));
        Shapes = [.. shapes];
        Pieces = [.. task.Items.SelectMany((item, index) => Enumerable.Repeat(index, item.Demand))];
        _parts = new NoFitParts?[Shapes.Length * FirstZone];
    }

    /// <summary>The task.</summary>
    public NestingTask Task { get; }

    /// <summary>Every shape, the zones last.</summary>
    public SearchShape[] Shapes { get; }

    /// <summary>Where in the shapes the zones start.</summary>
    public int FirstZone { get; }

    /// <summary>How many zones there are.</summary>
    public int ZoneCount => Shapes.Length - FirstZone;

    /// <summary>For each item its shapes, one for each pose.</summary>
    public ImmutableArray<ImmutableArray<int>> Choices { get; }

    /// <summary>For each piece its item.</summary>
    public ImmutableArray<int> Pieces { get; }

    /// <summary>The places forbidden to a piece's shape beside any shape.</summary>
    public NoFitParts Forbidden(int lying, int coming)
    {
        ref var slot = ref _parts[(coming * Shapes.Length) + lying];
        return Volatile.Read(ref slot) ?? Made(ref slot, lying, coming);
    }

    private NoFitParts Made(ref NoFitParts? slot, int lying, int coming)
    {
        var made = NoFitParts.Between(Shapes[lying].Parts, Shapes[coming].Parts, lying < FirstZone ? Task.GapMm : 0);
        Volatile.Write(ref slot, made);
        return made;
    }

    private static List<SearchShape> Poses(NestingTask task, int item)
    {
        var shapes = new List<SearchShape>();
        foreach (var pose in NestingFit.FittingPoses(task, item))
        {
            var shape = new SearchShape(item, pose, pose.Of(task.Items[item].Shape));
            if (!shapes.Any(shape.LooksLike))
            {
                shapes.Add(shape);
            }
        }

        return shapes;
    }
}
