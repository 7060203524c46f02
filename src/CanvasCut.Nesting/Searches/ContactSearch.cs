using System.Collections.Immutable;
using System.Diagnostics;
using CanvasCut.Nesting.Separation;

namespace CanvasCut.Nesting;

/// <summary>Lays a few pieces, each where it touches others, in many orders beside one another.</summary>
/// <remarks>
/// Good for jobs of up to some twenty pieces and for pieces that fit each other exactly. Two trees grow at the same time, led by two
/// measures of waste. Pieces are taken by their true shape, as in <see cref="SeparationSearch"/>. A strip with a repeat is not for it.
/// </remarks>
public sealed class ContactSearch : INestingSearch
{
    /// <inheritdoc/>
    /// <remarks>It begins with a layout of <see cref="BottomLeftSearch"/> and gives that if it finds none shorter.</remarks>
    public NestingLayout? Find(NestingTask task, NestingControl control)
    {
        if (new BottomLeftSearch().Find(task, control) is not { } start)
        {
            return null;
        }

        return task.RepeatMm > 0 ? start : Shortest(start, control);
    }

    private static NestingLayout Shortest(NestingLayout start, NestingControl control)
    {
        var (clock, boundMm) = (Stopwatch.StartNew(), LowerBound.LengthMm(start.Task));
        var table = new ShapeTable(start.Task, start.LengthMm);
        ImmutableArray<ContactTree> trees = [new(table, isFrontGuided: false), new(table, isFrontGuided: true)];
        Parallel.ForEach(trees, tree => tree.Grow(boundMm + FreePlace.SameMm, () => IsSpent(tree)));

        // A layout that the witness does not pass is not kept, whatever the search makes of it.
        var found = trees.Select(tree => tree.Best).OfType<Arrangement>().OrderBy(best => best.LengthMm).Select(best => best.ToLayout());
        return found.Where(layout => layout.LengthMm < start.LengthMm - FreePlace.SameMm).FirstOrDefault(layout => LayoutCheck.Faults(layout).IsEmpty) ?? start;

        bool IsSpent(ContactTree tree) =>
            tree.Steps * trees.Length >= control.Budget.Steps || clock.Elapsed >= control.Budget.Time || control.Cancellation.IsCancellationRequested;
    }
}
