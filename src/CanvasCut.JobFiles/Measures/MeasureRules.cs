using CanvasCut.Design;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>What the measures of a top must be together: enough to fix its shape, and of a top at all.</summary>
internal static class MeasureRules
{
    private const int MostReadings = 9;
    private const int MostBows = 12;

    public static void Check(JobValues values, ProblemLog log)
    {
        CheckHead(values, log);
        List<string> bows = [.. values.Tables(MeasureFields.Bow)];
        if (bows.Count is < 2 or > MostBows)
        {
            log.Report(ProblemCode.BowCount, values.PlaceOf(MeasureFields.Bow), Say.Of($"a top has 2 to {MostBows} bows, an edge without a tube counted like one; this one has {bows.Count}."));
        }

        foreach (var (index, bow) in bows.Index())
        {
            CheckPresence(values, log, bow, isFirst: index == 0);
            CheckArc(values, log, bow);
            CheckHeight(values, log, bow);
            CheckOrder(values, log, bow, index > 1 ? bows[index - 1] : null);
        }

        StationOrder.Check(
            values,
            (MeasureFields.Bow, $"{MeasureFields.Top}.length"),
            path => MeanMm(values, path) is { } mean ? Length.FromMillimeters(mean) : null,
            (path, message) => Report(values, log, true, (ProblemCode.BowPlace, path, message)));
        foreach (var path in MeasureFields.All.Where(field => field.Kind == FieldKind.LengthList).SelectMany(field => PathsOf(field, bows)))
        {
            var count = values.Lengths(path)?.Length ?? 1;
            Report(values, log, count is 0 or > MostReadings, (ProblemCode.Impossible, path, Say.Of($"has {count} readings; write 1 to {MostReadings}.")));
        }
    }

    private static void CheckHead(JobValues values, ProblemLog log)
    {
        foreach (var (name, example) in new[] { ("format", $"{MeasureFields.Format}"), ("name", Say.Of("\"a name of your own\"")) })
        {
            Report(values, log, !values.IsWritten(name), (ProblemCode.Missing, name, Say.Of($"is missing; write it as in {name} = {example}.")));
        }

        Report(values, log, values.Quantity<int>("format") is not (null or MeasureFields.FormatOfEnds or MeasureFields.Format), (ProblemCode.Format, "format", Say.Of($"This program reads measures files of format {MeasureFields.FormatOfEnds} and {MeasureFields.Format}; write format = {MeasureFields.Format}.")));
    }

    private static void CheckPresence(JobValues values, ProblemLog log, string bow, bool isFirst)
    {
        Missing("chord", Say.Of("the straight distance between the bow's ends"));
        foreach (var (name, path) in MeasureFields.Kinds.Where(kind => kind.Kind is >= MeasureKind.Port and <= MeasureKind.DiagonalFromStarboard).Select(kind => (kind.Name, $"{bow}.{kind.Name}")))
        {
            Report(values, log, isFirst && values.IsWritten(path), (ProblemCode.FirstBow, path, Say.Of($"{name} is measured from the bows before, and there is none before the first; move it to the next bow.")));
        }

        if (isFirst)
        {
            return;
        }

        Missing("port", Say.Of("the distance from the first bow along the port edge"));
        Missing("starboard", Say.Of("the distance from the first bow along the starboard edge"));
        if (!values.IsWritten($"{bow}.diagonal_from_starboard"))
        {
            Missing("diagonal_from_port", Say.Of("straight from the port end of the bow before to this bow's starboard end"));
        }

        void Missing(string name, string what) => Report(
            values, log, !values.IsWritten($"{bow}.{name}"), (ProblemCode.Missing, $"{bow}.{name}", Say.Of($"is missing, {what}; write it as in {name} = [\"1040 mm\", \"1041 mm\"].")));
    }

    private static void CheckArc(JobValues values, ProblemLog log, string bow)
    {
        var (chord, girth, crown) = (MeanMm(values, $"{bow}.chord"), MeanMm(values, $"{bow}.girth"), MeanMm(values, $"{bow}.crown"));
        Report(values, log, crown > chord / 2, (ProblemCode.BowsDisagree, $"{bow}.crown", Say.Of("is higher than a half circle; measure the crown from the straight chord up to the middle.")));
        Report(values, log, girth > chord * Math.PI / 2, (ProblemCode.BowsDisagree, $"{bow}.girth", Say.Of("is more than a half circle on the chord; measure both between the same ends.")));
        Report(values, log, girth < chord * 0.9, (ProblemCode.BowsDisagree, $"{bow}.girth", Say.Of("is far shorter than the chord; along the cloth it can only be longer than straight across.")));
    }

    /// <summary>Without its crown the way from the centreline down to a bow's ends is not known.</summary>
    private static void CheckHeight(JobValues values, ProblemLog log, string bow) => Report(
        values,
        log,
        values.Quantity<int>("format") == MeasureFields.Format && values.IsWritten($"{bow}.height") && !values.IsWritten($"{bow}.crown") && !values.IsWritten($"{bow}.girth"),
        (ProblemCode.Missing, $"{bow}.crown", Say.Of("is missing, and without it the height on the centreline does not tell where the bow's ends are; measure the crown too.")));

    private static void CheckOrder(JobValues values, ProblemLog log, string bow, string? before)
    {
        foreach (var side in before is null ? [] : new[] { "port", "starboard" })
        {
            Report(
                values,
                log,
                MeanMm(values, $"{bow}.{side}") <= MeanMm(values, $"{before}.{side}"),
                (ProblemCode.BowPlace, $"{bow}.{side}", Say.Of("is not aft of the bow before; list the bows from forward to aft, and measure each from the first.")));
        }
    }

    private static IEnumerable<string> PathsOf(Field field, List<string> bows) =>
        field.Name.StartsWith($"{MeasureFields.Bow}[]", StringComparison.Ordinal) ? bows.Select(bow => $"{bow}.{field.ShortName}") : [field.Name];

    private static double? MeanMm(JobValues values, string path) => values.Lengths(path) is { Length: > 0 } lengths ? lengths.Average(length => length.Millimeters) : null;

    private static void Report(JobValues values, ProblemLog log, bool isBroken, (string Code, string Path, string Message) problem)
    {
        if (isBroken)
        {
            log.Report(problem.Code, values.PlaceOf(problem.Path), problem.Message);
        }
    }
}
