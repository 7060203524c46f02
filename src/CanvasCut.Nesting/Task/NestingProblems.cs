using System.Collections.Immutable;
using System.Globalization;
using CanvasCut.Geometry;

namespace CanvasCut.Nesting;

/// <summary>Tells in plain words why a task cannot be solved at all.</summary>
public static class NestingProblems
{
    /// <summary>One line for each item that cannot be placed; none when there is a layout.</summary>
    public static ImmutableArray<string> Of(NestingTask task) =>
        [.. Enumerable.Range(0, task.Items.Length).Select(item => Of(task, item)).OfType<string>()];

    private static string? Of(NestingTask task, int index)
    {
        var item = task.Items[index];
        if (item.Poses.IsEmpty)
        {
            return $"{item.Name}: no turn is allowed; allow at least one.";
        }

        if (!Witness.IsValid(item.Shape))
        {
            return $"{item.Name}: its outline crosses or touches itself; draw it so that no edge meets another.";
        }

        var poses = NestingFit.FittingPoses(task, index);
        return poses.IsEmpty ? TooWide(task, item)
            : !poses.Any(pose => HasRoom(task, pose.Of(item.Shape).Bounds.HeightMm)) ? NoRoom(task, item)
            : null;
    }

    private static string TooWide(NestingTask task, NestingItem item)
    {
        var acrossMm = item.Poses.Min(pose => pose.Of(item.Shape).Bounds.HeightMm);
        var text = $"{item.Name}: it is {Text(acrossMm)} mm across and the strip {Text(task.StripWidthMm)} mm";
        Pose[] turns = [.. Enumerable.Range(0, 12).Select(step => new Pose(step * NestingItem.FreeStepDegrees)).OrderBy(pose => pose.Degrees % 90)];
        var fitting = turns.Where(pose => pose.Of(item.Shape).Bounds.HeightMm <= task.StripWidthMm + NestingFit.RoundOffMm).Take(1).ToList();
        return fitting is [var turn]
            ? $"{text}; turned by {Text(turn.Degrees)} degrees it would fit."
            : $"{text}; it fits in no turn and needs a seam, or a wider strip.";
    }

    private static string NoRoom(NestingTask task, NestingItem item) =>
        $"{item.Name}: the barred zones leave no room for it across the strip; they leave {Text(FreeBands(task).Max(band => band.To - band.From))} mm at most.";

    private static bool HasRoom(NestingTask task, double acrossMm) =>
        FreeBands(task).Any(band => acrossMm <= band.To - band.From + NestingFit.RoundOffMm);

    /// <summary>What is free across the strip far along it, where only the endless zones matter.</summary>
    private static IEnumerable<(double From, double To)> FreeBands(NestingTask task)
    {
        var freeFrom = 0.0;
        foreach (var zone in task.Barred.Where(zone => double.IsPositiveInfinity(zone.Right)).OrderBy(zone => zone.Bottom))
        {
            yield return (freeFrom, Math.Min(zone.Bottom, task.StripWidthMm));
            freeFrom = Math.Max(freeFrom, zone.Top);
        }

        yield return (freeFrom, Math.Max(freeFrom, task.StripWidthMm));
    }

    private static string Text(double number) => number.ToString("0.###", CultureInfo.InvariantCulture);
}
