using CanvasCut.Design;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>Builds the measured top of values in which nothing is wrong.</summary>
internal static class MeasuredTopBuilder
{
    public static MeasuredTop Build(JobValues values)
    {
        List<string> bows = [.. values.Tables(MeasureFields.Bow)];
        return new(
            values.Text("name")!,
            values.Length("tape")!.Value,
            [.. bows.Select((bow, i) => new MeasuredBow(values.Text($"{bow}.name") ?? Say.Of($"bow {i + 1}"), values.Length($"{bow}.height") ?? Length.Zero))],
            [.. bows.SelectMany((bow, i) => OfBow(values, bow, i)), .. Overall(values, bows.Count - 1)]);
    }

    private static IEnumerable<TopMeasure> OfBow(JobValues values, string bow, int index) => MeasureFields.Kinds
        .Select(kind => (kind.Kind, Readings: values.Lengths($"{bow}.{kind.Name}")))
        .Where(each => each.Readings is not null)
        .Select(each => new TopMeasure(each.Kind, index, each.Readings!.Value));

    private static IEnumerable<TopMeasure> Overall(JobValues values, int last) => new[]
        {
            (Kind: MeasureKind.OverallFromPort, Readings: values.Lengths($"{MeasureFields.Overall}.diagonal_from_port")),
            (Kind: MeasureKind.OverallFromStarboard, Readings: values.Lengths($"{MeasureFields.Overall}.diagonal_from_starboard")),
        }
        .Where(each => each.Readings is not null)
        .Select(each => new TopMeasure(each.Kind, last, each.Readings!.Value));
}
